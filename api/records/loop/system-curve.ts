/** Documents a system curve by its points. */
import { z } from '@hono/zod-openapi';
import { LIST_MAX } from '../../fields/limits.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';

const point = perContext((context) =>
  named(
    context,
    'SystemPoint',
    z.strictObject({
      flow: entered(context, 'flow', {
        description: 'Total flow.',
        minimum: 0,
        maximum: 10,
        example: 8000,
      }),
      head: entered(context, 'head', {
        description: 'Head that the loop needs for it.',
        minimum: 0,
        maximum: 1000,
        example: 2.1,
      }),
    }),
    { description: 'A point of a system curve.' },
  ),
);

export const systemCurve = perContext((context) =>
  named(
    context,
    'SystemCurve',
    z.strictObject({
      staticHead: entered(context, 'head', {
        description: 'The head at rest; without it 0 for one point, fitted for more.',
        minimum: 0,
        maximum: 1000,
        example: 0,
      }).optional(),
      points: described(context, z.array(point(context)).min(1).max(LIST_MAX), {
        description: 'Points that were measured or read off.',
      }),
    }),
    { description: 'Head against the square of the flow, through points.' },
  ),
);
