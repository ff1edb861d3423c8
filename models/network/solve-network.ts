/** Solves the flows of a tree of branches for a given total flow, by damped Newton steps. */
import { failed, type Result, success } from '../../curves/result.ts';
import { figureAt } from './branch-arrays.ts';
import { type TreeStep, treeStep } from './linear-tree.ts';
import type { Network } from './network.ts';
import { broughtToRest, nextDirections, type SideDirection } from './side-directions.ts';
import { buffersOf, type Side, type SolverBuffers } from './solver-buffers.ts';
import { initialState, lossAt, type TreeState } from './tree.ts';
import { equationsAt, type TreeEquations } from './tree-equations.ts';

/** Newton steps of one settling, halvings of one step, steps taken whole although residuals rise, rounds over the directions of side branches (the last half one branch a round). */
export const NETWORK_LIMITS = { steps: 200, halvings: 40, leaps: 20, rounds: 400 } as const;

/** At the floor of rounding a state counts as settled within this many times the balance aimed at. */
const ROUNDING_FLOOR = 100;
/** A step there that leaves more than this share of the residual has met rounding. */
const STALLED = 0.5;

/** A solved network. */
export interface NetworkSolution {
  /** Flow of each branch [m3/s], outward positive. */
  readonly flows: readonly number[];
  /** Head at the far end of each branch [m], over the surface drawn from. */
  readonly heads: readonly number[];
  /** Head needed where the discharge starts [m]. */
  readonly rootHead: number;
  /** Of that against total flow [s/m2]. */
  readonly rootSlope: number;
  /** d(branch flow)/d(total flow) [-]. */
  readonly flowSlopes: readonly number[];
  /** Newton steps taken [-]. */
  readonly steps: number;
}

/** A network that did not settle within the limits. */
export interface UnsolvedNetwork {
  readonly code: 'network-unsolved';
  /** [m3/s] */
  readonly totalFlow: number;
  /** Taken [-]. */
  readonly steps: number;
  /** Largest head that does not balance [m], or, of a solution that does not verify, its relative residual [-]. */
  readonly residual: number;
}

/**
 * Solves a tree for a total flow.
 *
 * Unknowns are branch flows and node heads. A step solves the linearised equations exactly (`treeStep`) and is halved
 * until the sum of squared residuals falls; losses rise with flow, so the Jacobian is nowhere singular and the
 * solution is the only one.
 * @param totalFlow [m3/s] of 0 or more; the root must let water through.
 * @param earlier another solution of the network, which saves steps and changes nothing else.
 * Accuracy: heads balance to 1e-12 of the largest loss.
 * Errors: `network-unsolved` where a limit is reached.
 */
export function solveNetwork(
  network: Network,
  totalFlow: number,
  earlier?: NetworkSolution,
): Result<NetworkSolution, UnsolvedNetwork> {
  if (earlier !== undefined) {
    const solved = solveFrom(network, totalFlow, earlier);
    if (solved.ok) return solved;
  }
  return solveFrom(network, totalFlow, undefined);
}

function solveFrom(
  network: Network,
  totalFlow: number,
  earlier: NetworkSolution | undefined,
): Result<NetworkSolution, UnsolvedNetwork> {
  const buffers = buffersOf(network);
  const { tree } = buffers;
  let directions = buffers.allOutward;
  let state = initialState(tree, totalFlow, earlier);
  let steps = 0;
  let residual = Number.POSITIVE_INFINITY;
  for (let round = 0; round < NETWORK_LIMITS.rounds; round++) {
    const settled = settle(buffers, directions, state);
    steps += settled.steps;
    residual = settled.equations.worst;
    if (!settled.balanced) break;
    const next = nextDirections(tree, directions, settled.state, {
      oneAtATime: round > NETWORK_LIMITS.rounds / 2,
      noHead: ROUNDING_FLOOR * settled.equations.allowed,
    });
    if (next === null) return success(solutionOf(buffers, settled, steps));
    directions = next;
    state = broughtToRest(tree, directions, settled.state);
  }
  return failed({ code: 'network-unsolved', totalFlow, steps, residual });
}

