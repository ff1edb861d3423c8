/** Documents where the pressure gauges at a pump are tapped. */
import { z } from '@hono/zod-openapi';
import type { Gauges } from '../../../models/loop/loop.ts';
import { bore } from '../../fields/lengths.ts';
import { named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';

export const gauges = perContext(
  (context): z.ZodType<Gauges> =>
    named(
      context,
      'Gauges',
      z.strictObject({
        suctionDiameter: bore(context, {
          description: 'Bore of the pipe at the gauge before the pump.',
          example: 49.5,
        }),
        dischargeDiameter: bore(context, {
          description: 'Bore of the pipe at the gauge behind it.',
          example: 38.2,
        }),
      }),
      {
        description:
          'Bores at the pressure gauges, whose velocity heads the gauges do not show and the head of the pump includes (ISO 9906). Left out, pressures are taken as read in bores alike.',
      },
    ),
);
