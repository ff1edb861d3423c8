/** Documents what trimming saves against the loop as built. */

import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { pumpRefSchema } from '../../records/pump/reference.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const schema = (context: SchemaContext) =>
  z.strictObject({
    candidate: described(context, z.int(), {
      description: 'Place of the best candidate as built in the request, from 0.',
      examples: [0],
    }),
    pump: pumpRefSchema(context),
    count: described(context, z.int(), { description: 'Equal pumps in parallel.', examples: [1] }),
    setting: settingField(context, 'Its smallest setting that serves as built [% of full].', 74),
    annualEnergy: computed(context, 'energy', {
      description: 'Energy of a year as built.',
      example: 881.2,
    }),
    annualCost: nullable(
      computedNumber(context, { description: 'Its cost; null without a price.', example: 185.05 }),
    ),
    energySaving: computed(context, 'energy', {
      description: 'Energy that the trims save a year; negative where they cost more.',
      example: 130.4,
    }),
    costSaving: nullable(
      computedNumber(context, {
        description: 'Money that they save a year; null without a price.',
        example: 27.4,
      }),
    ),
  });

export const againstAsBuiltField = (context: SchemaContext) =>
  described(context, nullable(schema(context)), {
    description:
      'What the trims save: the best of the same request as built less the best trimmed. Null as built, and where one of the two serves at no setting.',
    examples: [null],
  });
