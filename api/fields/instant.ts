/** Documents instants in queries and bodies: RFC 3339 with an offset. */
import { z } from '@hono/zod-openapi';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';

const INSTANT = z.iso.datetime({ offset: true });
const INSTANT_LENGTH = 40;
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
      .max(INSTANT_LENGTH)
      .transform((text) => text.replace(' ', '+'))
      .refine(
        (text) => INSTANT.safeParse(text).success,
        'must be a time with its offset, such as 2026-01-15T22:30:00Z',
      )
      .transform((text) => Date.parse(text))
      .refine(inRange, `must be in the years ${YEARS.first} to ${YEARS.last}`),
    { type: 'string', description, format: 'date-time', examples: [example] },
  );

const toInstant = z.codec(z.string(), z.number(), {
  decode: (text, issues) => {
    const refuse = (message: string) => {
      issues.issues.push({ code: 'custom', message, input: text });
      return z.NEVER;
    };
    if (text.length > INSTANT_LENGTH || !INSTANT.safeParse(text).success) {
      return refuse('must be a time with its offset, such as 2026-01-15T22:30:00Z');
    }
    const instant = Date.parse(text);
    return inRange(instant) ? instant : refuse(`must be in the years ${YEARS.first} to ${YEARS.last}`);
  },
  encode: (instant) => new Date(instant).toISOString(),
});

/** In a document; ms since 1970-01-01T00:00Z inside, answered in UTC. */
export const bodyInstant = (
  context: SchemaContext,
  { description, example }: { readonly description: string; readonly example: string },
) => described(context, toInstant, { type: 'string', description, format: 'date-time', examples: [example] });

/** A range of time in a query. */
export const rangeQuery = (context: SchemaContext) =>
  z.strictObject({
    from: describedInstant(context, {
      description: 'From this instant on, with its offset; from the first reading where it is left out.',
      example: '2026-01-01T00:00:00Z',
    }).optional(),
    to: describedInstant(context, {
      description: 'Before this instant, with its offset; to the last reading where it is left out.',
      example: '2026-02-01T00:00:00Z',
    }).optional(),
  });
