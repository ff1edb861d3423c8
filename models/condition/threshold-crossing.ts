/** When a series fell below a level that it is below now. */
import { median } from '../../curves/theil-sen.ts';
import type { DayPoint } from './day-points.ts';
import { medianError, scatterOf } from './recent-window.ts';

/** Instants [ms]. */
export interface Crossed {
  readonly at: number;
  readonly earliest: number;
  readonly latest: number;
}

/** Points whose median stands for the middle one: wild ones among them do not count. */
const SMOOTHED = 5;

/**
 * The instant that parts the points above from those below with the fewest on the wrong side, by running medians of five;
 * between the first of them below and the last above, each by no more than its standard error off. Null without points.
 */
export function crossedAt(points: readonly DayPoint[], level: number): Crossed | null {
  const half = (SMOOTHED - 1) / 2;
  const values = points.map(({ residual }) => residual);
  const smooth = values.map((_, i) => median(values.slice(Math.max(0, i - half), i + half + 1)));
  const error = values.length > 1 ? medianError(scatterOf(values), SMOOTHED) : 0;
  const below = smooth.map((value) => value < level);
  const timeAt = (place: number) => points[Math.min(place, points.length - 1)]?.time;
  // Wrong with the parting before each point: those below that come before, those above that come after.
  let wrong = below.filter((is) => !is).length;
  let [least, best] = [wrong, 0];
  for (const [place, is] of below.entries()) {
    wrong += is ? 1 : -1;
    if (wrong < least) [least, best] = [wrong, place + 1];
  }
  const at = timeAt(best);
  const earliest = timeAt(
    Math.max(
      0,
      smooth.findIndex((value) => value < level + error),
    ),
  );
  const latest = timeAt(smooth.findLastIndex((value) => value >= level - error) + 1);
  if (at === undefined || earliest === undefined || latest === undefined) return null;
  return { at, earliest: Math.min(at, earliest), latest: Math.max(at, latest) };
}
