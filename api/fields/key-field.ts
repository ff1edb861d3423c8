/** Documents the key that users give to a record, to name it by in place of its id. */
import { z } from '@hono/zod-openapi';
import { KEY_MAX, KEY_PATTERN, KEY_RULE } from '../store/key-form.ts';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import { nullable } from './nullable.ts';

const DESCRIPTION =
  'Names it wherever its id does, once a site and kind: a-z, 0-9 and hyphens, no hyphen first or last.';

const EXAMPLE = 'kelp-flume';

const WORDS = { pattern: KEY_PATTERN, maxLength: KEY_MAX, examples: [EXAMPLE] };

/** In a request: judged there, and read by `enteredKey`, since it is no part of the document. */
export const acceptedKey = (context: SchemaContext) => ({
  key: described(
    context,
    nullable(z.string().regex(new RegExp(KEY_PATTERN), KEY_RULE))
      .optional()
      .transform(() => undefined),
    { type: 'string', description: `${DESCRIPTION} Null takes it away.`, ...WORDS },
  ),
});

/** In an answer. */
export const answeredKey = (context: SchemaContext) => ({
  key: described(context, z.string(), { description: DESCRIPTION, examples: [EXAMPLE] }).optional(),
});

/** Of a document as it came, once its schema has accepted it: undefined where nothing is said of its key. */
export function enteredKey(raw: unknown): string | null | undefined {
  if (typeof raw !== 'object' || raw === null || !('key' in raw)) return undefined;
  return typeof raw.key === 'string' ? raw.key : null;
}
