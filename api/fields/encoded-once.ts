/** A part that occurs in an answer more than once is encoded once. */
import { z } from '@hono/zod-openapi';
import { oncePerObject } from '../caches/once-per-object.ts';
import type { SchemaContext } from '../units/schema-context.ts';

const isObject = (value: unknown): boolean => typeof value === 'object' && value !== null;

/** The schema of an object, with a memory of what each was encoded to; in the document and in requests as it is. */
export function encodedOnce<Wire extends object, Value extends object>(
  { documented, side }: SchemaContext,
  schema: z.ZodType<Value, Wire>,
): z.ZodType<Value, Wire> {
  if (documented || side === 'request') return schema;
  const encoded = oncePerObject((value: Value) => z.safeEncode(schema, value));
  return z.codec(z.custom<Wire>(isObject), z.custom<Value>(isObject), {
    decode: (wire) => z.decode(schema, wire),
    encode: (value, issues) => {
      const wire = encoded(value);
      if (wire.success) return wire.data;
      issues.issues.push({ code: 'custom', message: z.prettifyError(wire.error), input: value });
      return z.NEVER;
    },
  });
}
