/** Makes the ranking of a recommendation a table, its cautions by their codes. */
import { tableOf } from '../../http/table-of.ts';
import { recommendationSchema } from './answer-schema.ts';

export const rankingTable = tableOf(recommendationSchema, 'ranking', [
  'candidate',
  { name: 'pump', at: 'pump.id' },
  { name: 'name', at: 'pump.name' },
  'count',
  'setting',
  'flow',
  'head',
  'power',
  'efficiency',
  'annualEnergy',
  'annualCost',
  'lifeCycleCost',
  'limitingOutlet',
  {
    name: 'cautions',
    // Those of the loop too, since a table has no other place for them.
    of: (one, { cautions }) => [...one.cautions, ...cautions].map(({ code }) => code).join(' '),
  },
]);
