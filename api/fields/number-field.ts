/** Documents plain numbers: counts, fractions, money, times whose name says the unit. */
import { z } from '@hono/zod-openapi';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';

export interface NumberField {
  readonly description: string;
  readonly example: number;
  readonly minimum: number;
  readonly maximum: number;
  /** The minimum itself is refused. */
  readonly aboveMinimum?: boolean;
  /** Where it is given, a request may leave the field out. */
  readonly default?: number;
}

function bounded(number: z.ZodNumber, { minimum, maximum, aboveMinimum = false }: NumberField): z.ZodNumber {
  const from = aboveMinimum ? number.gt(minimum) : number.gte(minimum);
  return from.lte(maximum);
}

function field(
  context: SchemaContext,
  number: z.ZodNumber,
  facts: NumberField,
): z.ZodType<number, number | undefined> {
  const words = { description: facts.description, examples: [facts.example] };
  if (facts.default === undefined || context.side === 'answer') return described(context, number, words);
  return described(context, number.default(facts.default), words);
}

export const numberField = (context: SchemaContext, facts: NumberField) =>
  field(context, bounded(z.number(), facts), facts);

export const wholeNumber = (context: SchemaContext, facts: NumberField) =>
  field(context, bounded(z.int(), facts), facts);
