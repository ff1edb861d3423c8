/** The interval in which an entered quantity must lie. */
import { roundComputed } from './round.ts';

export interface QuantityRange {
  /** In the unit kept inside. */
  readonly minimum: number;
  readonly maximum: number;
  /** The minimum itself is refused. */
  readonly aboveMinimum?: boolean;
}

// An entry of exactly the limit may land a rounding error beyond it.
const ROUNDING = 1e-12;

// Below any flow, length or power that could be meant; squares and quotients of smaller numbers leave the range of doubles.
const SMALLEST = 1e-12;

const beyond = (value: number, limit: number): boolean => value - limit > ROUNDING * Math.abs(limit);

/** What is wrong with a value, quoting the limit in the unit of the caller; undefined when it lies within. */
export function rangeFault(
  value: number,
  { minimum, maximum, aboveMinimum = false }: QuantityRange,
  { unit, shown }: { unit: string; shown: (limit: number) => number },
): string | undefined {
  const quoted = (limit: number) => `${roundComputed(shown(limit))} ${unit}`;
  if (value !== 0 && Math.abs(value) < SMALLEST) {
    return `is too close to 0: it must be 0, or at least ${quoted(SMALLEST)} in size`;
  }
  if (beyond(value, maximum)) return `must be at most ${quoted(maximum)}, not ${quoted(value)}`;
  if (aboveMinimum && value <= minimum) return `must be above ${quoted(minimum)}, not ${quoted(value)}`;
  if (beyond(minimum, value)) return `must be at least ${quoted(minimum)}, not ${quoted(value)}`;
  return undefined;
}
