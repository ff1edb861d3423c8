/** Columns of frontier points that are filled from the least head on, and used again for the next frontier. */
import { figureAt } from './column-at.ts';

/** `part` and `from`: of which of several frontiers a point is, and its place there. */
export interface PointColumns {
  /** [-] */
  size: number;
  /** [m] */
  heads: Float64Array;
  /** [money] */
  costs: Float64Array;
  part: Int32Array;
  from: Int32Array;
}

/** Columns without points, which grow as they are filled. */
export const pointColumns = (): PointColumns => ({
  size: 0,
  heads: new Float64Array(0),
  costs: new Float64Array(0),
  part: new Int32Array(0),
  from: new Int32Array(0),
});

/** Empties the columns and makes room for a number of points [-]. */
export function emptied(columns: PointColumns, room: number): void {
  columns.size = 0;
  if (columns.heads.length >= room) return;
  const most = 2 * room;
  columns.heads = new Float64Array(most);
  columns.costs = new Float64Array(most);
  columns.part = new Int32Array(most);
  columns.from = new Int32Array(most);
}

/** A point that is cheaper than the last by less than this share is the same but for rounding. */
const SAME_COST = 1e-12;

/** Whether a point of a head no less than the last point's is cheaper than it; cost [money]. */
export function isCheaper({ size, costs }: PointColumns, cost: number): boolean {
  if (size === 0) return true;
  const last = figureAt(costs, size - 1);
  return cost < last - SAME_COST * Math.abs(last);
}
