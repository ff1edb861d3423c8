/** Documents the baseline of a loop. */
import { z } from '@hono/zod-openapi';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { countField, instantField, measureField, outletField, share } from './gauge-schema.ts';

const STARTED_BY = ['request', 'service', 'cleaning', 'installation', 'first-reading'] as const;

const effectSchema = (context: SchemaContext) =>
  z.strictObject({
    measure: measureField(context),
    outlet: outletField(context),
    change: share(
      context,
      'Mean since the cleaning against that of the baseline before: 0 where the cleaning restored everything.',
      -0.01,
    ),
    wonBack: share(
      context,
      'Mean since the cleaning against the last 30 days before it; absent where these hold too few readings.',
      0.09,
    ).optional(),
  });

export const baselineSchema = perContext((context) =>
  named(
    context,
    'Baseline',
    z.strictObject({
      from: instantField(context, 'When it begins.', '2026-04-01T00:00:00.000Z'),
      to: instantField(
        context,
        'When it ends, excluded; at the earliest, where it is incomplete.',
        '2026-04-29T00:00:00.000Z',
      ),
      startedBy: described(context, z.enum(STARTED_BY), {
        description:
          'What began it. `request`: a request for a baseline. `service`, `cleaning`: a completed maintenance task of kind `wet-end-service` or `screen-cleaning`. `installation`: the day of `installed.since`, or a change of pipework or pump. `first-reading`: none of these.',
        examples: ['first-reading'],
      }),
      dayCount: countField(context, 'Days in it with usable readings.', 28),
      requiredDayCount: countField(context, 'Days with usable readings that it needs.', 8),
      complete: described(context, z.boolean(), {
        description: 'Whether it has lasted 28 days and has the days that it needs.',
        examples: [true],
      }),
      cleaningEffect: described(context, z.array(effectSchema(context)), {
        description:
          'What the last cleaning changed, by measure; absent where no baseline was complete before it.',
      }).optional(),
    }),
    { description: 'The state that readings are compared with.' },
  ),
);
