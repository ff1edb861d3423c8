/** Names the fields that answers add to a routine check, so that requests can take them back. */
import { z } from '@hono/zod-openapi';

export const TASK_FIGURES = [
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
  'cautions',
] as const;

export const COMPLETION_FIGURES = ['task', 'day', 'nextDue'] as const;

const ignored = z
  .unknown()
  .optional()
  .transform(() => undefined);

/** Accepted, so that an answer can be sent back, and ignored. */
export const ignoredFigures = <const Name extends string>(names: readonly Name[]) =>
  Object.fromEntries(names.map((name) => [name, ignored]));
