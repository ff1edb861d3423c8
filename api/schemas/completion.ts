/** Completions of routine checks in requests. */
import { z } from '@hono/zod-openapi';
import { named } from '../units/described.ts';
import { perContext } from '../units/per-context.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import { describedInstant } from './instant.ts';
import { minutesField } from './maintenance-task.ts';
import { acceptedFields } from './record-fields.ts';
import { COMPLETION_FIGURES, ignoredFigures } from './task-figures.ts';
import { textField } from './text-field.ts';

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
      at: describedInstant(context, {
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
