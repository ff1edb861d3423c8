/** Documents a tariff named by its id. */
import type { z } from '@hono/zod-openapi';
import { idField } from '../../fields/id-field.ts';
import { nullable } from '../../fields/nullable.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

/** Null, which a request may leave out, names none. */
export function tariffRef(
  context: SchemaContext,
  { description }: { readonly description: string },
): z.ZodType<string | null> {
  const example = '0198f1c2';
  const id = idField(context, { description, example });
  const reference = nullable(id);
  const field = context.side === 'answer' ? reference : reference.default(null);
  return described(context, field, { description, examples: [example] });
}
