/** Describes how the records of a kind are entered, stored and answered by the routes that every kind has. */
import type { Result } from '../../curves/result.ts';
import type { Answer, AnswerForm } from '../http/answer-form.ts';
import type { Api } from '../http/api.ts';
import type { Problem } from '../http/problem.ts';
import type { ProblemCode } from '../http/problem-registry.ts';
import type { RequestBody } from '../http/request-body.ts';
import type { PathParameters, RouteRequest, RouteWords } from '../http/route.ts';
import type { SiteStore } from '../store/store.ts';
import type { Deleted, Deletion, Inserted, Replaced, StoredRecord } from '../store/versions.ts';
import type { RefusedWrite } from './write-problems.ts';

interface Stamp {
  readonly id: string;
  readonly now: number;
}

/** What the store does for records that are never changed; `Ready` is all that is stored of one. */
export interface KeptOperations<Ready, Kept> {
  insert(record: Ready & Stamp): Promise<Inserted<Kept> | RefusedWrite>;
  get(id: string): Promise<Kept | undefined>;
  delete(deletion: Deletion): Promise<Deleted | RefusedWrite>;
}

export interface RecordOperations<Ready, Kept> extends KeptOperations<Ready, Kept> {
  replace(
    replacement: Ready & Stamp & Pick<Deletion, 'expectedVersion'>,
  ): Promise<Replaced<Kept> | RefusedWrite>;
}

/** The words of a kind, such as `Pump` and `Pumps`, `a pump` and `pumps`, `pump` and `pumps`, `pump`. */
export interface KindWords {
  readonly operation: readonly [one: string, many: string];
  readonly summary: readonly [one: string, many: string];
  readonly answer: readonly [one: string, many: string];
  readonly problem: string;
}

export interface OperationFacts {
  readonly description: string;
  /** Where it does not follow from the words of the kind. */
  readonly summary?: string;
  /** Besides those that every route of its kind has. */
  readonly problems?: readonly ProblemCode[];
}

/** Where the records of a kind are found, and what they are called. */
export interface RecordsPlace<One extends string> {
  readonly collection: string;
  readonly one: One;
  readonly idOf: (params: PathParameters<One>) => string;
  readonly tag: string;
  readonly words: KindWords;
}

interface ListRoute extends RouteWords {
  readonly path: string;
  /** What the answer is described as. */
  readonly page: string;
}

export interface RecordsSpec<One extends string, Entered, Ready, Kept extends StoredRecord<unknown>, Out>
  extends RecordsPlace<One> {
  readonly operations: Readonly<Record<'create' | 'list' | 'read' | 'delete', OperationFacts>>;
  readonly body: RequestBody<Entered>;
  /** Checks what was entered, and makes of it what is stored. */
  readonly ready: (
    request: Pick<RouteRequest<string, unknown, Entered>, 'body' | 'system' | 'store'>,
  ) => Result<Ready, Problem> | Promise<Result<Ready, Problem>>;
  readonly answer: (words: { readonly description: string; readonly status?: 201 }) => AnswerForm<Out>;
  readonly answerOf: (record: Kept, store: SiteStore) => Answer<Out> | Promise<Answer<Out>>;
  /** Of a record that was just written, where that says more. */
  readonly writtenAnswerOf?: (record: Kept) => Answer<Out>;
  /** Mounts the route that lists them. */
  readonly list: (api: Api, route: ListRoute) => void;
  /** Where a refused write is a problem of this kind alone. */
  readonly problemOf?: (refused: RefusedWrite) => Problem;
}

/** All that is stored of a record that its user may give a key. */
export interface KeyedReady {
  readonly document: object;
  /** Null for none; undefined where nothing is said. */
  readonly key?: string | null | undefined;
}

/** With what is said of their replacement. */
export interface ReplaceableSpec<One extends string, Entered, Ready, Kept extends StoredRecord<object>, Out>
  extends RecordsSpec<One, Entered, Ready, Kept, Out> {
  readonly operations: Readonly<Record<'create' | 'list' | 'read' | 'replace' | 'delete', OperationFacts>>;
}
