/** Writes a duration with two figures, in the largest unit of which it has two or more. */
import {
  DAYS_PER_YEAR,
  SECONDS_PER_DAY,
  SECONDS_PER_HOUR,
  SECONDS_PER_MINUTE,
} from '../../models/calendar/time-factors.ts';
import { sayNumber } from './numbers-in-words.ts';

const DIGITS = 2;

/** Seconds of each unit, the largest first. */
const UNITS = [
  ['years', DAYS_PER_YEAR * SECONDS_PER_DAY],
  ['days', SECONDS_PER_DAY],
  ['h', SECONDS_PER_HOUR],
  ['min', SECONDS_PER_MINUTE],
] as const;

/** Below this many of a unit a smaller one is taken. */
const LEAST = 2;

/** A time in seconds of 0 or more: `5.5 h`, `71 min`. */
export function sayDuration(seconds: number): string {
  const [unit, length] = UNITS.find(([, each]) => seconds >= LEAST * each) ?? ['s', 1];
  return `${sayNumber(seconds / length, DIGITS)} ${unit}`;
}
