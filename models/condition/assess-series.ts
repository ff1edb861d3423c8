/** A series of residuals as where it stands now and where it goes. */
import { median, type Trend } from '../../curves/theil-sen.ts';
import { type DayPoint, dayPoints } from './day-points.ts';
import { presentOf, READINGS_LEAST, residualError } from './recent-window.ts';
import { residualTrend } from './residual-trend.ts';
import type { ResidualSeries } from './residuals.ts';

/** Residuals are shares of what is predicted; slopes are such shares a year of 365.25 days. */
export interface Assessed extends Pick<ResidualSeries, 'measure' | 'outlet'> {
  /** Medians over the present, in the unit of the measure. */
  readonly predicted: number;
  readonly measured: number;
  /** Median over the present, with its standard error. */
  readonly residual: number;
  readonly standardError: number;
  /** The first instant of the present [ms], and the readings in it. */
  readonly since: number;
  readonly present: number;
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
    standardError: residualError(
      values,
      residuals.map(({ value }) => value),
    ),
    since: present[0]?.time ?? last.time,
    present: present.length,
    readings: residuals.length,
    points,
    trend: residualTrend(points),
  };
}
