/** Instants in queries: RFC 3339 with an offset. */
import { z } from '@hono/zod-openapi';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';

const INSTANT = z.iso.datetime({ offset: true });
const YEARS = { first: 1971, last: 2200 } as const;

const inRange = (milliseconds: number): boolean => {
  const year = new Date(milliseconds).getUTCFullYear();
  return year >= YEARS.first && year <= YEARS.last;
};

/** In ms since 1970-01-01T00:00Z. A plus that a caller did not encode, and that came as a space, is taken as meant. */
export const describedInstant = (
  context: SchemaContext,
  { description, example }: { readonly description: string; readonly example: string },
) =>
  described(
    context,
    z
      .string()
      .max(40)
      .transform((text) => text.replace(' ', '+'))
      .refine(
        (text) => INSTANT.safeParse(text).success,
        'must be a time with its offset, such as 2026-01-15T22:30:00Z',
      )
      .transform((text) => Date.parse(text))
      .refine(inRange, `must be in the years ${YEARS.first} to ${YEARS.last}`),
    { type: 'string', description, format: 'date-time', examples: [example] },
  );
