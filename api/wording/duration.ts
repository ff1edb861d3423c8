/** Writes a duration with two figures, in the largest unit of which it has two or more. */
import { sayNumber } from './numbers-in-words.ts';

const DIGITS = 2;

/** Seconds of each unit, the largest first. */
const UNITS = [
  ['years', 365 * 86_400],
  ['days', 86_400],
  ['h', 3_600],
  ['min', 60],
] as const;

/** Below this many of a unit a smaller one is taken. */
const LEAST = 2;

/** A time in seconds of 0 or more: `5.5 h`, `71 min`. */
export function sayDuration(seconds: number): string {
  const [unit, length] = UNITS.find(([, each]) => seconds >= LEAST * each) ?? ['s', 1];
  return `${sayNumber(seconds / length, DIGITS)} ${unit}`;
}
