/** Documents the query parameters of a list. */
import { z } from '@hono/zod-openapi';
import { queryWhole } from '../fields/query-field.ts';
import { nameField } from '../fields/text-field.ts';
import type { Page } from '../store/versions.ts';
import { described } from '../units/described.ts';
import { perContext } from '../units/per-context.ts';
import { decodeCursor, encodeCursor, PAGE_LIMIT_DEFAULT, PAGE_LIMIT_MAX } from './paging.ts';

const CURSOR_MAX = 200;

export const listQuery = perContext((context) =>
  z.strictObject({
    limit: queryWhole(context, {
      description: `How many items a page has at most; ${PAGE_LIMIT_DEFAULT} where it is not stated.`,
      minimum: 1,
      maximum: PAGE_LIMIT_MAX,
      example: PAGE_LIMIT_DEFAULT,
    }).optional(),
    cursor: described(
      context,
      z
        .string()
        .max(CURSOR_MAX)
        .transform((text, issues) => {
          const start = decodeCursor(text);
          if (start !== undefined) return start;
          issues.addIssue({ code: 'custom', message: 'must be `next` of the page before' });
          return z.NEVER;
        }),
      { type: 'string', description: 'The `next` of the page before.' },
    ).optional(),
    name: nameField(context, {
      description: 'Only items of exactly this name.',
      example: 'Kelp flume',
    }).optional(),
  }),
);

type ListQuery = z.output<ReturnType<typeof listQuery>>;

/** What the store is asked for. */
export const pageRequest = ({ limit = PAGE_LIMIT_DEFAULT, cursor, name }: ListQuery) => ({
  limit,
  after: cursor ?? null,
  name,
});

/** The cursor of the next page, or null after the last. */
export function nextCursor({
  records,
  more,
}: Page<{ readonly createdAt: number; readonly id: string }>): string | null {
  const last = records.at(-1);
  return more && last !== undefined ? encodeCursor(last) : null;
}
