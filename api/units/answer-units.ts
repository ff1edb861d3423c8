/** Makes the map of units that an answer carries. */
import { z } from '@hono/zod-openapi';
import { unitInForce } from './convert.ts';
import { described } from './described.ts';
import type { SchemaContext } from './schema-context.ts';
import type { Quantity } from './table.ts';
import type { UnitSystem } from './unit-system.ts';

export type AnswerUnits = Readonly<Record<string, string>>;

export const answerUnits = (quantities: readonly Quantity[], system: UnitSystem): AnswerUnits =>
  Object.fromEntries(quantities.map((quantity) => [quantity, unitInForce(quantity, system)]));

/** The field `units` of an answer; `defineRoute` fills it in. */
export const unitsField = (context: SchemaContext): z.ZodType<AnswerUnits> =>
  described(context, z.record(z.string(), z.string()), {
    description: 'The unit of each quantity in this answer, by the name of the quantity.',
    examples: [{ flow: 'L/h', head: 'm' }],
  });
