/** Makes the phases of a schedule a table. */
import { tableOf } from '../../http/table-of.ts';
import { scheduleSchema } from './answer-schema.ts';

export const scheduleTable = tableOf(scheduleSchema, 'phases', [
  'name',
  'from',
  'setting',
  'feasible',
  'power',
  'flow',
  'hoursPerYear',
  'annualEnergy',
  'annualCost',
]);
