/** Makes routine checks a table. */
import type { z } from '@hono/zod-openapi';
import type { Table } from '../../http/csv.ts';
import type { taskListSchema } from './answer-schema.ts';

const NAMES = [
  'id',
  'title',
  'kind',
  'loop',
  'pump',
  'every',
  'minutes',
  'parts',
  'firstDue',
  'nextDue',
  'due',
  'overdue',
  'daysUntilDue',
  'lastDone',
  'completions',
  'timesAYear',
  'annualHours',
  'annualParts',
  'annualCost',
  'currency',
  'version',
  'createdAt',
  'updatedAt',
] as const;

export const taskTable = ({ items }: z.input<ReturnType<typeof taskListSchema>>): Table => ({
  columns: NAMES.map((name) => ({ name })),
  rows: items.map((item) => NAMES.map((name) => item[name])),
});
