/** Documents completions of routine checks in requests. */

import { z } from '@hono/zod-openapi';
import { calendarDate } from '../../fields/clock-fields.ts';
import { idField } from '../../fields/id-field.ts';
import { bodyInstant } from '../../fields/instant.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { textField } from '../../fields/text-field.ts';
import { named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { COMPLETION_FIGURES, ignoredFigures } from '../task/ignored-figures.ts';
import { minutesField } from '../task/schema.ts';

const NOTE_MAX = 2_000;

export const completionFields = (context: SchemaContext) => ({
  minutes: minutesField(context, 'Minutes that it took.').optional(),
  note: textField(context, {
    description: `What was seen or changed, 1 to ${NOTE_MAX} characters.`,
    example: 'Seal replaced.',
    maxLength: NOTE_MAX,
  }).optional(),
});

export const completionInput = perContext((context) =>
  named(
    context,
    'Completion',
    z.strictObject({
      at: bodyInstant(context, {
        description: 'When it was done, with an offset; not in the future. One completion an instant.',
        example: '2026-01-15T12:00:00Z',
      }),
      ...completionFields(context),
      ...acceptedFields(context),
      ...ignoredFigures(COMPLETION_FIGURES),
    }),
    { description: 'One time that a check was done.' },
  ),
);

/** As it is in the copy of a site: of a task, on a day that is known. */
export const completionCopy = perContext((context) =>
  z.strictObject({
    task: idField(context, { description: 'Id of the check.' }),
    at: bodyInstant(context, { description: 'When it was done.', example: '2026-01-15T12:00:00Z' }),
    day: calendarDate(context, { description: 'The day on which it was done.', example: '2026-01-15' }),
    ...completionFields(context),
    ...acceptedFields(context),
  }),
);
