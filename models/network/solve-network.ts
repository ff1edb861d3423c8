/** Solves the flows of a tree of branches for a given total flow, by damped Newton steps. */
import { at } from '../../curves/at.ts';
import { failed, type Result, success } from '../../curves/result.ts';
import { withRest } from './at-rest.ts';
import { figureAt, wholeAt } from './branch-arrays.ts';
import { keepContinuity, type LinearTree, type TreeStep, treeStep } from './linear-tree.ts';
import type { Network } from './network.ts';
import { broughtToRest, closedAgainst, nextPassages, type Passage } from './passage.ts';
import { buffersOf, type Side, type SolverBuffers } from './solver-buffers.ts';
import { continuityGap, initialState, lossAt, type Tree, type TreeState } from './tree.ts';
import { equationsAt, type TreeEquations } from './tree-equations.ts';

/**
 * Newton steps of one settling, halvings of one step, steps taken whole although residuals rise, rounds over the passages
 * (the last half one branch a round), rounds of linear losses before.
 */
export const NETWORK_LIMITS = {
  steps: 200,
  halvings: 40,
  halvingsToLeap: 10,
  leaps: 20,
  rounds: 400,
  linearRounds: 20,
} as const;

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
  /** Indices [-] of the branches at rest through which water would otherwise run backwards. */
  readonly closed: readonly number[];
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
 * until the sum of squared residuals falls. Once all heads balance, branches that would run against a valve, into air
 * or out of a resting tee change their passage (`nextPassages`), until none does.
 *
 * Where no tee is stated losses rise with flow: the solution is the only one, since the flows minimise a strictly
 * convex function, and one branch a round reaches it from any start (Murty's rule of least indices). The straight run
 * of a tee with narrower sides loses by what those take: several solutions may exist there, and one of them is found.
 * @param totalFlow [m3/s] of 0 or more; the root must let water through.
 * @param earlier another solution of the network, which saves steps and changes nothing else where one solution exists.
 * Accuracy: heads balance to 1e-12 of the largest loss.
 * Errors: `network-unsolved` where a limit is reached.
 * Source: Murty (1974), Linear Algebra Appl. 7, 123, for the rule of least indices.
 */
export function solveNetwork(
  network: Network,
  totalFlow: number,
  earlier?: NetworkSolution,
): Result<NetworkSolution, UnsolvedNetwork> {
  if (earlier !== undefined && isNear(earlier, totalFlow)) {
    const solved = solveFrom(network, totalFlow, earlier);
    if (solved.ok) return solved;
  }
  return solveFrom(network, totalFlow, undefined);
}

/** A total flow that grows by more than this factor opens so many branches that the earlier solution is no help. */
const OPENING = 2;

const isNear = ({ closed, flows }: NetworkSolution, totalFlow: number): boolean =>
  closed.length === 0 || totalFlow <= OPENING * at(flows, 0);

function solveFrom(
  network: Network,
  totalFlow: number,
  earlier: NetworkSolution | undefined,
): Result<NetworkSolution, UnsolvedNetwork> {
  const buffers = buffersOf(network);
  const { tree } = buffers;
  let { passages, state } =
    earlier === undefined ? coldStart(buffers, totalFlow) : warmStart(buffers, totalFlow, earlier);
  let steps = 0;
  let residual = Number.POSITIVE_INFINITY;
  let isRounded = true;
  for (let round = 0; round < NETWORK_LIMITS.rounds; round++) {
    const settled = settle(buffers, passages, state);
    steps += settled.steps;
    residual = settled.equations.worst;
    const next = settled.balanced
      ? nextPassages(tree, passages, {
          state: settled.state,
          oneAtATime: round > NETWORK_LIMITS.rounds / 2,
          noHead: ROUNDING_FLOOR * settled.equations.allowed,
        })
      : closedAgainst(tree, passages, settled.state);
    if (next === null) {
      if (!settled.balanced) break;
      if (!isRounded || !leavesRounding(buffers, settled))
        return success(solutionOf(buffers, { ...settled, steps }));
      isRounded = false;
      state = settled.state;
      continue;
    }
    passages = next;
    state = broughtToRest(tree, passages, settled.state);
  }
  return failed({ code: 'network-unsolved', totalFlow, steps, residual });
}

/** Flows that add up to this share of the largest do so to rounding. */
const CONTINUITY = 1e-13;

/**
 * Where branches can rest, flows on the way may have been far larger than those of the solution, and so was their rounding. Whether
 * they did not add up; then they do after.
 */
function leavesRounding({ tree, step }: SolverBuffers, { state: { flow }, equations }: Settled): boolean {
  if (tree.restable.length === 0) return false;
  let largest = 0;
  for (const q of flow) largest = Math.max(largest, Math.abs(q));
  if (continuityGap(tree, flow) <= CONTINUITY * largest) return false;
  treeStep(equations.linear, 0, step);
  keepContinuity(tree, { ...step, flow });
  return true;
}

interface Start {
  readonly passages: readonly Passage[];
  readonly state: TreeState;
}

/** Branches that linear losses have running backwards, although they let no water back, begin at rest. */
function coldStart({ tree, allOutward }: SolverBuffers, totalFlow: number): Start {
  let passages = allOutward;
  let state = initialState(tree, totalFlow);
  for (let round = 0; round < NETWORK_LIMITS.linearRounds; round++) {
    const next = closedAgainst(tree, passages, state);
    if (next === null) break;
    passages = next;
    state = initialState(tree, totalFlow, { rests: (b) => next[b] === 'resting' });
  }
  return { passages, state: passages === allOutward ? state : broughtToRest(tree, passages, state) };
}

/** The branches that were closed rest, all others run outward. */
function warmStart({ tree, allOutward }: SolverBuffers, totalFlow: number, earlier: NetworkSolution): Start {
  const state = initialState(tree, totalFlow, { earlier });
  if (earlier.closed.length === 0) return { passages: allOutward, state };
  const passages = [...allOutward];
  for (const b of earlier.closed) passages[b] = 'resting';
  return { passages, state: broughtToRest(tree, passages, state) };
}

/** The state stands in the buffers until the next settling. */
interface Settled {
  readonly balanced: boolean;
  readonly state: TreeState;
  readonly equations: TreeEquations;
  readonly steps: number;
}

/**
 * Steps with the passages as they are until every branch balances, or no step improves any more. A step from near rest goes
 * by the chord of a loss, not its slope, and need not lower the residuals: then it is taken whole, a few times.
 */
function settle(buffers: SolverBuffers, passages: readonly Passage[], from: TreeState): Settled {
  const { tree, step } = buffers;
  let [here, there] = buffers.sides;
  here.flow.set(from.flow);
  here.head.set(from.head);
  let equations = equationsAt(tree, passages, here);
  let leaps = 0;
  for (let steps = 0; steps < NETWORK_LIMITS.steps; steps++) {
    const settled = { balanced: true, state: here, equations, steps };
    if (equations.worst <= equations.allowed) return settled;
    treeStep(equations.linear, 0, step);
    const { sumOfSquares } = equations;
    const mayLeap = leaps < NETWORK_LIMITS.leaps;
    const halvings = mayLeap ? NETWORK_LIMITS.halvingsToLeap : NETWORK_LIMITS.halvings;
    const better = improve(buffers, passages, { here, there, sumOfSquares, halvings });
    const atFloor = equations.worst <= ROUNDING_FLOOR * equations.allowed;
    if (atFloor && (better === null || better.worst > STALLED * equations.worst)) return settled;
    if (better !== null) equations = better;
    else if (mayLeap) {
      leaps += 1;
      move(here, { step, share: 1, to: there });
      equations = equationsAt(tree, passages, there);
    } else return { ...settled, balanced: false };
    [here, there] = [there, here];
  }
  return { balanced: false, state: here, equations, steps: NETWORK_LIMITS.steps };
}

/** The equations where the step leads, halved until the residuals fall; null where none does. The state is then `there`. */
function improve(
  { tree, step }: SolverBuffers,
  passages: readonly Passage[],
  {
    here,
    there,
    sumOfSquares,
    halvings,
  }: {
    readonly here: TreeState;
    readonly there: Side;
    readonly sumOfSquares: number;
    readonly halvings: number;
  },
): TreeEquations | null {
  let share = 1;
  for (let halving = 0; halving <= halvings; halving++) {
    move(here, { step, share, to: there });
    const equations = equationsAt(tree, passages, there);
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
  { state, equations: { linear, allowed }, steps }: Settled,
): NetworkSolution {
  const response = treeStep({ ...linear, residual: noResidual }, 1, step);
  const rootLoss = lossAt(tree, 0, figureAt(state.flow, 0));
  const closed = tree.hasOneWay ? tree.restable.filter((b) => isClosed(tree, linear, b)) : NONE;
  const { flow, head } = withRest(tree, state, {
    isAnyClosed: closed.length > 0,
    noHead: ROUNDING_FLOOR * allowed,
  });
  return {
    flows: copied(flow),
    heads: copied(head),
    rootHead: figureAt(state.head, 0) + rootLoss.head,
    rootSlope: rootLoss.slope + figureAt(response.head, 0),
    flowSlopes: copied(response.flow),
    closed,
    steps,
  };
}

const NONE: readonly number[] = [];

const isClosed = ({ isOneWay }: Tree, { held }: LinearTree, b: number): boolean =>
  wholeAt(isOneWay, b) === 1 && wholeAt(held, b) === 1;

/** Out of the arrays that the next solve writes in. Plain, because many short typed arrays cost more to make and to collect. */
function copied(values: Float64Array): readonly number[] {
  const copy = new Array<number>(values.length);
  for (let b = 0; b < values.length; b++) copy[b] = figureAt(values, b);
  return copy;
}
