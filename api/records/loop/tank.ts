/** Documents the tank of a loop. */
import { z } from '@hono/zod-openapi';
import type { Tank } from '../../../models/loop/loop.ts';
import { extent } from '../../fields/lengths.ts';
import { named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';

export const tank = perContext(
  (context): z.ZodType<Tank> =>
    named(
      context,
      'Tank',
      z.strictObject({
        volume: entered(context, 'volume', {
          description: 'The volume of its water.',
          minimum: 0,
          aboveMinimum: true,
          maximum: 1e6,
          example: 2400,
        }).optional(),
        area: entered(context, 'area', {
          description: 'The area of its surface.',
          minimum: 0,
          aboveMinimum: true,
          maximum: 1e6,
          example: 4,
        }).optional(),
        width: extent(context, 'length', { description: 'Its inside width.', example: 0.8 }).optional(),
        depth: extent(context, 'depth', { description: 'The depth of its water.', example: 0.6 }).optional(),
      }),
      { description: 'The tank that a loop draws from and delivers to.' },
    ),
);
