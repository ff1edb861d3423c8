/** Documents texts. */
import { z } from '@hono/zod-openapi';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';

export const NAME_MAX = 120;

/** What no database and no file keeps as it is: NUL and halves of surrogate pairs. */
const isStorable = (text: string): boolean => !text.includes('\0') && !/\p{Surrogate}/u.test(text);

/** A name of blanks alone is none that a person could find again; an empty one is refused by its length. */
const isSeen = (text: string): boolean => text === '' || text.trim() !== '';

const storable = (maxLength: number) =>
  z.string().min(1).max(maxLength).refine(isStorable, 'must not hold NUL or half a surrogate pair');

interface TextField {
  readonly description: string;
  readonly example: string;
  readonly maxLength: number;
}

export const textField = (context: SchemaContext, { description, example, maxLength }: TextField) =>
  described(context, storable(maxLength), { description, examples: [example] });

export const nameField = (context: SchemaContext, words: { description: string; example: string }) =>
  described(context, storable(NAME_MAX).refine(isSeen, 'must not be blank'), {
    description: words.description,
    examples: [words.example],
  });
