/** Makes the ranking of a recommendation a table, its cautions by their codes. */
import type { z } from '@hono/zod-openapi';
import type { Table } from '../../http/csv.ts';
import type { recommendationSchema } from './answer-schema.ts';

export const rankingTable = ({
  ranking,
  cautions,
}: z.input<ReturnType<typeof recommendationSchema>>): Table => ({
  columns: [
    { name: 'candidate' },
    { name: 'pump' },
    { name: 'name' },
    { name: 'count' },
    { name: 'setting', quantity: 'setting' },
    { name: 'flow', quantity: 'flow' },
    { name: 'head', quantity: 'head' },
    { name: 'power', quantity: 'power' },
    { name: 'efficiency' },
    { name: 'annualEnergy', quantity: 'energy' },
    { name: 'annualCost' },
    { name: 'lifeCycleCost' },
    { name: 'limitingOutlet' },
    { name: 'cautions' },
  ],
  rows: ranking.map((one) => [
    one.candidate,
    one.pump.id,
    one.pump.name,
    one.count,
    one.setting,
    one.flow,
    one.head,
    one.power,
    one.efficiency,
    one.annualEnergy,
    one.annualCost,
    one.lifeCycleCost,
    one.limitingOutlet,
    // Those of the loop too, since a table has no other place for them.
    [...one.cautions, ...cautions].map(({ code }) => code).join(' '),
  ]),
});
