/** Frames power points for fitting: where their flows lie, and how many powers of flow they allow. */
import { countDistinct } from './distinct.ts';
import { type LeastSquaresFit, leastSquares } from './least-squares.ts';
import type { PowerPoint } from './power-points.ts';

/** Largest condition number of the columns of a fit. */
const CONDITION_LIMIT = 1e8;
/** Distinct flows that x needs, and x^2. */
const FLOWS_FOR_SLOPE = 3;
const FLOWS_FOR_CURVATURE = 5;

/** Where the flows of the points lie, as q = (Q/r)/scale [-]; scale [m3/s] is 0 where no flow is above 0. */
export interface PowerFrame {
  readonly scale: number;
  /** Mean q of the points with flow. */
  readonly centre: number;
  readonly min: number;
  readonly max: number;
  readonly distinct: number;
}

/** The frame of power points: speed ratio [-], flow [m3/s] where it was noted. */
export function powerFrame(points: readonly PowerPoint[]): PowerFrame {
  const flows = points.flatMap(({ flow, speedRatio }) => (flow === undefined ? [] : [flow / speedRatio]));
  const scale = Math.max(0, ...flows);
  if (scale === 0) return { scale, centre: 0, min: 0, max: 0, distinct: Math.min(1, flows.length) };
  const shares = flows.map((flow) => flow / scale);
  return {
    scale,
    centre: shares.reduce((total, share) => total + share, 0) / shares.length,
    min: Math.min(...shares),
    max: Math.max(...shares),
    distinct: countDistinct(shares),
  };
}

/** x = q - q0 [-] of a point; 0 where its flow was not noted, since it then counts as taken at the mean. */
export const offsetOf = ({ flow, speedRatio }: PowerPoint, frame: PowerFrame): number =>
  flow === undefined || frame.scale === 0 ? 0 : flow / speedRatio / frame.scale - frame.centre;

/** How many powers of x may enter, most first: x with three distinct flows, x^2 with five. */
function flowPowers({ distinct }: PowerFrame): readonly number[] {
  if (distinct >= FLOWS_FOR_CURVATURE) return [2, 1, 0];
  return distinct >= FLOWS_FOR_SLOPE ? [1, 0] : [0];
}

/** A fit by least squares, with the rows of its columns. */
export interface FittedTerms extends LeastSquaresFit {
  /** One a point [any]. */
  readonly rows: readonly (readonly number[])[];
}

/**
 * The fit of `values` [any] on `columns` (one row a point) and as many powers of x as the points allow: while the condition number of all
 * columns exceeds 1e8, x^2 is left out, then x. Null where even the columns alone cannot be told apart.
 */
export function fitTerms(
  points: readonly PowerPoint[],
  {
    frame,
    values,
    columns,
  }: {
    readonly frame: PowerFrame;
    readonly values: readonly number[];
    readonly columns: (point: PowerPoint) => readonly number[];
  },
): FittedTerms | null {
  for (const count of flowPowers(frame)) {
    const rows = points.map((point) => {
      const x = offsetOf(point, frame);
      return [...columns(point), ...[x, x ** 2].slice(0, count)];
    });
    const fit = leastSquares(rows, values);
    if (fit.ok && fit.value.conditionNumber <= CONDITION_LIMIT) return { ...fit.value, rows };
  }
  return null;
}
