/** Documents routine checks in requests. */

import { z } from '@hono/zod-openapi';
import { dayOfText } from '../../../models/calendar/civil-text.ts';
import { type MaintenanceTask, TASK_KINDS } from '../../../models/maintenance/task.ts';
import { calendarDate } from '../../fields/clock-fields.ts';
import { idField } from '../../fields/id-field.ts';
import { bodyInstant } from '../../fields/instant.ts';
import { acceptedKey } from '../../fields/key-field.ts';
import { enteredMoney } from '../../fields/money.ts';
import { numberField } from '../../fields/number-field.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { nameField } from '../../fields/text-field.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { calendarInterval } from './calendar-interval.ts';
import { ignoredFigures, TASK_FIGURES } from './ignored-figures.ts';

const MINUTES_MAX = 1e5;
const DATE_LENGTH = 10;
/** Those of instants. */
const YEARS = { first: 1971, last: 2200 } as const;

const isInRange = (date: string): boolean => {
  const year = Number(date.slice(0, 4));
  return year >= YEARS.first && year <= YEARS.last;
};

const FIRST_DUE = {
  description:
    'The day on which it is due for the first time, by the calendar of the site. Entered as an instant with its offset, the day that the clocks of the site show then.',
  example: '2026-12-01',
};

export const minutesField = (context: SchemaContext, description: string) =>
  numberField(context, { description, minimum: 0, maximum: MINUTES_MAX, example: 10 });

export const targetFields = (context: SchemaContext) => ({
  loop: idField(context, {
    description: 'Id or key of the loop that it is of, answered as its id; either this or `pump`.',
  }).optional(),
  pump: idField(context, {
    description: 'Id or key of the pump that it is of, answered as its id; either this or `loop`.',
    example: '0198f1c3',
  }).optional(),
});

export const taskKind = (context: SchemaContext) => {
  const description =
    'What it is a check of. A `wet-end-service` stands for the `service` that the pump states, and other figures count one of the two.';
  const kinds = z.enum(TASK_KINDS);
  return described(context, context.side === 'answer' ? kinds : kinds.default('other'), {
    description,
    examples: ['screen-cleaning'],
  });
};

export const taskFields = (context: SchemaContext) => ({
  title: nameField(context, {
    description: 'What is to be done, 1 to 120 characters, not unique.',
    example: 'Clean the intake screen',
  }),
  kind: taskKind(context),
  every: calendarInterval(context, {
    description:
      'The interval, P1D to P10Y, as a duration of ISO 8601 without time of day: years and months, or weeks and days.',
    example: 'P1W',
  }),
  minutes: minutesField(context, 'Minutes of work each time.'),
  parts: enteredMoney(context, {
    description: "What parts cost each time, in the site's currency.",
    example: 5,
    default: 0,
  }),
});

/** A date, or an instant whose day depends on the site's zone. */
export type FirstDue = { readonly date: string } | { readonly at: number };

export const firstDueField = (context: SchemaContext) => {
  const instant = bodyInstant({ ...context, documented: false }, FIRST_DUE);
  return described(
    context,
    z.string().transform((text, issues): FirstDue => {
      if (text.length <= DATE_LENGTH && dayOfText(text) !== null) {
        if (isInRange(text)) return { date: text };
        issues.addIssue({ code: 'custom', message: `must be in the years ${YEARS.first} to ${YEARS.last}` });
        return z.NEVER;
      }
      const read = instant.safeParse(text);
      if (read.success) return { at: read.data };
      issues.addIssue({ code: 'custom', message: 'must be a date such as 2026-12-01' });
      return z.NEVER;
    }),
    { type: 'string', ...FIRST_DUE, examples: [FIRST_DUE.example] },
  );
};

/** By exactly one of its loop and its pump. */
function withTarget<Task extends object>(
  { loop, pump, ...task }: Task & { readonly loop?: string | undefined; readonly pump?: string | undefined },
  issues: z.RefinementCtx,
) {
  const refuse = (path: string[], message: string) => issues.addIssue({ code: 'custom', path, message });
  if (loop !== undefined && pump !== undefined) refuse(['pump'], 'must not stand beside loop');
  if (loop !== undefined) return { ...task, loop };
  if (pump !== undefined) return { ...task, pump };
  refuse([], 'needs one of loop and pump');
  return z.NEVER;
}

const inputShape = (context: SchemaContext) => ({
  ...taskFields(context),
  ...targetFields(context),
  ...acceptedFields(context),
  ...acceptedKey(context),
  ...ignoredFigures(TASK_FIGURES),
});

export const taskInput = perContext((context) =>
  named(
    context,
    'MaintenanceTask',
    z.strictObject({ ...inputShape(context), firstDue: firstDueField(context) }).transform(withTarget),
    { description: 'A routine check of a loop or of a pump as its user enters it.' },
  ),
);

export type EnteredTask = z.output<ReturnType<typeof taskInput>>;

/** As it is in the copy of a site, the day of which is known. */
export const taskCopy = perContext(
  (context): z.ZodType<MaintenanceTask> =>
    z
      .strictObject({ ...inputShape(context), firstDue: calendarDate(context, FIRST_DUE) })
      .transform(withTarget),
);
