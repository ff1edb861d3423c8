/** Describes a routine check of a loop or of a pump, as its user enters it. */
import type { RepeatedWork } from './attention.ts';
import { type Interval, timesAYear } from './interval.ts';

/** What a check is of. `other` is anything that the starter set does not know. */
export const TASK_KINDS = [
  'bulkhead-inspection',
  'screen-cleaning',
  'wet-end-service',
  'union-check',
  'residual-current-test',
  'other',
] as const;

export type TaskKind = (typeof TASK_KINDS)[number];

const WET: readonly TaskKind[] = ['wet-end-service', 'screen-cleaning', 'union-check', 'other'];
const WIRED: readonly TaskKind[] = ['wet-end-service', 'residual-current-test', 'other'];

/** What the checks of some kinds come near to: water that a pump moves, mains electricity, bulkheads. */
export function dangersOf(kinds: readonly TaskKind[]): {
  readonly wet: boolean;
  readonly wired: boolean;
  readonly bulkheads: boolean;
} {
  const has = (some: readonly TaskKind[]): boolean => kinds.some((kind) => some.includes(kind));
  return { wet: has(WET), wired: has(WIRED), bulkheads: has(['bulkhead-inspection']) };
}

interface TaskCommon {
  readonly title: string;
  readonly kind: TaskKind;
  readonly every: Interval;
  /** Of work each time [min]. */
  readonly minutes: number;
  /** Each time [money]. */
  readonly parts: number;
  /** A date such as 2026-12-01, by the calendar of the site; never due before. */
  readonly firstDue: string;
}

/** By the id of its loop or of its pump. */
export type MaintenanceTask = TaskCommon &
  (
    | { readonly loop: string; readonly pump?: undefined }
    | { readonly pump: string; readonly loop?: undefined }
  );

/** The task as work that attention counts. */
export const taskWork = ({ every, minutes, parts }: MaintenanceTask): RepeatedWork => ({
  timesAYear: timesAYear(every),
  minutes,
  parts,
});
