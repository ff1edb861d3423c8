/** Parts of an answer that stand in it more than once, encoded once. */
import { z } from '@hono/zod-openapi';
import type { SchemaContext } from '../units/schema-context.ts';

const isObject = (value: unknown): boolean => typeof value === 'object' && value !== null;

/** The schema of an object, remembering what it made of each as long as that is kept; in the document as it is. */
export function encodedOnce<Wire extends object, Value extends object>(
  { documented, side }: SchemaContext,
  schema: z.ZodType<Value, Wire>,
): z.ZodType<Value, Wire> {
  if (documented || side === 'request') return schema;
  const made = new WeakMap<Value, Wire>();
  return z.codec(z.custom<Wire>(isObject), z.custom<Value>(isObject), {
    decode: (wire) => z.decode(schema, wire),
    encode: (value, issues) => {
      const known = made.get(value);
      if (known !== undefined) return known;
      const encoded = z.safeEncode(schema, value);
      if (!encoded.success) {
        issues.issues.push({ code: 'custom', message: z.prettifyError(encoded.error), input: value });
        return z.NEVER;
      }
      made.set(value, encoded.data);
      return encoded.data;
    },
  });
}
