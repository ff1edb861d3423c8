/** Documents what a drift costs, against what ending it costs. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const figure = (context: SchemaContext, description: string, example: number) =>
  computedNumber(context, { description, example });

const cleaningSchema = perContext((context) =>
  named(
    context,
    'CheapestCleaning',
    z.strictObject({
      remedy: described(context, z.enum(['cleaning', 'service']), {
        description: 'A cleaning; a service of the pump where that is worn or draws more than its curve.',
        examples: ['cleaning'],
      }),
      cost: figure(context, 'What it costs once.', 15),
      source: described(context, z.enum(['asked', 'maintenance-task', 'pump-service']), {
        description:
          'Where that comes from: the query; of a cleaning the check of kind screen-cleaning of the loop; else the service that the pump states, or the check of kind wet-end-service.',
        examples: ['maintenance-task'],
      }),
      everyDays: described(context, z.int(), {
        description:
          'The interval at which cleanings and waste are cheapest together, sqrt(2 C/g) for a waste that grows by g a year each year; the time until an outlet falls short where that is less.',
        examples: [210],
      }),
      annualCost: figure(context, 'Cleanings and waste of a year at that interval T: C/T + g T/2.', 52),
      endsAtShortfall: described(context, z.boolean(), {
        description: 'Whether an outlet would fall short before the cheapest interval has passed.',
        examples: [false],
      }),
    }),
    { description: 'The cheapest interval of cleaning, or of service.' },
  ),
);

export const waitingSchema = perContext((context) =>
  named(
    context,
    'Waiting',
    z.strictObject({
      currency: described(context, z.string(), { description: 'Of every sum here.', examples: ['EUR'] }),
      residuals: z.strictObject({
        flow: figure(
          context,
          'Share of the flow beyond the data at the last reading, on its trend where that is sure: R of (1 + R)^-k. 0: no drift was found.',
          -0.12,
        ),
        power: figure(context, 'The same of the power.', -0.05),
      }),
      excessCost: figure(
        context,
        'What the flow by the data, won back by speed, costs a year now beyond what it cost by the data; pump at its installed setting round the clock, no static head.',
        22,
      ),
      growthPerYear: figure(context, 'By how much that grows each year.', 61),
      costOfAYear: figure(
        context,
        'What waiting another year costs: the excess and half of the growth.',
        52.5,
      ),
      cleaning: nullable(cleaningSchema(context)),
    }),
    { description: 'The cost of waiting; null without a price, or where no drift was found.' },
  ),
);
