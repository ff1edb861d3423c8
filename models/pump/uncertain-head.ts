/** Takes the head curve of a pump to the low or high end of what grade and fit leave open. */

import { findRoot } from '../../curves/find-root.ts';
import { otherShapes } from '../../curves/fit-assumed-head.ts';
import { type HeadCurve, headAt, headSlopeAt, risingFlows } from '../../curves/head-curve.ts';
import { studentT95 } from '../../curves/student-t.ts';
import type { GradeTolerance } from './tolerance-grades.ts';

/** `low`: the least head and flow that the pump may give; `high`: the most. */
export type ToleranceEnd = 'low' | 'high';

/** A head curve at full speed, at one end. */
export interface UncertainHead {
  /** Head [m] and its slope [s/m2] at a flow [m3/s]. */
  headAt(flow: number): HeadAndSlope;
  /** Flows [m3/s] at which the curve turns between rising and falling, ascending. */
  readonly turningFlows: readonly number[];
}

interface Scaling {
  readonly headFactor: number;
  readonly flowFactor: number;
}

/**
 * The head curve at one end of what grade and fit leave open.
 *
 * Low: H(Q) = min((1 - tH) H0(Q), H0(Q/(1 - tQ))) - t s; high: max((1 + tH) H0(Q), H0(Q/(1 + tQ))) + t s, with H0 the
 * fitted curve [m], s its standard error [m] and t the one-sided 95 % quantile of Student for its degrees of freedom.
 * @param tolerance tH and tQ [-] of the grade.
 * A fit without a standard error adds nothing. Of a curve whose shape is assumed, the least or the most of all its shapes.
 */
export function uncertainHead(curve: HeadCurve, tolerance: GradeTolerance, end: ToleranceEnd): UncertainHead {
  const isLow = end === 'low';
  const scaling = isLow
    ? { headFactor: 1 - tolerance.head.below, flowFactor: 1 - tolerance.flow.below }
    : { headFactor: 1 + tolerance.head.above, flowFactor: 1 + tolerance.flow.above };
  const shift = (isLow ? -1 : 1) * fitError(curve);
  const shapes = curve.shape === 'assumed' ? [curve, ...otherShapes(curve)] : [curve];
  const isBeyond = (one: HeadAndSlope, other: HeadAndSlope) => isLow === one.head < other.head;
  return {
    headAt: (flow) => {
      const candidates = shapes.flatMap((shape) => scaledAt(shape, scaling, flow));
      const { head, slope } = candidates.reduce((end, one) => (isBeyond(one, end) ? one : end));
      return { head: head + shift, slope };
    },
    turningFlows: turningFlows(curve, scaling),
  };
}

interface HeadAndSlope {
  readonly head: number;
  readonly slope: number;
}

/** The curve with its heads multiplied, and with its flows. */
const scaledAt = (
  curve: HeadCurve,
  { headFactor, flowFactor }: Scaling,
  flow: number,
): readonly HeadAndSlope[] => [
  { head: headFactor * headAt(curve, flow), slope: headFactor * headSlopeAt(curve, flow) },
  { head: headAt(curve, flow / flowFactor), slope: headSlopeAt(curve, flow / flowFactor) / flowFactor },
];

/** Head [m] that the fit may miss by: t s. */
function fitError({ standardError, degreesOfFreedom }: HeadCurve): number {
  return standardError === null ? 0 : studentT95(degreesOfFreedom) * standardError;
}

/**
 * Where either of the two curves turns, and, between such flows, where they cross: from one to the next, the lower or
 * higher of them runs one way.
 */
function turningFlows(curve: HeadCurve, scaling: Scaling): readonly number[] {
  const own = risingFlows(curve);
  const turns = [...own, ...own.map((flow) => scaling.flowFactor * flow)].toSorted((a, b) => a - b);
  const crossings = turns.flatMap((high, index) =>
    crossingBetween(curve, scaling, { low: turns[index - 1] ?? 0, high }),
  );
  return [...turns, ...crossings].toSorted((a, b) => a - b);
}

function crossingBetween(
  curve: HeadCurve,
  { headFactor, flowFactor }: Scaling,
  { low, high }: { readonly low: number; readonly high: number },
): readonly number[] {
  const difference = (flow: number) => headFactor * headAt(curve, flow) - headAt(curve, flow / flowFactor);
  const [lowValue, highValue] = [difference(low), difference(high)];
  if (!(lowValue * highValue < 0)) return [];
  const evaluate = (flow: number) => ({ value: difference(flow) });
  const crossing = findRoot({ evaluate, low, high, lowValue, highValue });
  return crossing.ok ? [crossing.value.root] : [];
}
