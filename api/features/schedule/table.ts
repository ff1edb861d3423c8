/** Makes the phases of a schedule a table. */
import type { z } from '@hono/zod-openapi';
import type { Table } from '../../http/csv.ts';
import type { scheduleSchema } from './answer-schema.ts';

type Wire = z.input<ReturnType<typeof scheduleSchema>>;

const COLUMNS = [
  { name: 'name' },
  { name: 'from' },
  { name: 'setting', quantity: 'setting' },
  { name: 'feasible' },
  { name: 'power', quantity: 'power' },
  { name: 'flow', quantity: 'flow' },
  { name: 'hoursPerYear' },
  { name: 'annualEnergy', quantity: 'energy' },
  { name: 'annualCost' },
] as const;

export const scheduleTable = ({ phases }: Pick<Wire, 'phases'>): Table => ({
  columns: COLUMNS,
  rows: phases.map((one) => [
    one.name,
    one.from,
    one.setting,
    one.feasible,
    one.power,
    one.flow,
    one.hoursPerYear,
    one.annualEnergy,
    one.annualCost,
  ]),
});