/** The state lies in the buffers until the next settling. */
interface Settled {
  readonly balanced: boolean;
  readonly state: TreeState;
  readonly equations: TreeEquations;
  readonly steps: number;
}

/**
 * Steps with the directions of side branches as they are until every branch balances, or no step improves any more. A step from near rest goes
 * by the chord of a loss, not its slope, and need not lower the residuals: then it is taken whole, a few times.
 */
function settle(buffers: SolverBuffers, directions: readonly SideDirection[], from: TreeState): Settled {
  const { tree, step } = buffers;
  let [here, there] = buffers.sides;
  here.flow.set(from.flow);
  here.head.set(from.head);
  let equations = equationsAt(tree, directions, here);
  let leaps = 0;
  for (let steps = 0; steps < NETWORK_LIMITS.steps; steps++) {
    const settled = { balanced: true, state: here, equations, steps };
    if (equations.worst <= equations.allowed) return settled;
    treeStep(equations.linear, 0, step);
    const better = improve(buffers, directions, { here, there, sumOfSquares: equations.sumOfSquares });
    const atFloor = equations.worst <= ROUNDING_FLOOR * equations.allowed;
    if (atFloor && (better === null || better.worst > STALLED * equations.worst)) return settled;
    if (better !== null) equations = better;
    else if (leaps < NETWORK_LIMITS.leaps) {
      leaps += 1;
      move(here, { step, share: 1, to: there });
      equations = equationsAt(tree, directions, there);
    } else return { ...settled, balanced: false };
    [here, there] = [there, here];
  }
  return { balanced: false, state: here, equations, steps: NETWORK_LIMITS.steps };
}

/** The equations where the step leads, halved until the residuals fall; null where none does. The state is then `there`. */
function improve(
  { tree, step }: SolverBuffers,
  directions: readonly SideDirection[],
  {
    here,
    there,
    sumOfSquares,
  }: { readonly here: TreeState; readonly there: Side; readonly sumOfSquares: number },
): TreeEquations | null {
  let share = 1;
  for (let halving = 0; halving <= NETWORK_LIMITS.halvings; halving++) {
    move(here, { step, share, to: there });
    const equations = equationsAt(tree, directions, there);
    if (equations.sumOfSquares < sumOfSquares * (1 - 1e-4 * share)) return equations;
    share /= 2;
  }
  return null;
}

function move(
  { flow, head }: TreeState,
  { step, share, to }: { readonly step: TreeStep; readonly share: number; readonly to: TreeState },
): void {
  for (let b = 0; b < flow.length; b++) {
    to.flow[b] = figureAt(flow, b) + share * figureAt(step.flow, b);
    to.head[b] = figureAt(head, b) + share * figureAt(step.head, b);
  }
}

function solutionOf(
  { tree, step, noResidual }: SolverBuffers,
  { state: { flow, head }, equations: { linear } }: Settled,
  steps: number,
): NetworkSolution {
  const response = treeStep({ ...linear, residual: noResidual }, 1, step);
  const rootLoss = lossAt(tree, 0, figureAt(flow, 0));
  return {
    flows: copied(flow),
    heads: copied(head),
    rootHead: figureAt(head, 0) + rootLoss.head,
    rootSlope: rootLoss.slope + figureAt(response.head, 0),
    flowSlopes: copied(response.flow),
    steps,
  };
}

/** Out of the arrays that the next solve writes in. Plain, because many short typed arrays cost more to make and to collect. */
function copied(values: Float64Array): readonly number[] {
  const copy = new Array<number>(values.length);
  for (let b = 0; b < values.length; b++) copy[b] = figureAt(values, b);
  return copy;
}
