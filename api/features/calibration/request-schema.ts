/** Documents the request for a calibration. */
import { z } from '@hono/zod-openapi';
import { bodyInstant } from '../../fields/instant.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';

export const calibrationRequest = perContext((context) =>
  named(
    context,
    'CalibrationRequest',
    z
      .strictObject({
        from: bodyInstant(context, {
          description: 'Readings from this instant on are taken; all earlier ones where it is left out.',
          example: '2026-03-01T00:00:00Z',
        }).optional(),
        to: bodyInstant(context, {
          description: 'Readings before this instant are taken; those until now where it is left out.',
          example: '2026-04-01T00:00:00Z',
        }).optional(),
        apply: described(context, z.boolean().default(false), {
          description:
            'Whether the loop is computed with these factors from now on; needs the ETag of the loop in If-Match.',
          default: false,
          examples: [false],
        }),
      })
      .refine(({ from, to }) => from === undefined || to === undefined || from < to, {
        path: ['to'],
        message: 'must be after `from`',
      }),
    { description: 'Which readings are taken, and whether their factors are put to use.' },
  ),
);
