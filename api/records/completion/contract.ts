/** When routine checks were done. */
import type {
  Deleted,
  Deletion,
  Inserted,
  Missing,
  Page,
  PageStart,
  Stale,
  StoredRecord,
} from '../../store/versions.ts';

export interface Completion {
  /** When it was done [ms]. */
  readonly at: number;
  /** The day of it by the calendar of the site, such as 2026-12-01. */
  readonly day: string;
  readonly minutes?: number | undefined;
  readonly note?: string | undefined;
}

/** Never written again: its version stays 1. */
export interface CompletionRecord extends StoredRecord<Completion> {
  readonly taskId: string;
}

export interface NewCompletion {
  readonly taskId: string;
  readonly id: string;
  readonly document: Completion;
  readonly now: number;
}

export interface CompletionPageRequest {
  readonly taskId: string;
  readonly limit: number;
  /** Just after this completion in the order of `at`, which stands for createdAt here, then id. */
  readonly after: PageStart | null;
}

export interface CompletionDeletion extends Deletion {
  readonly taskId: string;
  readonly now: number;
}

export interface CompletionKey {
  readonly taskId: string;
  readonly id: string;
}

export interface CompletionOperations {
  /** `exists`: the task has one of the same instant. */
  insert(
    completion: NewCompletion,
  ): Promise<
    Inserted<CompletionRecord> | { readonly outcome: 'exists'; readonly record: CompletionRecord } | Missing
  >;
  get(key: CompletionKey): Promise<CompletionRecord | undefined>;
  list(request: CompletionPageRequest): Promise<Page<CompletionRecord>>;
  delete(deletion: CompletionDeletion): Promise<Deleted | Stale | Missing>;
}

/** With the check that it is of. */

export type CopiedCompletion = Completion & { readonly task: string };
/** Checks are done day by day, readings taken every few minutes. */
export const COMPLETIONS_MAX = 200000;
