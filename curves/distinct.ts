/** Decides when two measured flows or speeds count as different. */

const RELATIVE_GAP = 1e-9;

/** Whether two values of one unit [any] are over 1e-9 apart, relative to the larger. */
export const areDistinct = (a: number, b: number): boolean =>
  Math.abs(a - b) > RELATIVE_GAP * Math.max(Math.abs(a), Math.abs(b));

/**
 * How many different values [-] there are among some of one unit: each counted one is over 1e-9 relative above the
 * one before.
 */
export function countDistinct(values: readonly number[]): number {
  let count = 0;
  let last: number | undefined;
  for (const value of values.toSorted((a, b) => a - b)) {
    if (last !== undefined && !areDistinct(last, value)) continue;
    count += 1;
    last = value;
  }
  return count;
}
