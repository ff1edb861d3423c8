/** The middle of a list of measurements. */

/** The value in the middle, or half way between the two there; throws without any. */
export function median(values: readonly number[]): number {
  const ascending = values.toSorted((a, b) => a - b);
  const middle = (ascending.length - 1) / 2;
  const low = ascending[Math.floor(middle)];
  const high = ascending[Math.ceil(middle)];
  if (low === undefined || high === undefined) throw new Error('there is nothing to take the median of');
  return (low + high) / 2;
}
