/** Finds a straight trend that outliers hardly move: the median of the slopes between all pairs. */

/** A point of a trend. */
export interface TrendPoint {
  /** [any], as of all points. */
  readonly x: number;
  /** [any], as of all points. */
  readonly y: number;
  /** Number of its block [-]: points are compared within their block alone; 0 where it is left out. */
  readonly block?: number | undefined;
}

export interface Trend {
  /** [unit of y/unit of x] */
  readonly slope: number;
  /**
   * Slopes [unit of y/unit of x] that a confidence of the asked deviate leaves possible; infinite where points are
   * too few.
   */
  readonly interval: { readonly low: number; readonly high: number };
  /** Median of y - slope x over the last block [unit of y]. */
  readonly intercept: number;
}

/** Two-sided 95 % of the standard normal distribution. */
export const DEVIATE_95 = 1.959964;

/** Half a million pairs. */
export const TREND_POINTS_MAX = 1_000;

/**
 * The Theil-Sen slope, with the interval of Sen.
 *
 * slope = median over pairs with x_i < x_j of (y_j - y_i)/(x_j - x_i). Interval: of the N slopes in order, those at
 * the ranks (N - C)/2 and (N + C)/2 + 1, rounded outward, C = deviate sqrt(V), V Kendall's variance
 * (n(n-1)(2n+5) - sum t(t-1)(2t+5))/18 with t the sizes of groups of equal x and of equal y.
 * With blocks, as where something is put back to its start now and then, pairs are taken within each and V is the sum
 * of theirs (the seasonal slope of Hirsch, Slack and Smith 1982). Points may be in any order. Up to 29 % of them may
 * be outliers.
 * @param points x and y in units of their own [any]; at most `TREND_POINTS_MAX`.
 * @param deviate of the standard normal distribution [-], 1.959964 for 95 %.
 * @returns null with fewer than two distinct x.
 * Errors: throws where there are more points.
 * Sources: Hirsch, Slack and Smith 1982, Water Resources Research 18; Sen 1968, Journal of the American Statistical
 *   Association 63; Kendall 1955, Rank Correlation Methods (variance with ties).
 * Example: Sen's seven points (1,9) (2,15) (3,19) (4,20) (10,45) (12,55) (18,78) rise by 4.
 */
export function theilSen(points: readonly TrendPoint[], deviate: number = DEVIATE_95): Trend | null {
  if (points.length > TREND_POINTS_MAX) throw new Error(`more than ${TREND_POINTS_MAX} points for a trend`);
  const slopes = slopesOf(points);
  if (slopes.length === 0) return null;
  const slope = medianOfSorted(slopes);
  const blocks = blocksOf(points);
  const variance = blocks.reduce((sum, own) => sum + kendallVariance(own), 0);
  const half = (deviate * Math.sqrt(variance)) / 2;
  const low = Math.floor(slopes.length / 2 - half) - 1;
  const high = Math.ceil(slopes.length / 2 + half);
  const intercept = median((blocks.at(-1) ?? []).map(({ x, y }) => y - slope * x));
  return {
    slope,
    interval: {
      low: slopes[low] ?? Number.NEGATIVE_INFINITY,
      high: slopes[high] ?? Number.POSITIVE_INFINITY,
    },
    intercept,
  };
}

const blockOf = ({ block = 0 }: TrendPoint): number => block;

/** By rising block. */
function blocksOf(points: readonly TrendPoint[]): readonly (readonly TrendPoint[])[] {
  const blocks = new Map<number, TrendPoint[]>();
  for (const point of points) {
    const own = blocks.get(blockOf(point));
    if (own === undefined) blocks.set(blockOf(point), [point]);
    else own.push(point);
  }
  return [...blocks].sort(([a], [b]) => a - b).map(([, own]) => own);
}

/** In ascending order. */
function slopesOf(points: readonly TrendPoint[]): Float64Array {
  const slopes = new Float64Array((points.length * (points.length - 1)) / 2);
  let count = 0;
  for (const [i, a] of points.entries()) {
    for (let j = i + 1; j < points.length; j += 1) {
      const b = points[j];
      if (b === undefined || b.x === a.x || blockOf(a) !== blockOf(b)) continue;
      slopes[count] = (b.y - a.y) / (b.x - a.x);
      count += 1;
    }
  }
  return slopes.subarray(0, count).sort();
}

function kendallVariance(points: readonly TrendPoint[]): number {
  const term = (n: number) => n * (n - 1) * (2 * n + 5);
  const ties = (values: readonly number[]) => groupSizes(values).reduce((sum, size) => sum + term(size), 0);
  const tied = ties(points.map(({ x }) => x)) + ties(points.map(({ y }) => y));
  return Math.max(0, term(points.length) - tied) / 18;
}

function groupSizes(values: readonly number[]): readonly number[] {
  const sizes = new Map<number, number>();
  for (const value of values) sizes.set(value, (sizes.get(value) ?? 0) + 1);
  return [...sizes.values()];
}

/** The median of some values of one unit [any]; not a number where there are none. */
export function median(values: readonly number[]): number {
  return medianOfSorted(Float64Array.from(values).sort());
}

function medianOfSorted(sorted: Float64Array): number {
  const low = sorted[Math.floor((sorted.length - 1) / 2)] ?? Number.NaN;
  const high = sorted[Math.ceil((sorted.length - 1) / 2)] ?? Number.NaN;
  return (low + high) / 2;
}
