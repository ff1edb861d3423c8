/** Documents the pump that is installed on a loop. */

import { z } from '@hono/zod-openapi';
import type { InstalledPump } from '../../../models/loop/loop.ts';
import { idField } from '../../fields/id-field.ts';
import { wholeNumber } from '../../fields/number-field.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';

export const installed = perContext(
  (context): z.ZodType<InstalledPump> =>
    named(
      context,
      'InstalledPump',
      z.strictObject({
        pump: idField(context, { description: 'Id or key of a stored pump, answered as its id.' }),
        count: wholeNumber(context, {
          description: 'How many of them run side by side.',
          minimum: 1,
          maximum: 100,
          example: 1,
          default: 1,
        }),
        setting: entered(context, 'setting', {
          description: 'The setting that is dialled.',
          minimum: 0,
          aboveMinimum: true,
          maximum: 100,
          example: 80,
        }),
        checkValves: described(context, z.boolean(), {
          description: 'Whether each pump has a check valve behind it.',
          examples: [true],
        }).optional(),
        since: described(context, z.iso.date(), {
          description: 'The day on which it was installed.',
          examples: ['2025-04-01'],
        }).optional(),
      }),
      { description: 'The pump that a loop has.' },
    ),
);
