/** Documents what follows if a change goes on. */
import { z } from '@hono/zod-openapi';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { countField, instantField } from './gauge-schema.ts';

export const shortfallSchema = perContext((context) =>
  named(
    context,
    'ShortfallForecast',
    z.strictObject({
      outlet: described(context, z.string(), { description: 'The outlet.', examples: ['far end'] }),
      at: instantField(
        context,
        'When its flow falls below required, if this goes on; absent where it is not determined well enough, see `reason`.',
        '2026-08-01T00:00:00.000Z',
      ).optional(),
      earliest: instantField(
        context,
        'Start of the 95 % interval of that instant.',
        '2026-07-02T00:00:00.000Z',
      ),
      latest: instantField(
        context,
        'End of that interval; absent where the change may level off before.',
        '2026-08-30T00:00:00.000Z',
      ).optional(),
      reason: described(context, z.enum(['growth-not-determined', 'too-far']), {
        description:
          'Why `at` is absent. `growth-not-determined`: the interval is too wide. `too-far`: farther ahead than twice the record.',
        examples: ['growth-not-determined'],
      }).optional(),
    }),
    {
      description:
        'The first outlet that would fall below required at the installed setting if the change goes on as it has.',
    },
  ),
);

const money = (context: SchemaContext, description: string, example: number) =>
  computedNumber(context, { description, example });

const intervalSchema = perContext((context) =>
  named(
    context,
    'CheapestInterval',
    z.strictObject({
      action: described(context, z.enum(['cleaning', 'service']), {
        description: 'A service where the pump is worn or draws more, else a cleaning.',
        examples: ['cleaning'],
      }),
      cost: money(context, 'What one costs.', 15),
      costFrom: described(context, z.enum(['request', 'maintenance-task', 'pump-service']), {
        description:
          'Where the cost comes from: the query, the maintenance task of that kind, or the service stated at the pump.',
        examples: ['maintenance-task'],
      }),
      everyDays: countField(context, 'Interval at which that and the excess cost least together, days.', 49),
      annualCost: money(context, 'What they cost together per year at that interval.', 52),
      limitedByShortfall: described(context, z.boolean(), {
        description: 'Whether an outlet would fall below required before the cheapest interval has passed.',
        examples: [false],
      }),
    }),
    { description: 'The cheapest interval of cleaning or service.' },
  ),
);

export const waitingSchema = perContext((context) =>
  named(
    context,
    'Waiting',
    z.strictObject({
      currency: described(context, z.string(), { description: 'Of every amount here.', examples: ['EUR'] }),
      annualExcessCost: money(
        context,
        "What the baseline's flow, held by a higher setting, costs per year more than in the baseline; at most what the highest setting draws.",
        22,
      ),
      nextYearCost: money(context, 'That of the next year, if this goes on.', 52.5),
      capReachedAt: instantField(
        context,
        'From when on no setting restores the flow, if this goes on; absent where that is not foreseen within ten years.',
        '2026-11-01T00:00:00.000Z',
      ).optional(),
      cheapestInterval: intervalSchema(context).optional(),
    }),
    { description: 'The cost of waiting, if the change goes on as it has.' },
  ),
);
