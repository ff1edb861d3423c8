/** Documents what a duty does to the animals, the temperature and the people around a loop. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const screenSchema = (context: SchemaContext) =>
  z.strictObject({
    meanVelocity: computed(context, 'velocity', {
      description: 'Flow over the open area that clogging leaves.',
      example: 0.126885,
    }),
    peakVelocity: computed(context, 'velocity', {
      description:
        "Through the busiest openings: of a cylinder those at its root, mean x y coth y with y = sqrt(2) x 0.6 x (one screen's open area that clogging leaves)/(pi diameter^2/4); the mean for other shapes.",
      example: 1.25588,
    }),
    cloggedFraction: computedNumber(context, {
      description: 'Share of the openings taken as clogged.',
      example: 0.5,
    }),
  });

const heatSchema = (context: SchemaContext) =>
  z.strictObject({
    power: computed(context, 'power', {
      description: 'Heat into the water while the pump runs.',
      example: 66.1634,
    }),
    motorEfficiencyAssumed: described(context, z.boolean(), {
      description: 'Whether 0.8 stood in for the efficiency of a dry motor.',
      examples: [false],
    }),
    dailyRise: nullable(
      computed(context, 'temperatureDifference', {
        description:
          'Warming in a day by the mean heat of its hours, before losses to the room; null without a volume of the tank.',
        example: 0.5823,
      }),
    ),
    annualEnergy: nullable(
      computed(context, 'energy', {
        description:
          'Electricity of a year that it costs the chiller or, negative, spares the heater; null where `heat` was not asked for.',
        example: 193.2,
      }),
    ),
    annualCost: nullable(
      computedNumber(context, {
        description: 'Cost of that electricity; null where not asked for, or without a price.',
        example: 40.57,
      }),
    ),
  });

const coveredSchema = (context: SchemaContext) =>
  z.strictObject({
    suctionHead: computed(context, 'head', {
      description: 'Suction at the covered intake, no water moving.',
      example: 2.49637,
    }),
    force: computedNumber(context, {
      description: 'Force on what covers it wholly [N].',
      example: 751.5,
    }),
  });

export const surroundingsShape = (context: SchemaContext) => ({
  screen: described(context, nullable(screenSchema(context)), {
    description: 'How fast water passes the openings of the intake screen; null without a screen.',
  }),
  heat: described(context, heatSchema(context), { description: 'What the pump does to the temperature.' }),
  coveredIntake: described(context, nullable(coveredSchema(context)), {
    description:
      'The pull of the one intake when something covers it; null where several screens share the flow, or no bore is known.',
  }),
});

/** Of one outlet. */
export const reachField = (context: SchemaContext) =>
  described(
    context,
    nullable(
      z.strictObject({
        velocity: computed(context, 'velocity', {
          description: 'Down to this velocity on the axis: the one asked for, else that of its stated reach.',
          example: 0.1,
        }),
        distance: computed(context, 'distance', {
          description: 'So far the stream reaches; 0 where it leaves slower.',
          example: 4.28443,
        }),
      }),
    ),
    { description: 'How far its stream reaches; null without a velocity, or where its bore is not known.' },
  );

/** Of a loop, whatever its pump. */
export const drainBackField = (context: SchemaContext) =>
  described(
    context,
    nullable(
      z.strictObject({
        volume: computed(context, 'volume', {
          description: 'What runs back: the tank down to the siphon break, and the discharge pipes.',
          example: 341.2,
        }),
        room: nullable(
          computed(context, 'volume', {
            description: "The basin's area times its freeboard; null without a basin.",
            example: 300,
          }),
        ),
        floods: described(context, nullable(z.boolean()), {
          description: 'Whether the volume is more than the room; null without a basin.',
          examples: [true],
        }),
        deepestSiphonBreak: nullable(
          computed(context, 'depth', {
            description: 'Deepest siphon break whose drain-back the basin holds; null without a basin.',
            example: 0.0436,
          }),
        ),
      }),
    ),
    {
      description:
        'What a power cut lets back into the basin; null where `siphonBreakDepth` or the area of the tank is not entered.',
    },
  );
