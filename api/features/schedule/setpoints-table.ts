/** Steps of settings as a table. */
import type { z } from '@hono/zod-openapi';
import type { Table } from '../../http/csv.ts';
import type { setpointsSchema } from './setpoint-schema.ts';

type Wire = z.input<ReturnType<typeof setpointsSchema>>;

const COLUMNS = [
  { name: 'from' },
  { name: 'until' },
  { name: 'phase' },
  { name: 'setting', quantity: 'setting' },
  { name: 'feasible' },
  { name: 'power', quantity: 'power' },
  { name: 'flow', quantity: 'flow' },
] as const;

export const setpointsTable = ({ items }: Pick<Wire, 'items'>): Table => ({
  columns: COLUMNS,
  rows: items.map(({ from, until, phase, setting, feasible, power, flow }) => [
    from,
    until,
    phase,
    setting,
    feasible,
    power,
    flow,
  ]),
});
