/** Joins points by straight lines. */

/** y [unit of ys] at x [unit of xs], of points by rising xs; beyond them that of the nearest. NaN without points. */
export function interpolate(xs: readonly number[], ys: readonly number[], x: number): number {
  const place = xs.findIndex((one) => one >= x);
  const above = place < 0 ? xs.length - 1 : place;
  const below = Math.max(0, place < 0 ? above : place - 1);
  const [from = Number.NaN, to = Number.NaN] = [xs[below], xs[above]];
  const [start = Number.NaN, end = Number.NaN] = [ys[below], ys[above]];
  return to > from ? start + ((x - from) / (to - from)) * (end - start) : end;
}
