/** Finds whether what was measured changed in the course of the readings that a calibration rests on. */
import type { Measure, Row } from './row-collector.ts';

export interface Drift {
  readonly measure: Measure;
  /** Share by which it changed from the first reading to the last, along a straight line. */
  readonly change: number;
}

/** A change counts from this many of its standard errors on, and from this share on. */
const COUNTS = { errors: 4, share: 0.03 } as const;

/** Sums of a row about the means of both: times t [ms], values v over their mean. */
interface Course {
  readonly count: number;
  readonly first: number;
  readonly last: number;
  /** Sum of (t - mean)^2, of (t - mean)(v - 1), of (v - 1)^2. */
  readonly timeSpread: number;
  readonly withTime: number;
  readonly spread: number;
}

/**
 * The greatest change of a measure, all of its rows sharing one relative slope b by least squares within each row:
 * b = sum (t - t_m)(v/v_m - 1)/sum (t - t_m)^2, its variance the mean square about those lines over sum (t - t_m)^2.
 * Null where none is beyond noise.
 */
export function driftOf(rows: readonly Row[]): Drift | null {
  const measures = [...new Set(rows.map(({ measure }) => measure))];
  const drifts = measures.flatMap((measure) => {
    const change = changeOf(rows.filter((row) => row.measure === measure).map(courseOf));
    return change === null ? [] : [{ measure, change }];
  });
  const [greatest] = drifts.toSorted((a, b) => Math.abs(b.change) - Math.abs(a.change));
  return greatest ?? null;
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / values.length;

function courseOf({ values, times }: Row): Course {
  const [value, time] = [meanOf(values), meanOf(times)];
  let [timeSpread, withTime, spread] = [0, 0, 0];
  for (const [i, one] of values.entries()) {
    const [later, off] = [(times[i] ?? time) - time, one / value - 1];
    timeSpread += later ** 2;
    withTime += later * off;
    spread += off ** 2;
  }
  return {
    count: values.length,
    first: times[0] ?? 0,
    last: times.at(-1) ?? 0,
    timeSpread,
    withTime,
    spread,
  };
}

function changeOf(courses: readonly Course[]): number | null {
  const sum = (pick: (course: Course) => number) => courses.reduce((total, one) => total + pick(one), 0);
  const timeSpread = sum((one) => one.timeSpread);
  const free = sum(({ count }) => count - 1) - 1;
  if (timeSpread <= 0 || free < 1) return null;
  const slope = sum(({ withTime }) => withTime) / timeSpread;
  const about = Math.max(0, sum(({ spread }) => spread) - slope ** 2 * timeSpread);
  const error = Math.sqrt(about / free / timeSpread);
  const first = Math.min(...courses.map((one) => one.first));
  const last = Math.max(...courses.map((one) => one.last));
  const change = slope * (last - first);
  return Math.abs(slope) > COUNTS.errors * error && Math.abs(change) > COUNTS.share ? change : null;
}
