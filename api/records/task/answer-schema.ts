/** Documents routine checks in answers. */
import { z } from '@hono/zod-openapi';
import { cautionSchema } from '../../fields/caution.ts';
import { calendarDate } from '../../fields/clock-fields.ts';
import { answeredKey } from '../../fields/key-field.ts';
import { nullable } from '../../fields/nullable.ts';
import { recordFields } from '../../fields/record-fields.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { targetFields, taskFields } from './schema.ts';

export const count = (context: SchemaContext, description: string, example: number) =>
  described(context, z.int(), { description, examples: [example] });

const flag = (context: SchemaContext, description: string, example: boolean) =>
  described(context, z.boolean(), { description, examples: [example] });

export const instant = (context: SchemaContext, description: string) =>
  described(context, z.iso.datetime(), { description, examples: ['2026-01-15T12:00:00.000Z'] });

export const nextDueField = (context: SchemaContext) =>
  calendarDate(context, {
    description:
      'The day on which it is due next, by the calendar of the site: one interval after it was last done, never before `firstDue`.',
    example: '2026-12-01',
  });

const NO_RATE = 'null where the site has no `labourRate`.';

export const annualCostField = (context: SchemaContext, description: string, example: number) =>
  nullable(computedNumber(context, { description: `${description}; ${NO_RATE}`, example }));

export const currencyField = (context: SchemaContext) =>
  described(context, z.string(), { description: "The site's currency.", examples: ['EUR'] });

const taskShape = (context: SchemaContext) => ({
  ...recordFields(context),
  ...answeredKey(context),
  ...taskFields(context),
  ...targetFields(context),
  firstDue: calendarDate(context, {
    description: 'The day on which it is due for the first time, by the calendar of the site.',
    example: '2026-12-01',
  }),
  nextDue: nextDueField(context),
  due: flag(context, 'Whether it is due today or has been, by the calendar of the site.', false),
  overdue: flag(context, 'Whether the day on which it was due has gone by.', false),
  daysUntilDue: count(context, 'Days until it is due; negative where it is overdue.', 6),
  lastDone: described(context, nullable(z.iso.datetime()), {
    description: 'When it was last done; null: never.',
    examples: ['2026-01-15T12:00:00.000Z'],
  }),
  completions: count(context, 'How many times it was done.', 3),
  timesAYear: computedNumber(context, {
    description: 'How often it comes round in a year of 365 days.',
    example: 52.1429,
  }),
  annualHours: computedNumber(context, { description: 'Hours of work a year.', example: 8.69048 }),
  annualParts: computedNumber(context, { description: 'What parts cost a year.', example: 0 }),
  annualCost: annualCostField(context, 'What parts and work cost a year', 260.714),
  currency: currencyField(context),
});

export const cautionsField = (context: SchemaContext) =>
  described(context, z.array(cautionSchema(context)), {
    description: 'What whoever does it must know.',
  });

export const taskItem = perContext((context) =>
  named(context, 'MaintenanceTaskItem', z.strictObject(taskShape(context)), {
    description: 'A routine check in a list.',
  }),
);

export const taskAnswerSchema = perContext((context) =>
  named(
    context,
    'MaintenanceTask',
    z.strictObject({ ...taskShape(context), cautions: cautionsField(context), units: unitsField(context) }),
    { description: 'A routine check, and when it is due.' },
  ),
);

export const starterAnswerSchema = perContext((context) =>
  named(
    context,
    'StarterTasks',
    z.strictObject({
      items: described(context, z.array(taskItem(context)), {
        description: 'The checks that were made; none where the loop had them all.',
      }),
      kept: count(context, 'How many checks the loop had before, whoever entered them.', 0),
      cautions: cautionsField(context),
      units: unitsField(context),
    }),
    { description: 'The routine checks that common practice asks of a loop.' },
  ),
);

const attention = perContext((context) =>
  named(
    context,
    'MaintenanceAttention',
    z.strictObject({
      tasks: count(context, 'How many checks there are.', 5),
      due: count(context, 'How many are due, those that are overdue included.', 1),
      overdue: count(context, 'How many are overdue.', 0),
      hours: computedNumber(context, { description: 'Hours of work a year.', example: 14.2 }),
      parts: computedNumber(context, { description: 'What parts cost a year.', example: 40 }),
      labour: annualCostField(context, 'What the hours cost', 426),
      cost: annualCostField(context, 'What parts and work cost a year', 466),
      currency: currencyField(context),
    }),
    { description: 'What checks ask of the people of a site in a year.' },
  ),
);

export const taskListSchema = perContext((context) =>
  named(
    context,
    'MaintenanceTaskList',
    z.strictObject({
      items: described(context, z.array(taskItem(context)), {
        description: 'In the order of their creation.',
      }),
      next: described(context, nullable(z.string()), {
        description: 'The `cursor` of the next page; null on the last.',
      }),
      today: calendarDate(context, {
        description: 'The day that the clocks of the site show, by which checks are due.',
        example: '2026-11-25',
      }),
      attention: attention(context),
      cautions: cautionsField(context),
      units: unitsField(context),
    }),
    { description: 'A page of routine checks, and what all that the filters let through ask of a year.' },
  ),
);
