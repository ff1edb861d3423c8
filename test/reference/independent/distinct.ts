/** How many values differ by more than 1e-9 of themselves. */
export function distinct(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  let count = 0;
  let last = Number.NEGATIVE_INFINITY;
  for (const value of sorted)
    if (value - last > 1e-9 * Math.abs(value)) {
      count += 1;
      last = value;
    }
  return count;
}
