/** Documents records whose form in the copy of a site differs from their own answers. */

import { z } from '@hono/zod-openapi';
import type { MaintenanceTask } from '../../../models/maintenance/task.ts';
import { calendarDate } from '../../fields/clock-fields.ts';
import { idField } from '../../fields/id-field.ts';
import { bodyInstant } from '../../fields/instant.ts';
import { answeredKey } from '../../fields/key-field.ts';
import { nullable } from '../../fields/nullable.ts';
import { acceptedFields, recordFields } from '../../fields/record-fields.ts';
import type { CopiedBaseline } from '../../records/baseline/contract.ts';
import type { CopiedCompletion } from '../../records/completion/contract.ts';
import { completionCopy, completionFields } from '../../records/completion/schema.ts';
import { type CopiedReadings, READINGS_TOGETHER } from '../../records/reading/contract.ts';
import { readingSchema } from '../../records/reading/schema.ts';
import { targetFields, taskCopy, taskFields } from '../../records/task/schema.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const idOf = (context: SchemaContext, noun: string) =>
  idField(context, { description: `Id of its ${noun}.` });

/** A task as entered. */
export const taskCopyItem = perContext((context) =>
  named(
    context,
    'MaintenanceTask.exported',
    z.strictObject({
      ...recordFields(context),
      ...answeredKey(context),
      ...taskFields(context),
      ...targetFields(context),
      firstDue: calendarDate(context, { description: 'Due for the first time.', example: '2026-12-01' }),
    }),
    { description: 'A routine check as it was entered.' },
  ),
);

export const taskCopyInput = perContext(
  (context): z.ZodType<MaintenanceTask> =>
    named(context, 'MaintenanceTask.imported', taskCopy(context), {
      description: 'A routine check as it was entered.',
    }),
);

const COMPLETION = { description: 'One time that a check was done.' };

export const completionCopyItem = perContext((context) =>
  named(
    context,
    'Completion.exported',
    z.strictObject({
      ...recordFields(context),
      task: idOf(context, 'check'),
      at: bodyInstant(context, { description: 'When it was done.', example: '2026-01-15T12:00:00.000Z' }),
      day: calendarDate(context, {
        description: 'The day that the clocks of the site showed.',
        example: '2026-01-15',
      }),
      ...completionFields(context),
    }),
    COMPLETION,
  ),
);

export const completionCopyInput = perContext(
  (context): z.ZodType<CopiedCompletion> =>
    named(context, 'Completion.imported', completionCopy(context), COMPLETION),
);

const readingsShape = (context: SchemaContext) => ({
  loop: idOf(context, 'loop'),
  readings: described(context, z.array(readingSchema(context)).min(1).max(READINGS_TOGETHER), {
    description: 'In the order of time.',
  }),
});

const READINGS = { description: 'Some of the readings of a loop.' };

export const readingsCopyItem = perContext((context) =>
  named(
    context,
    'ReadingsBlock',
    z.strictObject({ ...recordFields(context), ...readingsShape(context) }),
    READINGS,
  ),
);

export const readingsCopyInput = perContext(
  (context): z.ZodType<CopiedReadings> =>
    named(
      context,
      'ReadingsBlock',
      z.strictObject({ ...readingsShape(context), ...acceptedFields(context) }),
      READINGS,
    ),
);

const baselineShape = (context: SchemaContext) => ({
  loop: idOf(context, 'loop'),
  requestedFrom: described(
    context,
    nullable(bodyInstant(context, { description: 'As requested.', example: '2026-04-01T00:00:00.000Z' })),
    { description: 'From when on it was requested; null: it was not.', examples: [null] },
  ),
  changedAt: described(
    context,
    nullable(bodyInstant(context, { description: 'When.', example: '2026-04-01T00:00:00.000Z' })),
    {
      description: 'When pipework or pump last changed; null: not since readings are taken.',
      examples: [null],
    },
  ),
});

const BASELINE = { description: 'Where the baseline of a loop begins.' };

export const baselineCopyItem = perContext((context) =>
  named(
    context,
    'Baseline.exported',
    z.strictObject({ ...recordFields(context), ...baselineShape(context) }),
    BASELINE,
  ),
);

export const baselineCopyInput = perContext(
  (context): z.ZodType<CopiedBaseline> =>
    named(
      context,
      'Baseline.imported',
      z.strictObject({ ...baselineShape(context), ...acceptedFields(context) }),
      BASELINE,
    ),
);

const COMPUTED = {
  description:
    'What was computed once and is kept as it is, in SI; it comes in as it went out, or it is refused.',
};

const kept = (context: SchemaContext) =>
  described(context, z.record(z.string(), z.unknown()), {
    description: 'Question and figures as they are stored.',
  });

export const computedCopyItem = perContext((context) =>
  named(
    context,
    'StoredAnswer',
    z.strictObject({ ...recordFields(context), document: kept(context) }),
    COMPUTED,
  ),
);

/** Its document is still to be looked at. */
export const computedCopyInput = perContext((context) =>
  named(
    context,
    'StoredAnswer',
    z.strictObject({ document: kept(context), ...acceptedFields(context) }),
    COMPUTED,
  ),
);
