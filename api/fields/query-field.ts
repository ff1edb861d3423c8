/** Reads parameters of a query that carry numbers, which come as texts. */
import { z } from '@hono/zod-openapi';
import { described } from '../units/described.ts';
import { type EnteredQuantity, entered, quantityWords } from '../units/entered.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import type { Quantity } from '../units/table.ts';
import { type NumberField, numberField, wholeNumber } from './number-field.ts';

const DECIMAL = /^-?(?:\d{1,15}|\d{0,15}\.\d{1,15})$/;
const WHOLE = /^\d{1,9}$/;

const words = ({ description, example, minimum, maximum, aboveMinimum = false }: NumberField) => ({
  description,
  maximum,
  ...(aboveMinimum ? { exclusiveMinimum: minimum } : { minimum }),
  examples: [example],
});

// The fields that follow may be left out; here there is always a text.
const asNumber = (text: string): number | undefined => Number(text);
const asQuantity = (text: string): number | string | undefined => (DECIMAL.test(text) ? Number(text) : text);

/** A decimal number without exponent. */
export const queryDecimal = (context: SchemaContext, field: NumberField) =>
  described(
    context,
    z
      .string()
      .regex(
        DECIMAL,
        'must be a decimal number, written out without an exponent, with at most 15 digits on each side of a point',
      )
      .transform(asNumber)
      .pipe(numberField(context, field)),
    { type: 'number', ...words(field) },
  );

/** A whole number of 0 or more. */
export const queryWhole = (context: SchemaContext, field: NumberField) =>
  described(
    context,
    z
      .string()
      .regex(WHOLE, 'must be a whole number of at most 9 digits')
      .transform(asNumber)
      .pipe(wholeNumber(context, field)),
    { type: 'integer', ...words(field) },
  );

/** A bare number in the unit in force, or a number with its unit. */
export const queryQuantity = (context: SchemaContext, quantity: Quantity, field: EnteredQuantity) =>
  described(
    context,
    z
      .string()
      .transform(asQuantity)
      .pipe(entered(context, quantity, field)),
    { type: ['number', 'string'], ...quantityWords(quantity, field) },
  );
