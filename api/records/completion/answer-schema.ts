/** Documents completions of routine checks in answers. */
import { z } from '@hono/zod-openapi';
import { calendarDate } from '../../fields/clock-fields.ts';
import { listSchema } from '../../fields/list-schema.ts';
import { recordFields } from '../../fields/record-fields.ts';
import { unitsField } from '../../units/answer-units.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { instant, nextDueField } from '../task/answer-schema.ts';
import { completionFields } from './schema.ts';

const shape = (context: SchemaContext) => ({
  ...recordFields(context),
  task: described(context, z.string(), { description: 'Id of the check.', examples: ['0198f1c2'] }),
  at: instant(context, 'When it was done, in UTC.'),
  day: calendarDate(context, {
    description: 'The day on which it was done, as the clocks of the site showed when it was entered.',
    example: '2026-01-15',
  }),
  ...completionFields(context),
});

export const completionItem = perContext((context) =>
  named(context, 'CompletionItem', z.strictObject(shape(context)), {
    description: 'One time that a check was done.',
  }),
);

export const completionSchema = perContext((context) =>
  named(
    context,
    'Completion',
    z.strictObject({ ...shape(context), nextDue: nextDueField(context), units: unitsField(context) }),
    { description: 'One time that a check was done, and when the check is due next.' },
  ),
);

export const completionList = perContext((context) =>
  listSchema(context, 'CompletionList', completionItem(context)),
);
