/** Names what a route answers with: how it is written, how it is documented. */
import type { z } from '@hono/zod-openapi';
import type { Result } from '../../curves/result.ts';
import type { CommonQuery } from './common-query.ts';
import type { Problem } from './problem.ts';

type Readable<T> = T extends readonly (infer Item)[]
  ? readonly Readable<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: Readable<T[Key]> }
    : T;

/** The value of an answer, before `units` are filled in. */
export type WithoutUnits<Body> = Body extends { readonly units: unknown }
  ? Readable<Omit<Body, 'units'>>
  : Readable<Body>;

/** Of a stored version, or of all that a derived answer was computed from. */
export type Validator =
  /** `derived`: the answer follows from more than the version, so that it is never answered by 304. */
  { readonly version: number; readonly derived?: boolean } | { readonly basis: unknown };

export interface Answer<Body> {
  readonly body: WithoutUnits<Body>;
  readonly validator?: Validator;
  readonly location?: string;
  /** Where a PUT has created. */
  readonly status?: 201;
}

/** What an answer that is no data comes as. */
export type PageType = 'image/svg+xml' | 'text/html' | 'text/calendar';

export type MediaType = 'application/json' | 'text/csv' | 'text/plain' | PageType;

export interface Written {
  readonly text: string | null;
  readonly contentType: string | null;
}

export interface DocumentedAnswer {
  readonly status: number;
  readonly description: string;
  /** Undefined where there is no content. */
  readonly schema: z.ZodType | undefined;
  readonly example: unknown;
}

export interface AnswerForm<Body> {
  readonly status: number;
  readonly hasTable: boolean;
  /** The form it comes in where nothing else is asked for. */
  readonly mediaType: 'application/json' | PageType;
  chooseMediaType(query: CommonQuery, accept: string | undefined): Result<MediaType, Problem>;
  write(body: WithoutUnits<Body>, query: CommonQuery, mediaType: MediaType): Result<Written, Problem>;
  document(): DocumentedAnswer;
}
