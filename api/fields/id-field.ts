/** A stored record is named by its id. */
import type { SchemaContext } from '../units/schema-context.ts';
import { textField } from './text-field.ts';

/** Characters of an id. */
export const ID_MAX = 64;

export const idField = (
  context: SchemaContext,
  { description, example = '0198f1c2' }: { readonly description: string; readonly example?: string },
) => textField(context, { description, example, maxLength: ID_MAX });
