/** How a residual came to be where it is. */
import { median } from '../../curves/theil-sen.ts';
import type { Assessed } from './assess-series.ts';
import { medianError, READINGS_LEAST, scatterOf } from './recent-window.ts';
import { isLongEnough } from './residual-trend.ts';

/** What a change must be: a share of the residual, and so many standard errors; the share of the points that are the first ones. */
const CHANGED = { share: 0.3, errors: 2, first: 0.2 } as const;
/** What lies between: from and to shares of the change, and the share of the points that lie there where it is gradual. */
const BETWEEN = { from: 0.2, to: 0.8, points: 0.1 } as const;

type Level = Pick<Assessed, 'residual' | 'standardError' | 'points'>;

function firstLevel(points: Level['points']): { readonly level: number; readonly error: number } {
  const values = points.map((point) => point.residual);
  const first = values.slice(0, Math.max(READINGS_LEAST, Math.round(CHANGED.first * values.length)));
  return { level: median(first), error: medianError(scatterOf(values), first.length) };
}

/** Whether the residual came about in the course of the readings, rather than being there from the first ones on. */
export function cameAbout({ residual, standardError, points }: Level): boolean {
  if (!isLongEnough(points)) return false;
  const { level, error } = firstLevel(points);
  const change = residual - level;
  const least = Math.max(
    CHANGED.share * Math.abs(residual),
    CHANGED.errors * Math.hypot(standardError, error),
  );
  return change * residual > 0 && Math.abs(change) > least;
}

/** Whether it came about little by little, as what clogs and wears does and the unit of a meter does not. */
export function cameGradually(one: Level): boolean {
  if (!cameAbout(one)) return false;
  const { level } = firstLevel(one.points);
  const shares = one.points.map(({ residual }) => (residual - level) / (one.residual - level));
  const between = shares.filter((share) => share > BETWEEN.from && share < BETWEEN.to);
  return between.length > BETWEEN.points * shares.length;
}
