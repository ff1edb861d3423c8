/** Routine checks, and how far each of them has come. */
import type { MaintenanceTask, TaskKind } from '../../../models/maintenance/task.ts';
import type {
  Deleted,
  Deletion,
  Inserted,
  KeyTaken,
  Missing,
  NewRecord,
  Page,
  PageRequest,
  Replaced,
  Replacement,
  Stale,
  StoredRecord,
  UnknownLoop,
  UnknownPump,
} from '../../store/versions.ts';

/** Days are numbers from 1970-01-01, by the calendar of the site; instants in ms. */
export interface TaskProgress {
  readonly nextDue: number;
  readonly lastDone: { readonly at: number; readonly day: number } | null;
  readonly completions: number;
  /** Counts what has happened to it, replacements and completions alike, from 0. */
  readonly changes: number;
  /** When something last happened to it. */
  readonly changedAt: number;
}

export interface MaintenanceTaskRecord extends StoredRecord<MaintenanceTask> {
  readonly progress: TaskProgress;
}

/** Those of a loop (null: of a pump), of some loops, of a pump, of a kind, of other kinds, due from a day on, until a day, where these are given. */
export interface TaskChoice {
  readonly loop?: string | null | undefined;
  /** At most `LOOPS_ASKED_MAX`. */
  readonly loops?: readonly string[] | undefined;
  readonly pump?: string | undefined;
  readonly kind?: TaskKind | undefined;
  readonly otherThan?: TaskKind | undefined;
  readonly name?: string | undefined;
  readonly dueFrom?: number | undefined;
  readonly dueUntil?: number | undefined;
}

export interface TaskPageRequest extends PageRequest, TaskChoice {
  readonly name?: string | undefined;
}

export interface NewMaintenanceTasks {
  readonly now: number;
  readonly tasks: readonly Omit<NewRecord<MaintenanceTask>, 'now'>[];
}

/** Every task that was asked for, or how many there are when they are more than `ALL_TASKS_LIMIT`. */
export type AllTasks =
  | { readonly outcome: 'all'; readonly records: readonly MaintenanceTaskRecord[] }
  | { readonly outcome: 'too-many'; readonly limit: number; readonly actual: number };

export const ALL_TASKS_LIMIT = 10_000;

/** Loops asked about at once. */
export const LOOPS_ASKED_MAX = 1_000;

/** Tasks written at once. */
export const NEW_TASKS_MAX = 1_000;

/** Hours of work and money for parts a year. */
export interface TaskTotals {
  readonly tasks: number;
  readonly due: number;
  readonly overdue: number;
  readonly hours: number;
  readonly parts: number;
}

export interface TaskOperations {
  insert(
    task: NewRecord<MaintenanceTask>,
  ): Promise<Inserted<MaintenanceTaskRecord> | UnknownLoop | UnknownPump | KeyTaken>;
  /** All of them or none; the records in the order of the tasks. */
  insertAll(
    tasks: NewMaintenanceTasks,
  ): Promise<
    | { readonly outcome: 'inserted'; readonly records: readonly MaintenanceTaskRecord[] }
    | UnknownLoop
    | UnknownPump
  >;
  get(id: string): Promise<MaintenanceTaskRecord | undefined>;
  list(request: TaskPageRequest): Promise<Page<MaintenanceTaskRecord>>;
  /** In the order createdAt, then id. */
  all(choice: TaskChoice): Promise<AllTasks>;
  /** `today`: a day number. */
  totals(choice: TaskChoice & { readonly today: number }): Promise<TaskTotals>;
  replace(
    replacement: Replacement<MaintenanceTask>,
  ): Promise<Replaced<MaintenanceTaskRecord> | Stale | Missing | UnknownLoop | UnknownPump | KeyTaken>;
  /** With its completions. */
  delete(deletion: Deletion): Promise<Deleted | Stale | Missing>;
}
