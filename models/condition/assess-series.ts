/** A series of residuals as where it stands now and where it goes. */
import { median, type Trend, type TrendPoint, theilSen } from '../../curves/theil-sen.ts';
import { MS_PER_DAY } from '../calendar/zone-offsets.ts';
import { type DayPoint, dayPoints } from './day-points.ts';
import { deviationOf, medianError, PRESENT_DAYS, presentOf, READINGS_LEAST, scatterOf } from './present.ts';
import type { ResidualSeries } from './residuals.ts';

export const MS_PER_YEAR = 365.25 * MS_PER_DAY;

/** Fewer points, or over less time, show no trend. */
const TREND_POINTS_LEAST = 6;
const TREND_DAYS_LEAST = 7;

/** Residuals are shares of what is predicted; slopes are such shares a year of 365.25 days. */
export interface Assessed extends Pick<ResidualSeries, 'measure' | 'outlet'> {
  /** Medians over the present, in the unit of the measure. */
  readonly predicted: number;
  readonly measured: number;
  /** Median over the present, with its standard error. */
  readonly residual: number;
  readonly standardError: number;
  /** The first instant of the present [ms]. */
  readonly since: number;
  readonly readings: number;
  readonly points: readonly DayPoint[];
  /** Within cycles between cleanings; null where there is too little to see one; x in years since 1970. */
  readonly trend: Trend | null;
}

/**
 * Null with fewer than `READINGS_LEAST` residuals.
 *
 * @param cleanings instants [ms], rising, at which loop or pump were cleaned.
 */
export function assessSeries(
  { measure, outlet, residuals }: ResidualSeries,
  cleanings: readonly number[],
): Assessed | null {
  const last = residuals.at(-1);
  if (residuals.length < READINGS_LEAST || last === undefined) return null;
  const cleaned = cleanings.findLast((instant) => instant <= last.time) ?? null;
  const present = presentOf(residuals, cleaned);
  const values = present.map(({ value }) => value);
  const points = dayPoints(residuals, cleanings);
  return {
    measure,
    outlet,
    predicted: median(present.map(({ predicted }) => predicted)),
    measured: median(present.map(({ measured }) => measured)),
    residual: median(values),
    standardError: medianError(deviationOf(values), values.length),
    since: present[0]?.time ?? last.time,
    readings: residuals.length,
    points,
    trend: trendOf(points),
  };
}

const trendPoint = ({ time, residual, cycle }: DayPoint): TrendPoint => ({
  x: time / MS_PER_YEAR,
  y: residual,
  block: cycle,
});

function trendOf(points: readonly DayPoint[]): Trend | null {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || points.length < TREND_POINTS_LEAST) return null;
  if (last.time - first.time < TREND_DAYS_LEAST * MS_PER_DAY) return null;
  // Years from the first point on keep the digits of the slopes.
  const x0 = first.time / MS_PER_YEAR;
  const trend = theilSen(points.map(trendPoint).map((point) => ({ ...point, x: point.x - x0 })));
  if (trend === null || !Number.isFinite(trend.interval.low) || !Number.isFinite(trend.interval.high)) {
    return null;
  }
  return { ...trend, intercept: trend.intercept - trend.slope * x0 };
}

/** The residual that a trend has come to at an instant [ms]. */
export const onTrend = ({ slope, intercept }: Trend, time: number): number =>
  intercept + (slope * time) / MS_PER_YEAR;

/** The points since the last cleaning, through which the line of the trend goes. */
export const lastCycle = ({ points }: Pick<Assessed, 'points'>): readonly DayPoint[] =>
  points.filter(({ cycle }) => cycle === points.at(-1)?.cycle);

/** Series that go on to the present of the readings: what was last measured long ago says nothing of now. */
export function ofNow(assessed: readonly Assessed[]): readonly Assessed[] {
  const lastOf = ({ points }: Assessed) => points.at(-1)?.time ?? 0;
  const now = Math.max(...assessed.map(lastOf));
  return assessed.filter((one) => lastOf(one) > now - PRESENT_DAYS * MS_PER_DAY);
}

/** What a change must be: a share of the residual, and so many standard errors; the share of the points that are the first ones. */
const CAME_ABOUT = { share: 0.3, errors: 2, first: 0.2 } as const;

/** Whether the residual came about in the course of the readings, rather than being there from the first ones on. */
export function cameAbout({
  residual,
  standardError,
  points,
}: Pick<Assessed, 'residual' | 'standardError' | 'points'>): boolean {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || points.length < TREND_POINTS_LEAST) return false;
  if (last.time - first.time < TREND_DAYS_LEAST * MS_PER_DAY) return false;
  const values = points.map((point) => point.residual);
  const early = values.slice(0, Math.max(READINGS_LEAST, Math.round(CAME_ABOUT.first * values.length)));
  const change = residual - median(early);
  const error = Math.hypot(standardError, medianError(scatterOf(values), early.length));
  const least = Math.max(CAME_ABOUT.share * Math.abs(residual), CAME_ABOUT.errors * error);
  return change * residual > 0 && Math.abs(change) > least;
}
