/** The request for the starter set of a loop. */
import { z } from '@hono/zod-openapi';
import { firstDueField } from '../../records/task/schema.ts';
import { named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';

export const starterRequest = perContext((context) =>
  named(
    context,
    'StarterRequest',
    z.strictObject({
      firstDue: firstDueField(context).optional(),
    }),
    { description: 'When the checks are due for the first time; today where it is left out.' },
  ),
);
