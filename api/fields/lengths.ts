/** Documents lengths, with the intervals that they share. */
import { type EnteredQuantity, entered } from '../units/entered.ts';
import type { SchemaContext } from '../units/schema-context.ts';

type Words = Pick<EnteredQuantity, 'description' | 'example'>;

/** A length from 0 to 10 km. */
export const length = (context: SchemaContext, quantity: 'length' | 'depth' | 'distance', words: Words) =>
  entered(context, quantity, { ...words, minimum: 0, maximum: 10_000 });

/** A length that something has: 0 is refused. */
export const extent = (context: SchemaContext, quantity: 'length' | 'depth' | 'distance', words: Words) =>
  entered(context, quantity, { ...words, minimum: 0, aboveMinimum: true, maximum: 10_000 });

/** A bore from 0.1 mm to 5 m. */
export const bore = (context: SchemaContext, words: Words) =>
  entered(context, 'diameter', { ...words, minimum: 1e-4, maximum: 5 });

export const roughness = (context: SchemaContext) =>
  entered(context, 'roughness', {
    description: 'Absolute roughness of the wall; 0.0015 mm where it is not stated.',
    minimum: 0,
    maximum: 0.05,
    example: 0.0015,
  });
