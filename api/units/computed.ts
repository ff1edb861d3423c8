/** Writes figures that the service computes, with six significant digits. */
import { z } from '@hono/zod-openapi';
import { decodeNumber, encodeNumber } from './convert.ts';
import { described } from './described.ts';
import { quantityWords } from './entered.ts';
import { markQuantity } from './quantity-of.ts';
import { roundComputed } from './round.ts';
import type { SchemaContext } from './schema-context.ts';
import type { Quantity } from './table.ts';

interface ComputedWords {
  readonly description: string;
  /** In the metric unit. */
  readonly example: number;
}

export type ComputedCodec = z.ZodType<number, number>;

/** A quantity; a value that is not finite is refused. */
export function computed(context: SchemaContext, quantity: Quantity, words: ComputedWords): ComputedCodec {
  const { system } = context;
  const codec = z.codec(z.number(), z.number(), {
    decode: (value) => decodeNumber(value, quantity, system),
    encode: (value) => roundComputed(encodeNumber(value, quantity, system)),
  });
  return described(context, markQuantity(codec, quantity), {
    type: 'number',
    ...quantityWords(quantity, words),
  });
}

/** A number without a unit, or in one that its name says: a fraction, money, a coefficient. */
export function computedNumber(
  context: SchemaContext,
  { description, example }: ComputedWords,
): ComputedCodec {
  const codec = z.codec(z.number(), z.number(), { decode: (value) => value, encode: roundComputed });
  return described(context, codec, { type: 'number', description, examples: [example] });
}
