/** Describes a route as data: what it takes, what it answers, what its handler is given. */
import { z } from '@hono/zod-openapi';
import type { Result } from '../../curves/result.ts';
import type { SiteStore } from '../store/store.ts';
import type { ExpectedVersion } from '../store/versions.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import type { Answer, AnswerForm } from './answer-form.ts';
import type { Problem } from './problem.ts';
import type { ProblemCode } from './problem-registry.ts';
import type { RequestBody } from './request-body.ts';

export type Method = 'get' | 'post' | 'put' | 'delete';

/** The names in braces of a path. */
type ParameterNames<Path extends string> = Path extends `${string}{${infer Name}}${infer Rest}`
  ? Name | ParameterNames<Rest>
  : never;

export type PathParameters<Path extends string> = Readonly<Record<ParameterNames<Path>, string>>;

export interface RouteWords {
  readonly operationId: string;
  readonly summary: string;
  readonly description: string;
  readonly tag: string;
}

export interface Route<Path extends string, Query extends z.ZodObject, Body, Out> extends RouteWords {
  readonly method: Method;
  readonly path: Path;
  /** The parameters besides `units`, `format` and `pointer`. */
  readonly query: (context: SchemaContext) => Query;
  readonly body: RequestBody<Body>;
  /**
   * Whether If-Match is demanded; `optional`: a PUT without it creates, where there is nothing yet; `unless-stored`: not of a
   * PUT of what is stored.
   */
  readonly conditional?: boolean | 'optional' | 'unless-stored';
  readonly answer: AnswerForm<Out>;
  /** Problems of this route besides those that every route of its kind has. */
  readonly problems?: readonly ProblemCode[];
}

const EMPTY_QUERY = z.strictObject({});

export const noQuery = () => EMPTY_QUERY;

export interface RouteRequest<Path extends string, Query, Body> {
  /** Ids, also of records that the path names by their keys. */
  readonly params: PathParameters<Path>;
  /** The path as it was sent. */
  readonly sentParams: PathParameters<Path>;
  readonly query: Query;
  readonly body: Body;
  readonly system: UnitSystem;
  /** From If-Match, on routes that demand it. */
  readonly expectedVersion: ExpectedVersion;
  /** Whether If-Match was sent. */
  readonly isConditional: boolean;
  /** Whether If-None-Match demands that there is nothing yet. */
  readonly mustBeNew: boolean;
  /** The records of the site that the caller acts in. */
  readonly store: SiteStore;
  readonly requestId: string;
}

export type RouteHandler<Path extends string, Query, Body, Out> = (
  request: RouteRequest<Path, Query, Body>,
) => Promise<Result<Answer<Out>, Problem>>;
