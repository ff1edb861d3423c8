/** A series of residuals as where it stands now and where it goes. */
import { median, type Trend, type TrendPoint, theilSen } from '../../curves/theil-sen.ts';
import { MS_PER_DAY } from '../calendar/zone-offsets.ts';
import type { Residual, ResidualSeries } from './residuals.ts';

export const MS_PER_YEAR = 365.25 * MS_PER_DAY;

/** The present: the last days of a series. */
export const PRESENT_DAYS = 30;
/** Fewer readings say nothing. */
export const READINGS_LEAST = 3;
/** Fewer points, or over less time, show no trend. */
const TREND_POINTS_LEAST = 6;
const TREND_DAYS_LEAST = 7;
/** Points that a trend is drawn through: days, or as many days together as keep within this. */
const POINTS_MOST = 400;
/** Standard error of a median over that of a mean, and the standard deviation over the median deviation, for normal errors. */
const MEDIAN_ERROR = 1.2533;
const DEVIATION = 1.4826;

/** Median of the residuals of a day, or of some days together. */
export interface DayPoint {
  readonly time: number;
  readonly residual: number;
  readonly readings: number;
}

/** Residuals are shares of what is predicted; slopes are such shares a year of 365.25 days. */
export interface Assessed extends Pick<ResidualSeries, 'measure' | 'outlet'> {
  /** Medians over the present, in the unit of the measure. */
  readonly predicted: number;
  readonly measured: number;
  /** Median over the present, with its standard error. */
  readonly residual: number;
  readonly standardError: number;
  readonly readings: number;
  readonly points: readonly DayPoint[];
  /** Null where there is too little to see one; x in years since 1970. */
  readonly trend: Trend | null;
}

/** Null with fewer than `READINGS_LEAST` residuals. */
export function assessSeries({ measure, outlet, residuals }: ResidualSeries): Assessed | null {
  const last = residuals.at(-1);
  if (residuals.length < READINGS_LEAST || last === undefined) return null;
  const points = dayPoints(residuals);
  const recent = residuals.filter(({ time }) => time > last.time - PRESENT_DAYS * MS_PER_DAY);
  const present = recent.length < READINGS_LEAST ? residuals.slice(-READINGS_LEAST) : recent;
  const values = present.map(({ value }) => value);
  const residual = median(values);
  const deviation = DEVIATION * median(values.map((value) => Math.abs(value - residual)));
  return {
    measure,
    outlet,
    predicted: median(present.map(({ predicted }) => predicted)),
    measured: median(present.map(({ measured }) => measured)),
    residual,
    standardError: (MEDIAN_ERROR * deviation) / Math.sqrt(values.length),
    readings: residuals.length,
    points,
    trend: trendOf(points),
  };
}

function dayPoints(residuals: readonly Residual[]): readonly DayPoint[] {
  const [first, last] = [residuals[0], residuals.at(-1)];
  if (first === undefined || last === undefined) return [];
  const days = Math.floor(last.time / MS_PER_DAY) - Math.floor(first.time / MS_PER_DAY) + 1;
  const width = Math.ceil(days / POINTS_MOST) * MS_PER_DAY;
  const groups = new Map<number, Residual[]>();
  for (const one of residuals) {
    const place = Math.floor(one.time / width);
    const group = groups.get(place) ?? [];
    group.push(one);
    groups.set(place, group);
  }
  return [...groups.values()].map((group) => ({
    time: Math.round(median(group.map(({ time }) => time))),
    residual: median(group.map(({ value }) => value)),
    readings: group.length,
  }));
}

export const trendPoint = ({ time, residual }: DayPoint): TrendPoint => ({
  x: time / MS_PER_YEAR,
  y: residual,
});

function trendOf(points: readonly DayPoint[]): Trend | null {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || points.length < TREND_POINTS_LEAST) return null;
  if (last.time - first.time < TREND_DAYS_LEAST * MS_PER_DAY) return null;
  // Years from the first point on keep the digits of the slopes.
  const x0 = first.time / MS_PER_YEAR;
  const trend = theilSen(points.map(trendPoint).map(({ x, y }) => ({ x: x - x0, y })));
  if (trend === null || !Number.isFinite(trend.interval.low) || !Number.isFinite(trend.interval.high)) {
    return null;
  }
  return { ...trend, intercept: trend.intercept - trend.slope * x0 };
}

/** The residual that a trend has come to at an instant [ms]. */
export const onTrend = ({ slope, intercept }: Trend, time: number): number =>
  intercept + (slope * time) / MS_PER_YEAR;

/** Series that go on to the present of the readings: what was last measured long ago says nothing of now. */
export function ofNow(assessed: readonly Assessed[]): readonly Assessed[] {
  const lastOf = ({ points }: Assessed) => points.at(-1)?.time ?? 0;
  const now = Math.max(...assessed.map(lastOf));
  return assessed.filter((one) => lastOf(one) > now - PRESENT_DAYS * MS_PER_DAY);
}

/** What a change must be of the residual to be how it came about. */
const CAME_ABOUT = 0.3;

/** Whether the residual came about in the course of the readings, rather than being there from the first one on. */
export function cameAbout({
  residual,
  trend,
  points,
}: Pick<Assessed, 'residual' | 'trend' | 'points'>): boolean {
  const [first, last] = [points[0], points.at(-1)];
  if (trend === null || first === undefined || last === undefined) return false;
  const isTold = trend.interval.low > 0 || trend.interval.high < 0;
  const change = (trend.slope * (last.time - first.time)) / MS_PER_YEAR;
  return isTold && change * residual > 0 && Math.abs(change) > CAME_ABOUT * Math.abs(residual);
}
