/** Which residuals of a series tell of now. */
import { median } from '../../curves/theil-sen.ts';
import { MS_PER_DAY } from '../calendar/zone-offsets.ts';
import type { Residual } from './residuals.ts';

/** The present: the last days of a series. */
export const PRESENT_DAYS = 30;
/** Fewer readings say nothing. */
export const READINGS_LEAST = 3;
/** Readings that together tell of a step, and what they must be off by: a share, and so many standard errors. */
const STEP = { readings: 5, share: 0.03, errors: 4 } as const;
/** Standard error of a median over that of a mean, and the standard deviation over the median deviation, for normal errors. */
const MEDIAN_ERROR = 1.2533;
const DEVIATION = 1.4826;

const valuesOf = (residuals: readonly Residual[]): readonly number[] => residuals.map(({ value }) => value);

const levelOf = (residuals: readonly Residual[]): number => median(valuesOf(residuals));

/** Standard error of the median of some readings. */
export const medianError = (deviation: number, readings: number): number =>
  (MEDIAN_ERROR * deviation) / Math.sqrt(readings);

/** Deviation about the median. */
export function deviationOf(values: readonly number[]): number {
  const middle = median(values);
  return DEVIATION * median(values.map((value) => Math.abs(value - middle)));
}

/** Deviation by what lies between one value and the next, which a step leaves as it is. */
export const scatterOf = (values: readonly number[]): number =>
  (DEVIATION * median(values.slice(1).map((value, i) => Math.abs(value - (values[i] ?? value))))) /
  Math.SQRT2;

/**
 * The residuals of the last 30 days, since the last cleaning where enough were read after it; where the last day, or the last
 * five, stand apart from these, as when something clogged at once, only those that are alike to the last ones.
 *
 * @param residuals at least `READINGS_LEAST`, in the order of time; cleaned [ms]: the last cleaning, null: none.
 */
export function presentOf(residuals: readonly Residual[], cleaned: number | null): readonly Residual[] {
  const end = residuals.at(-1)?.time ?? 0;
  const recent = residuals.filter(({ time }) => time > end - PRESENT_DAYS * MS_PER_DAY);
  const month = recent.length < READINGS_LEAST ? residuals.slice(-READINGS_LEAST) : recent;
  const since = cleaned === null ? month : month.filter(({ time }) => time >= cleaned);
  return sinceStep(since.length < READINGS_LEAST ? month : since);
}

function sinceStep(month: readonly Residual[]): readonly Residual[] {
  const end = month.at(-1)?.time ?? 0;
  const ofDay = month.filter(({ time }) => time > end - MS_PER_DAY);
  const last = ofDay.length < STEP.readings ? month.slice(-STEP.readings) : ofDay;
  if (last.length < STEP.readings || last.length === month.length) return month;
  const scatter = scatterOf(valuesOf(month));
  const level = levelOf(last);
  const isAlike = (some: readonly Residual[]) =>
    Math.abs(levelOf(some) - level) <=
    Math.max(STEP.share, STEP.errors * medianError(scatter, Math.min(some.length, last.length)));
  if (isAlike(month)) return month;
  // Back from the last ones in groups as large as these.
  let start = month.length - last.length;
  while (start > 0) {
    const before = month.slice(Math.max(0, start - last.length), start);
    if (!isAlike(before)) break;
    start -= before.length;
  }
  return month.slice(start);
}
