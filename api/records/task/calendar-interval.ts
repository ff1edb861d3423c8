/** Documents intervals of the calendar, as durations of ISO 8601. */
import { z } from '@hono/zod-openapi';
import { Duration } from 'luxon';
import { failed, type Result, success } from '../../../curves/result.ts';
import { daysOf, type Interval, monthsOf, timesAYear } from '../../../models/maintenance/interval.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const LENGTH_MAX = 20;
const YEARS_MAX = 10;
const UNITS = ['years', 'months', 'weeks', 'days'] as const;

/** The interval that a text states, or what is wrong with it. */
function parseInterval(text: string): Result<Interval, string> {
  const duration = Duration.fromISO(text);
  if (!duration.isValid) return failed('must be a duration of ISO 8601, such as P1M, P2W or P1Y');
  const stated = Object.entries(duration.toObject());
  if (stated.some(([unit]) => !UNITS.some((known) => known === unit))) {
    return failed('must have no time of day: the shortest is P1D');
  }
  if (stated.some(([, value]) => !Number.isInteger(value) || value < 0)) {
    return failed('must be in whole numbers of 0 or more');
  }
  const interval: Interval = Object.fromEntries(stated.filter(([, value]) => value > 0));
  if (monthsOf(interval) > 0 && daysOf(interval) > 0) {
    return failed('must be in years and months, or in weeks and days');
  }
  if (!(timesAYear(interval) >= 1 / YEARS_MAX) || timesAYear(interval) > 365) {
    return failed(`must be from P1D to P${YEARS_MAX}Y`);
  }
  return success(interval);
}

/** Like `P1M`. */
export const intervalText = (interval: Interval): string => Duration.fromObject(interval).toISO() ?? '';

export const calendarInterval = (
  context: SchemaContext,
  { description, example }: { readonly description: string; readonly example: string },
) =>
  described(
    context,
    z.codec(z.string().max(LENGTH_MAX), z.custom<Interval>(), {
      decode(text, payload) {
        const parsed = parseInterval(text);
        if (parsed.ok) return parsed.value;
        payload.issues.push({ code: 'custom', message: parsed.failure, input: text });
        return z.NEVER;
      },
      encode: intervalText,
    }),
    { type: 'string', description, format: 'duration', maxLength: LENGTH_MAX, examples: [example] },
  );
