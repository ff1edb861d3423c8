/** A tariff named by its id, in requests and answers. */
import type { z } from '@hono/zod-openapi';
import { textField } from '../../fields/text-field.ts';
import { nullable } from '../../schemas/nullable.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const ID_MAX = 64;

/** Null, which a request may leave out, names none. */
export function tariffRef(
  context: SchemaContext,
  { description }: { readonly description: string },
): z.ZodType<string | null> {
  const example = '0198f1c2';
  const id = textField(context, { description, example, maxLength: ID_MAX });
  const reference = nullable(id);
  const field = context.side === 'answer' ? reference : reference.default(null);
  return described(context, field, { description, examples: [example] });
}
