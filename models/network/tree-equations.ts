/** Balances the heads along every branch of a tree, linearised at a state. */
import { SIDE_SHARE } from '../components/diverging-tee.ts';
import { figureAt } from './branch-arrays.ts';
import type { LinearTree } from './linear-tree.ts';
import type { Passage } from './passage.ts';
import { type TeeBranchLoss, teeHead } from './tee-branch-loss.ts';
import { branchAt, flowOfSides, lossAt, type Tree, type TreeState } from './tree.ts';

/** Below this share of the largest flow (and below this flow, m3/s) a branch is near rest. */
const LEAST_FLOW_SHARE = 1e-7;
const LEAST_FLOW = 1e-9;
/** Heads balance to this share of the largest loss; the rounding of the heads themselves allows a little more. */
const BALANCE = 1e-12;
const ROUNDING = 4e-15;
/** A head as small as this counts as none [m]. */
const NO_HEAD = 1e-20;
/** A branch without a loss is given this share of the steepest slope, and never less than this [s/m2]. */
const LEAST_SLOPE_SHARE = 1e-9;
const LEAST_SLOPE = 1e-6;

/** The equations at a state, and how well it balances. */
export interface TreeEquations {
  readonly linear: LinearTree;
  /** Of the residuals [m2]. */
  readonly sumOfSquares: number;
  /** Largest residual [m]. */
  readonly worst: number;
  /** Residual that counts as balanced [m]. */
  readonly allowed: number;
}

/** The arrays that one set of equations lies in, until the next one there. */
export type EquationBuffers = Pick<
  LinearTree,
  'held' | 'residual' | 'lossSlope' | 'combinedSlope' | 'sidesSlope' | 'isSide'
>;

/** Buffers for a tree of `size` branches [-]. */
export const equationBuffers = (size: number): EquationBuffers => ({
  held: new Uint8Array(size),
  residual: new Float64Array(size),
  lossSlope: new Float64Array(size),
  combinedSlope: new Float64Array(size),
  sidesSlope: new Float64Array(size),
  isSide: new Uint8Array(size),
});

/**
 * Residuals [m] and slopes [s/m2] of all branches but the root at a state: head where a branch begins - its losses -
 * head at its far end.
 *
 * Held branches (closed, or at rest) have none.
 * @param passages of all branches.
 * @param state flows [m3/s] and heads [m] by branch, and the buffers that the equations are written in.
 */
export function equationsAt(
  tree: Tree,
  passages: readonly Passage[],
  { flow, head, buffers }: TreeState & { readonly buffers: EquationBuffers },
): TreeEquations {
  const { held, residual, lossSlope, combinedSlope, sidesSlope, isSide } = buffers;
  const size = flow.length;
  let largestFlow = LEAST_FLOW;
  for (let b = 0; b < size; b++) largestFlow = Math.max(largestFlow, Math.abs(figureAt(flow, b)));
  const leastFlow = Math.max(LEAST_FLOW, LEAST_FLOW_SHARE * largestFlow);
  let sumOfSquares = 0;
  let worst = 0;
  let largestLoss = Math.abs(lossAt(tree, 0, figureAt(flow, 0)).head);
  let largestHead = 0;
  for (let b = 1; b < size; b++) {
    const branch = branchAt(tree, b);
    const q = figureAt(flow, b);
    largestHead = Math.max(largestHead, Math.abs(figureAt(head, b)));
    if (branch.shut || passages[b] === 'resting') {
      held[b] = 1;
      residual[b] = 0;
      lossSlope[b] = 0;
      if (branch.teeLoss !== null) isSide[b] = combinedSlope[b] = sidesSlope[b] = 0;
      continue;
    }
    const loss = lossAt(tree, b, q);
    let lost = loss.head;
    let slope = loss.slope;
    held[b] = 0;
    if (branch.teeLoss !== null) {
      const { parent, teeLoss } = branch;
      const sides = teeLoss.part === 'run' ? flowOfSides(tree, parent, flow) : 0;
      const flows = { combined: figureAt(flow, parent), own: q, sides };
      const atTee = teeHead(teeLoss, flows, passages[b] === 'inward' ? 'inward' : 'outward');
      lost += atTee.head;
      slope += atTee.byOwn;
      combinedSlope[b] = atTee.byCombined;
      sidesSlope[b] = atTee.bySides;
      isSide[b] = teeLoss.part === 'side' && q > 0 ? 1 : 0;
    }
    const r = figureAt(head, branch.parent) - lost - figureAt(head, b);
    residual[b] = r;
    lossSlope[b] =
      Math.abs(q) < leastFlow ? Math.max(slope, slopeFromRest(tree, b, { leastFlow, residual: r })) : slope;
    sumOfSquares += r * r;
    worst = Math.max(worst, Math.abs(r));
    largestLoss = Math.max(largestLoss, Math.abs(lost));
  }
  keepSlopes(lossSlope);
  const { parent, isOutlet, sidesBeyond } = tree;
  const linear = { parent, isOutlet, sidesBeyond, ...buffers };
  return { linear, sumOfSquares, worst, allowed: BALANCE * largestLoss + ROUNDING * largestHead + NO_HEAD };
}

/** Gives every branch a slope above 0 [s/m2], so that the step has an end. */
function keepSlopes(lossSlope: Float64Array): void {
  let steepest = 0;
  for (let b = 1; b < lossSlope.length; b++) steepest = Math.max(steepest, figureAt(lossSlope, b));
  const leastSlope = Math.max(LEAST_SLOPE, LEAST_SLOPE_SHARE * steepest);
  for (let b = 1; b < lossSlope.length; b++) lossSlope[b] = Math.max(figureAt(lossSlope, b), leastSlope);
}

/**
 * A quadratic loss has no slope at rest, so that a step from there would have no end: this is the slope [s/m2] at the flow
 * that the residual [m] would drive.
 */
function slopeFromRest(
  tree: Tree,
  b: number,
  { leastFlow, residual }: { readonly leastFlow: number; readonly residual: number },
): number {
  const perSquare =
    lossAt(tree, b, leastFlow).head / leastFlow ** 2 + teePerSquare(branchAt(tree, b).teeLoss);
  return 2 * Math.sqrt(perSquare * Math.abs(residual));
}

const teePerSquare = (teeLoss: TeeBranchLoss | null): number =>
  teeLoss?.part === 'side' ? Math.max(SIDE_SHARE, teeLoss.law.own) * teeLoss.own : 0;
