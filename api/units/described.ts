/** Attaches words of the OpenAPI document to a schema, on the one instance that the document shows. */
import type { z } from '@hono/zod-openapi';
import type { SchemaContext } from './schema-context.ts';

export interface SchemaWords {
  readonly description?: string;
  readonly type?: 'number' | 'integer' | 'string' | 'boolean' | ['number', 'string'];
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly format?: string;
  readonly readOnly?: boolean;
  readonly default?: string | number | boolean;
  readonly enum?: string[];
  readonly examples?: unknown[];
}

type Documented = Pick<SchemaContext, 'documented'>;

// The registry behind `.openapi` never forgets a schema, so instances made for one request stay out of it.
export const described = <S extends z.ZodType>(
  { documented }: Documented,
  schema: S,
  words: SchemaWords,
): S => (documented ? schema.openapi({ ...words }) : schema);

/**
 * Gives a schema its name among the components of the document. What comes in differs from what goes out, in defaults and
 * in strings with units, so that the request's side has a name of its own.
 */
export const named = <S extends z.ZodType>(
  { documented, side }: Pick<SchemaContext, 'documented' | 'side'>,
  name: string,
  schema: S,
  words: SchemaWords = {},
): S => (documented ? schema.openapi(side === 'request' ? `${name}Input` : name, { ...words }) : schema);
