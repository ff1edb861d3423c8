/** Whether what was measured changed in the course of the readings that a calibration rests on. */
import type { Measure, Measured } from './measured-rows.ts';

export interface Drift {
  readonly measure: Measure;
  /** Share by which it changed from the first reading to the last, along a straight line. */
  readonly change: number;
}

/** A change counts from this many of its standard errors on, and from this share on. */
const TOLD = { errors: 4, share: 0.03 } as const;

/**
 * The greatest change of a measure, all of its rows sharing one relative slope b by least squares within each row:
 * b = sum (t - t_m)(v/v_m - 1)/sum (t - t_m)^2, its variance the mean square about those lines over sum (t - t_m)^2.
 * Null where none is told from noise.
 */
export function driftOf(rows: readonly Measured[]): Drift | null {
  const measures = [...new Set(rows.map(({ measure }) => measure))];
  const drifts = measures.flatMap((measure) => {
    const change = changeOf(rows.filter((row) => row.measure === measure));
    return change === null ? [] : [{ measure, change }];
  });
  const [greatest] = drifts.toSorted((a, b) => Math.abs(b.change) - Math.abs(a.change));
  return greatest ?? null;
}

function changeOf(rows: readonly Measured[]): number | null {
  const sum = (pick: (row: Measured) => number) => rows.reduce((total, row) => total + pick(row), 0);
  const timeSpread = sum(({ course }) => course.timeSpread);
  const free = sum(({ count }) => count - 1) - 1;
  if (timeSpread <= 0 || free < 1) return null;
  const slope = sum(({ course }) => course.withTime) / timeSpread;
  const about = Math.max(0, sum(({ spread }) => spread) - slope ** 2 * timeSpread);
  const error = Math.sqrt(about / free / timeSpread);
  const first = Math.min(...rows.map(({ course }) => course.first));
  const last = Math.max(...rows.map(({ course }) => course.last));
  const change = slope * (last - first);
  return Math.abs(slope) > TOLD.errors * error && Math.abs(change) > TOLD.share ? change : null;
}
