/** Documents what would be chosen without the limit of the intake screen. */

import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { pumpRefSchema } from '../../records/pump/reference.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const screenSchema = (context: SchemaContext) =>
  z.strictObject({
    length: computed(context, 'length', { description: 'Least length of each screen.', example: 0.1436 }),
    count: described(context, z.int(), { description: 'How many equal screens.', examples: [1] }),
  });

export const withoutScreenLimitField = (context: SchemaContext) =>
  described(
    context,
    nullable(
      z.strictObject({
        candidate: described(context, z.int(), {
          description: 'Place in the request, from 0.',
          examples: [0],
        }),
        pump: pumpRefSchema(context),
        count: described(context, z.int(), { description: 'Equal pumps in parallel.', examples: [1] }),
        setting: settingField(context, 'The smallest setting at which all other conditions hold [%].', 80),
        flow: computed(context, 'flow', { description: 'Total flow.', example: 4620 }),
        power: computed(context, 'power', {
          description: 'Electrical power, standby included.',
          example: 62,
        }),
        annualCost: nullable(
          computedNumber(context, { description: 'Cost of a year; null without a price.', example: 114 }),
        ),
        meanVelocity: computed(context, 'velocity', {
          description: 'Through the part-clogged openings of the screen as it is, on average.',
          example: 0.1645,
        }),
        peakVelocity: computed(context, 'velocity', {
          description: 'Through the busiest of them.',
          example: 0.1645,
        }),
        screen: nullable(screenSchema(context)),
      }),
    ),
    {
      description:
        'The choice that only the screen forbids, and as `screen` the least screen of the same kind that would allow it; null where the screen decides nothing.',
    },
  );
