/** Documents times of day, days and months. */

import { z } from '@hono/zod-openapi';
import { dayOfText, minuteOfText } from '../../models/calendar/civil-text.ts';
import { DAY_KINDS } from '../../models/calendar/day-kind.ts';
import { MONTHS_PER_YEAR } from '../../models/calendar/time-factors.ts';
import { described } from '../units/described.ts';
import type { SchemaContext } from '../units/schema-context.ts';

interface Words {
  readonly description: string;
  readonly example: string;
}

/** 00:00 to 23:59: the end of a day is 00:00 of the next. */
export const timeOfDay = (context: SchemaContext, { description, example }: Words) =>
  described(
    context,
    z
      .string()
      .max(5)
      .refine((text) => minuteOfText(text) !== null, 'must be a time of day from 00:00 to 23:59'),
    { description, pattern: '^([01]\\d|2[0-3]):[0-5]\\d$', examples: [example] },
  );

export const calendarDate = (context: SchemaContext, { description, example }: Words) =>
  described(
    context,
    z
      .string()
      .max(10)
      .refine((text) => dayOfText(text) !== null, 'must be a date such as 2026-12-25'),
    { description, format: 'date', examples: [example] },
  );

function distinct(values: readonly unknown[], issues: z.RefinementCtx): void {
  for (const [place, value] of values.entries()) {
    if (values.indexOf(value) === place) continue;
    issues.addIssue({ code: 'custom', path: [place], message: `is ${JSON.stringify(value)} again` });
  }
}

export const dayKinds = (context: SchemaContext, description: string) =>
  described(context, z.array(z.enum(DAY_KINDS)).min(1).max(DAY_KINDS.length).superRefine(distinct), {
    description,
    examples: [['mon', 'tue', 'wed', 'thu', 'fri']],
  });

export const months = (context: SchemaContext, description: string) =>
  described(
    context,
    z.array(z.int().min(1).max(MONTHS_PER_YEAR)).min(1).max(MONTHS_PER_YEAR).superRefine(distinct),
    {
      description,
      examples: [[1, 2, 11, 12]],
    },
  );
