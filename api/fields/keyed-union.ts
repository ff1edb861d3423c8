/** Reads a union of objects by the key that only one of them has. */
import { z } from '@hono/zod-openapi';
import type { SchemaContext } from '../units/schema-context.ts';
import { relayIssues } from './relay-issues.ts';

interface Option<T, Wire> {
  readonly key: string;
  readonly schema: z.ZodType<T, Wire>;
}

const hasKey = (value: unknown, key: string): boolean =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key);

/**
 * The first option whose key is there reads the value, so that a fault is named where it is and costs one attempt.
 * The document shows the options as a plain union.
 */
export function keyedUnion<T, Wire = unknown>(
  context: SchemaContext,
  options: readonly [Option<T, Wire>, Option<T, Wire>, ...Option<T, Wire>[]],
): z.ZodType<T, Wire> {
  const [first, second, ...others] = options;
  const union = z.union([first.schema, second.schema, ...others.map(({ schema }) => schema)]);
  if (context.documented) return union;
  const keys = options.map(({ key }) => key).join(', ');
  const optionOf = (value: unknown) => options.find(({ key }) => hasKey(value, key))?.schema;
  return z.codec(z.custom<Wire>(), z.custom<T>(), {
    decode(value, payload) {
      const option = optionOf(value);
      if (option === undefined) {
        payload.issues.push({ code: 'custom', message: `must have one of ${keys}`, input: value });
        return z.NEVER;
      }
      const read = option.safeParse(value);
      if (read.success) return read.data;
      relayIssues(payload, read.error);
      return z.NEVER;
    },
    encode: (value) => z.encode(optionOf(value) ?? union, value),
  });
}
