/** The robust trend of a series of residuals through its days. */
import { DEVIATE_95, median, type Trend, type TrendPoint, theilSen } from '../../curves/theil-sen.ts';
import { MS_PER_DAY } from '../calendar/zone-offsets.ts';
import type { DayPoint } from './day-points.ts';
import { deviationOf } from './recent-window.ts';

/** Of the slopes; as long as the sun takes, since growth goes with the seasons. */
export const MS_PER_YEAR = 365.25 * MS_PER_DAY;

/** Fewer points, or over less time, show no trend. */
const TREND_POINTS_LEAST = 6;
const TREND_DAYS_LEAST = 7;

/** Correlation of one day with the next from which on it counts, in its own errors, and the most that is taken. */
const CORRELATED = { errors: 2, most: 0.95 } as const;
/** Residuals farther out than these deviations are wild, and say nothing of correlation. */
const WILD = 3;

/** Whether points are enough, over enough time, for a trend or a change to be told. */
export const isLongEnough = (points: readonly DayPoint[]): boolean => {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || points.length < TREND_POINTS_LEAST) return false;
  return last.time - first.time >= TREND_DAYS_LEAST * MS_PER_DAY;
};

/**
 * Theil-Sen through the points, within cycles between cleanings; x in years since 1970, y the residual. Where a day goes with
 * the day before by a correlation r, the interval is wider by sqrt((1 + r)/(1 - r)). Null where there is too little to see one.
 *
 * Source: Hamed and Rao (1998), Journal of Hydrology 204, trend tests of autocorrelated data (from memory), at lag one.
 */
export function residualTrend(points: readonly DayPoint[]): Trend | null {
  const [first] = points;
  if (first === undefined || !isLongEnough(points)) return null;
  // Years from the first point on keep the digits of the slopes.
  const x0 = first.time / MS_PER_YEAR;
  const placed = points.map(
    ({ time, residual, cycle }): TrendPoint => ({ x: time / MS_PER_YEAR - x0, y: residual, block: cycle }),
  );
  const plain = theilSen(placed);
  if (plain === null) return null;
  const r = correlation(placed, plain);
  const trend = r === 0 ? plain : (theilSen(placed, DEVIATE_95 * Math.sqrt((1 + r) / (1 - r))) ?? plain);
  if (!Number.isFinite(trend.interval.low) || !Number.isFinite(trend.interval.high)) return null;
  return { ...trend, intercept: trend.intercept - trend.slope * x0 };
}

/** Of what is left beside the trend, from one point to the next of its block; 0 where none is told. */
function correlation(points: readonly TrendPoint[], { slope }: Trend): number {
  const left = besideTrend(points, slope);
  const most = WILD * deviationOf(left);
  const clipped = left.map((one) => Math.max(-most, Math.min(most, one)));
  const squares = clipped.reduce((sum, one) => sum + one ** 2, 0);
  const products = clipped.reduce((sum, one, i) => {
    const before = i > 0 && points[i - 1]?.block === points[i]?.block ? (clipped[i - 1] ?? 0) : 0;
    return sum + one * before;
  }, 0);
  const r = squares > 0 ? products / squares : 0;
  return r > CORRELATED.errors / Math.sqrt(points.length) ? Math.min(CORRELATED.most, r) : 0;
}

/** What is left of each point beside the slope, about the median of its block. */
function besideTrend(points: readonly TrendPoint[], slope: number): readonly number[] {
  const levels = new Map<number | undefined, number[]>();
  for (const { x, y, block } of points) levels.set(block, [...(levels.get(block) ?? []), y - slope * x]);
  const middles = new Map([...levels].map(([block, values]) => [block, median(values)]));
  return points.map(({ x, y, block }) => y - slope * x - (middles.get(block) ?? 0));
}

/** How much farther than 1.96 deviations 3.29 are, beyond which one in a thousand lies by chance. */
const SURER = 3.29 / DEVIATE_95 - 1;

/** Whether a trend is told from none even where many are looked at, again and again: at 99.9 %. */
export function isSure({ slope, interval: { low, high } }: Trend): boolean {
  return slope < 0 ? high + SURER * (high - slope) < 0 : low - SURER * (slope - low) > 0;
}

/** The residual that a trend has come to at an instant [ms]. */
export const onTrend = ({ slope, intercept }: Trend, time: number): number =>
  intercept + (slope * time) / MS_PER_YEAR;
