/** The trend that leads on from where a series stands, and when it meets a level. */
import { DEVIATE_95, type Trend } from '../../curves/theil-sen.ts';
import type { Assessed } from './assess-series.ts';
import { lastCycle } from './current-series.ts';
import type { DayPoint } from './day-points.ts';
import { deviationOf, medianError } from './recent-window.ts';
import { MS_PER_YEAR, onTrend, residualTrend } from './residual-trend.ts';

export interface Leading {
  readonly trend: Trend;
  /** Those that it goes through, of the last cycle. */
  readonly points: readonly DayPoint[];
}

/** How far a line may pass the present: a share, and so many standard errors. */
const AGREES = { share: 0.02, errors: 3 } as const;
/** Fewer points are not halved. */
const HALVED_LEAST = 12;

/**
 * The trend of all points; where the present lies off it, as with growth that gathers speed or after an untold cleaning, that of
 * the later half of them, or of the later half of those. Null where none is seen or none agrees.
 */
export function leadingTrend(one: Assessed): Leading | null {
  const last = one.points.at(-1);
  if (last === undefined) return null;
  const present = (one.since + last.time) / 2;
  const most = Math.max(AGREES.share, AGREES.errors * one.standardError);
  let points = lastCycle(one);
  let { trend } = one;
  while (trend !== null && Math.abs(onTrend(trend, present) - one.residual) > most) {
    if (points.length < HALVED_LEAST) return null;
    points = points.slice(Math.floor(points.length / 2));
    trend = residualTrend(points);
  }
  return trend === null ? null : { trend, points };
}

export interface Meeting {
  /** Instants [ms]; the ends of an interval of 95 %, null: no end. */
  readonly at: number;
  readonly earliest: number;
  readonly latest: number | null;
}

/**
 * When a + b u meets a level L, u the time from the middle of the points: u = (L - a)/b, and between the roots of
 * (b^2 - z^2 s_b^2) u^2 + 2 (a - L) b u + (a - L)^2 - z^2 s_a^2 = 0, s_a the error of the line there, s_b that of its slope,
 * z = 1.96: where only one root lies ahead of the fall there is no latest. Null for a slope of 0.
 *
 * Source: Fieller (1954), Journal of the Royal Statistical Society B 16, intervals of a ratio.
 */
export function meeting({ trend, points }: Leading, level: number): Meeting | null {
  const [first, last] = [points[0], points.at(-1)];
  const { slope, interval } = trend;
  if (first === undefined || last === undefined || slope === 0) return null;
  const middle = (first.time + last.time) / 2;
  const above = onTrend(trend, middle) - level;
  const left = points.map(({ time, residual }) => residual - onTrend(trend, time));
  const levelError = DEVIATE_95 * medianError(deviationOf(left), left.length);
  const slopeError = (interval.high - interval.low) / 2;
  const timeOf = (years: number) => Math.round(middle + years * MS_PER_YEAR);
  const expected = -above / slope;
  const square = slope ** 2 - slopeError ** 2;
  const root = Math.sqrt(Math.max(0, (above * slope) ** 2 - square * (above ** 2 - levelError ** 2)));
  const ends = [(-above * slope - root) / square, (-above * slope + root) / square];
  const earliest = square > 0 ? Math.min(...ends) : Math.min(expected, ...ends.filter((end) => end > 0));
  return {
    at: timeOf(expected),
    earliest: timeOf(Math.min(expected, earliest)),
    latest: square > 0 ? timeOf(Math.max(expected, ...ends)) : null,
  };
}
