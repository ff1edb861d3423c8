/** Finds the units of the columns of a table that comes in, from the schema of what its rows make. */
import type { z } from '@hono/zod-openapi';
import { quantityAt } from '../units/quantity-of.ts';
import { type SchemaContext, schemaContext } from '../units/schema-context.ts';
import type { CsvColumn } from './csv-rows.ts';

interface ReadColumn {
  readonly required: boolean;
  /** The member that it fills, `member.member`; the one of its name where that is not stated. */
  readonly at?: string;
  readonly isText?: boolean;
}

/** A column whose member has a quantity is read in its units, another as a text or a plain number. */
export function csvColumns<const Name extends string>(
  schema: (context: SchemaContext) => z.ZodType,
  columns: Readonly<Record<Name, ReadColumn>>,
): Readonly<Record<Name, CsvColumn>>;
export function csvColumns(
  schema: (context: SchemaContext) => z.ZodType,
  columns: Readonly<Record<string, ReadColumn>>,
): Readonly<Record<string, CsvColumn>> {
  const filled = schema(schemaContext({ system: 'metric', side: 'request' }));
  const ready = ([name, { required, at = name, isText = false }]: [string, ReadColumn]) => {
    const quantity = quantityAt(filled, at.split('.')) ?? (isText ? 'text' : 'number');
    return [name, { quantity, required }] as const;
  };
  return Object.fromEntries(Object.entries(columns).map(ready));
}
