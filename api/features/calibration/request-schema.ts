/** Documents the request for a calibration. */
import { z } from '@hono/zod-openapi';
import { bodyInstant } from '../../fields/instant.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';

/** What an answer has besides where it is asked for. */
const INCLUDED = ['nextReadings', 'speeds', 'fit'] as const;
export type Included = (typeof INCLUDED)[number];

export const calibrationRequest = perContext((context) =>
  named(
    context,
    'Calibration',
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
        include: described(context, z.array(z.enum(INCLUDED)).max(INCLUDED.length).default([]), {
          description: 'Parts that the answer shall have besides.',
          examples: [['nextReadings']],
        }),
      })
      .refine(({ from, to }) => from === undefined || to === undefined || from < to, {
        path: ['to'],
        message: 'must be after `from`',
      }),
    { description: 'Which readings are taken, and whether their factors are put to use.' },
  ),
);
