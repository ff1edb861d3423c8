/** Keeps frontiers within a number of points, and states what that may miss. */
import { figureAt, placeIn } from './column-at.ts';
import type { PointColumns } from './point-columns.ts';

/** Points of one frontier, and of all frontiers of a design together. */
export const POINT_LIMITS = { frontier: 200_000, all: 20_000_000 } as const;
/** However many frontiers are still to come, each may have so many points. */
const LEAST_POINTS = 1_000;

export interface PointBudget {
  /** Thins the columns where they have too many points; answers by how much pipework may undercut them for that [money]. */
  thin(columns: PointColumns): number;
}

/**
 * A frontier of more than 200,000 points keeps one in each of so many equal buckets of cost, that of the least head, and the
 * cheapest of all. Pipework whose point was left out requires no less head than a point kept, and costs less than it by no more
 * than the spread of costs in its bucket: the greatest spread is answered.
 *
 * Where `frontiers`, the number [-] to come, would together keep more than 20 million points, the later ones are thinned more.
 */
export function pointBudget(frontiers: number): PointBudget {
  let left: number = POINT_LIMITS.all;
  let toCome = frontiers;
  return {
    thin(columns) {
      const share = Math.max(LEAST_POINTS, left / Math.max(1, toCome));
      const most = Math.min(POINT_LIMITS.frontier, Math.floor(share));
      const missed = columns.size > most ? keepOneABucket(columns, most) : 0;
      left -= columns.size;
      toCome -= 1;
      return missed;
    },
  };
}

function keepOneABucket(columns: PointColumns, buckets: number): number {
  const { size, heads, costs, part, from } = columns;
  const dearest = figureAt(costs, 0);
  const width = (dearest - figureAt(costs, size - 1)) / buckets;
  let kept = 0;
  let bucket = -1;
  let spread = 0;
  for (let index = 0; index < size; index++) {
    const cost = figureAt(costs, index);
    const own = Math.floor((dearest - cost) / width);
    if (own === bucket && index < size - 1) {
      spread = Math.max(spread, figureAt(costs, kept - 1) - cost);
      continue;
    }
    bucket = own;
    heads[kept] = figureAt(heads, index);
    costs[kept] = cost;
    part[kept] = placeIn(part, index);
    from[kept] = placeIn(from, index);
    kept += 1;
  }
  columns.size = kept;
  return spread;
}
