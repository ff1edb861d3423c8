/** Residuals brought together by days. */
import { median } from '../../curves/theil-sen.ts';
import { MS_PER_DAY } from '../calendar/zone-offsets.ts';
import type { Residual } from './residuals.ts';

/** Median of the residuals of a day, or of some days together. */
export interface DayPoint {
  readonly time: number;
  readonly residual: number;
  readonly readings: number;
  /** How many cleanings were done before. */
  readonly cycle: number;
}

/** Points that a trend is drawn through: days, or as many days together as keep within this. */
export const POINTS_MOST = 400;

/**
 * In the order of time, as the residuals are; a day on which something was cleaned makes a point before that and one after.
 *
 * @param cleanings instants [ms], rising.
 */
export function dayPoints(
  residuals: readonly Residual[],
  cleanings: readonly number[] = [],
): readonly DayPoint[] {
  const [first, last] = [residuals[0], residuals.at(-1)];
  if (first === undefined || last === undefined) return [];
  const days = Math.floor(last.time / MS_PER_DAY) - Math.floor(first.time / MS_PER_DAY) + 1;
  const width = Math.ceil(days / POINTS_MOST) * MS_PER_DAY;
  const groups: { readonly cycle: number; readonly place: number; readonly own: Residual[] }[] = [];
  let cycle = 0;
  for (const one of residuals) {
    while ((cleanings[cycle] ?? Number.POSITIVE_INFINITY) <= one.time) cycle += 1;
    const place = Math.floor(one.time / width);
    const group = groups.at(-1);
    if (group?.cycle === cycle && group.place === place) group.own.push(one);
    else groups.push({ cycle, place, own: [one] });
  }
  return groups.map(({ own, ...group }) => ({
    time: Math.round(median(own.map(({ time }) => time))),
    residual: median(own.map(({ value }) => value)),
    readings: own.length,
    cycle: group.cycle,
  }));
}
