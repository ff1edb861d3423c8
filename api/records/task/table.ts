/** Makes routine checks a table. */
import { tableOf } from '../../http/table-of.ts';
import { taskListSchema } from './answer-schema.ts';

export const taskTable = tableOf(taskListSchema, 'items', [
  'id',
  'key',
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
]);
