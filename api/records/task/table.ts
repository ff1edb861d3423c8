/** Makes routine checks a table. */
import { tableOf } from '../../http/table-of.ts';
import { taskListSchema } from './answer-schema.ts';

export const taskTable = tableOf(taskListSchema, 'items', [
  'id',
  'key',
  'name',
  'kind',
  { name: 'loopId', at: 'loop' },
  { name: 'pumpId', at: 'pump' },
  'every',
  'minutes',
  'parts',
  'firstDue',
  'nextDue',
  'due',
  'overdue',
  'daysUntilDue',
  'lastDone',
  'completionCount',
  'timesPerYear',
  'annualHours',
  'annualParts',
  'annualCost',
  'currency',
  'version',
  'createdAt',
  'updatedAt',
]);
