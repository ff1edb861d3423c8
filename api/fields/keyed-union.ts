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

/** A key that no option has, and what is said of a value with it. */
export interface Refused {
  readonly key: string;
  readonly message: string;
}

/**
 * The first option whose key is there reads the value, so that a fault is named where it is and costs one attempt.
 * The document shows the options as a plain union. A value of no option is refused at the key of `refused` where it has that.
 */
export function keyedUnion<T, Wire = unknown>(
  context: SchemaContext,
  options: readonly [Option<T, Wire>, Option<T, Wire>, ...Option<T, Wire>[]],
  refused?: Refused,
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
        const fault =
          refused !== undefined && hasKey(value, refused.key)
            ? { path: [refused.key], message: refused.message }
            : { message: `must have one of ${keys}` };
        payload.issues.push({ code: 'custom', ...fault, input: value });
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
