/** Which pipe sizes and which pump together serve a loop at the least cost over the years. */
import { failed, type Result, success } from '../../curves/result.ts';
import { solving } from '../network/solve-failure.ts';
import { waterProperties } from '../physics/water.ts';
import { checkDesign } from './check-design.ts';
import type { DesignFailure } from './design-failure.ts';
import { listsOf } from './design-loop.ts';
import { pipeworkCosts } from './pipework-costs.ts';
import { greatestHead } from './pump-offers.ts';
import { runLosses } from './run-loss.ts';
import { runTree } from './run-tree.ts';
import { type DesignQuestion, type FoundDesigns, searchDesigns } from './search-designs.ts';
import { type FrontierPoint, thinnedFrontier } from './thinned-frontier.ts';
import { type TooFast, tooFastList } from './too-fast.ts';

export interface Designs extends FoundDesigns {
  /** The first list that is too fast in every size: then there is no design. */
  readonly tooFast: TooFast | null;
  readonly frontier: readonly FrontierPoint[];
}

const FRONTIER_POINTS = 100;

/**
 * The cheapest design of a loop: sizes, pump and setting together.
 *
 * Class: every outlet gets exactly what it requires, so that the flow of each run is known; at each split all branches but the one
 * that requires most head are throttled, and what the pump gives beyond the required head is throttled behind it. One valve
 * a branch but one of every split and one behind the pump are paid. Cost = life-cycle cost of the pumps + present value of their
 * energy + pipes + valves. Designs without these valves are not searched.
 *
 * Method: sizes meet the pump in one number, the required head. From the outlets up the least cost of pipes is kept against the
 * head that they require (`pipeworkCosts`); every pump at every setting whose criteria hold then takes the cheapest that its
 * head is enough for. So the least sum is the least of the class, to rounding (1e-9), where no frontier was thinned.
 *
 * Accuracy: equal to the trial of every combination on 200 invented trees (test/models/designs/enumeration.test.ts).
 * Growth, measured on invented trees of 15 to 121 runs with 4 to 12 sizes: the points of a frontier grow about as runs x sizes
 * (61 runs, 8 sizes: 1,000 in a random tree, 1,700 where each split has one outlet), the time as its square: 0.02 s there, and
 * 0.3 s with 50 pumps at 71 settings. Pipes one after another with lengths and prices of many digits are the worst: past 30 of
 * 8 sizes their 200,000 points are thinned, 2 s at 61, a gap of 0.01 %.
 */
export function designs(question: DesignQuestion): Result<Designs, DesignFailure> {
  const { loop, prices, candidates } = question;
  const checked = checkDesign(loop, { prices, candidates: candidates.length });
  if (!checked.ok) return checked;
  const { flows, firstMisfit } = checked.value;
  const suction = runTree(loop, flows, question);
  const tooFast = tooFastList(suction, listsOf(loop), question.pipeVelocity);
  if (tooFast !== null) return success(noneFor(candidates.length, tooFast));
  const losses = runLosses(loop, waterProperties(loop.water).kinematicViscosity);
  const headLimit = greatestHead(candidates, flows.flow);
  const { frictionMultiplier } = loop;
  const limitsSuction = question.limits.enforceNpsh;
  const costs = pipeworkCosts(suction, { losses, frictionMultiplier, headLimit, limitsSuction });
  if (costs.frontier.heads.length === 0) {
    if (firstMisfit === null) throw new Error('invariant: sizes that go together have a point');
    return failed(firstMisfit);
  }
  const found = solving(() => searchDesigns({ question, flow: flows.flow, suction, losses, costs }));
  if (!found.ok) return found;
  const frontier = thinnedFrontier(costs.frontier, { most: FRONTIER_POINTS, headLimit });
  return success({ ...found.value, tooFast: null, frontier });
}

const noneFor = (candidates: number, tooFast: TooFast): Designs => ({
  best: null,
  ranking: [],
  rejected: Array.from({ length: candidates }, (_, candidate) => ({
    ...{ candidate, reasons: ['pipe-velocity'], shortcomings: [] },
  })),
  ...{ optimalityGap: 0, gravity: null, tooFast, frontier: [] },
});
