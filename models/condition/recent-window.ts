/** Which residuals of a series tell of now. */
import { studentT95Both } from '../../curves/student-t.ts';
import { median } from '../../curves/theil-sen.ts';
import { MS_PER_DAY } from '../calendar/zone-offsets.ts';
import type { Residual } from './residuals.ts';

/** The present: the last days of a series. */
export const PRESENT_DAYS = 30;
/** Fewer readings say nothing. */
export const READINGS_LEAST = 3;
/** Readings that tell of a step, what they must be off by (a share, so many standard errors), and how many of them together. */
const STEP = { readings: 5, share: 0.03, errors: 4, together: 0.8 } as const;
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

/** Relative deviation assumed of a meter before its readings say anything, worth so many readings: common practice. */
const ASSUMED = { deviation: 0.03, readings: 2 } as const;

/**
 * Standard error of the median of residuals; few of them leave the scatter near what is assumed of a meter, and take it from
 * all that were read before, `series`, where these are more.
 */
export function residualError(values: readonly number[], series: readonly number[] = values): number {
  const { length } = values;
  const { deviation, readings } = ASSUMED;
  const ofFew =
    series.length < FEW ? Math.max(deviationOf(values), rootMeanSquare(values)) : scatterOf(series);
  const own = length < FEW ? ofFew : deviationOf(values);
  const squares = readings * deviation ** 2 + length * own ** 2;
  return medianError(Math.sqrt(squares / (readings + length)), length);
}

/** Of so few the median deviation says little: one far from the others counts in full. */
const FEW = 10;

function rootMeanSquare(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}

/** Standard errors that a residual of so many readings must be from 0 to be told from noise: Student's t of 95 %. */
export const errorsFor = (readings: number): number =>
  studentT95Both(Math.min(DEGREES_MOST, readings - 1 + ASSUMED.readings));

/** From here on the quantile hardly moves. */
const DEGREES_MOST = 200;

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

/** Whether most of some residuals lie on one side of a level: a few wild ones among them make no step. */
function standsApart(some: readonly Residual[], level: number): boolean {
  const side = Math.sign(levelOf(some) - level);
  const there = some.filter(({ value }) => (value - level) * side > STEP.share / 2);
  return there.length >= STEP.together * some.length;
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
  if (isAlike(month) || !standsApart(last, levelOf(month))) return month;
  // Back from the last ones in groups as large as these.
  let start = month.length - last.length;
  while (start > 0) {
    const before = month.slice(Math.max(0, start - last.length), start);
    if (!isAlike(before)) break;
    start -= before.length;
  }
  return month.slice(start);
}
