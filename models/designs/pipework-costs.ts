/** What the cheapest pipework costs that a head is enough for. */
import { at } from '../../curves/at.ts';
import { dependsOnNextPipe } from './bore-dependence.ts';
import { branchFrontiers, type FrontierTerms } from './branch-frontiers.ts';
import { cheapestWithin, type Frontier, noPoint } from './frontier.ts';
import type { Run } from './run-tree.ts';
import { straightRunGain } from './straight-run-gain.ts';
import { type Halves, halvesOf, pairings, sizesOfPair, withLessHead } from './suction-halves.ts';
import { pointBudget } from './thin.ts';
import { readSizes } from './trace.ts';
import { keepingFor } from './unite.ts';

/** Pipework by its required head [m] and cost; `sizes` reads the place chosen of each list. */
export interface FoundPipework {
  readonly head: number;
  readonly cost: number;
  readonly sizes: () => readonly number[];
}

/** The head [m] that a pump gives, and the most that the suction may lose before it [m], infinite where that is free. */
export interface PumpHead {
  readonly head: number;
  readonly suctionLoss: number;
}

export interface PipeworkCosts {
  /** Required head against cost, suction and discharge together. */
  readonly frontier: Frontier;
  /** What any pipework may cost less than what is found: 0 unless points were thinned out [money]. */
  readonly slack: number;
  /** Least that any suction loses [m]; infinite unless suctions are limited. */
  readonly leastSuctionLoss: number;
  /** The cheapest pipework for a pump; of several within `equal` of its cost the one of least head. Null where none will do [money]. */
  cheapestFor(pump: PumpHead, equal?: number): FoundPipework | null;
}

/**
 * Works out the frontier of a tree of runs by the required head [m] at the intake. Points above `headLimit` [m] are dropped,
 * since no pump gives that much. `limitsSuction`: whether the loss of the suction may be limited for some pumps; only then
 * suctions are kept apart from discharges.
 */
export function pipeworkCosts(
  suction: Run,
  {
    headLimit,
    limitsSuction,
    ...loop
  }: Omit<FrontierTerms, 'keeping'> & { readonly headLimit: number; readonly limitsSuction: boolean },
): PipeworkCosts {
  // A straight run may give back head that was required before it.
  const gain = straightRunGain(suction, { boresBefore: [null], frictionMultiplier: loop.frictionMultiplier });
  const terms = {
    ...loop,
    keeping: keepingFor({ headLimit: headLimit + gain, budget: pointBudget(countFrontiers(suction)) }),
  };
  const frontiersOf = branchFrontiers(terms);
  const whole = frontiersOf(suction, { boreBefore: null, byFirstBore: false });
  const frontier = whole.get(null) ?? noPoint;
  const halves = limitsSuction ? halvesOf(suction, { terms, frontiersOf }) : [];
  const losses = halves.map((half) => half.suction.heads);
  const most = Math.max(Number.NEGATIVE_INFINITY, ...losses.map((heads) => at(heads, heads.length - 1)));
  return {
    frontier,
    slack: Math.max(frontier.slack, ...halves.map((half) => half.suction.slack + half.discharge.slack)),
    leastSuctionLoss: Math.min(...losses.map((heads) => at(heads, 0))),
    cheapestFor: (pump, equal = 0) =>
      pump.suctionLoss >= most
        ? cheapestOf(frontier, pump.head, equal)
        : cheapestOfHalves(halves, pump, equal),
  };
}

/** About as many as will be made: one a pipe, or one a size of a pipe that the pipe before it depends on, and one a split. */
function countFrontiers({ pipes, beyond }: Run): number {
  let count = 1;
  for (const [place, { sizes }] of pipes.entries()) {
    const before = pipes[place - 1];
    count += before !== undefined && dependsOnNextPipe(before) ? sizes.length : 1;
  }
  return beyond.reduce((sum, child) => sum + countFrontiers(child), count);
}

function cheapestOf(frontier: Frontier, head: number, equal: number): FoundPipework | null {
  let index = cheapestWithin(frontier, head);
  if (index < 0) return null;
  const { heads, costs, trace } = frontier;
  const most = at(costs, index) + equal;
  while (index > 0 && at(costs, index - 1) <= most) index -= 1;
  return {
    head: at(heads, index),
    cost: at(costs, index),
    sizes: () => {
      const sizes: number[] = [];
      readSizes(trace, index, sizes);
      return sizes;
    },
  };
}

function cheapestOfHalves(all: readonly Halves[], pump: PumpHead, equal: number): FoundPipework | null {
  let least = Number.POSITIVE_INFINITY;
  for (const { cost } of pairings(all, pump)) least = Math.min(least, cost);
  let best = null;
  for (const pair of pairings(all, pump)) {
    if (pair.cost > least + equal) continue;
    const less = withLessHead(pair, least + equal);
    if (best === null || less.head < best.head) best = less;
  }
  if (best === null) return null;
  const found = best;
  return { head: found.head, cost: found.cost, sizes: () => sizesOfPair(found) };
}
