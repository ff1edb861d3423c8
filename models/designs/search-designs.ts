/** Searches pumps and settings for the cheapest design, once the least costs of the pipework are known. */
import { candidateLifeCycle } from '../money/candidate-life-cycle.ts';

import { type CompiledLoop, compileLoop } from '../network/compiled-loop.ts';
import { type Interval, powerIntervalOf } from '../pump/power-interval.ts';
import type { Gravity } from '../selection/gravity.ts';
import type { Candidate } from '../selection/select.ts';
import { type Chosen, chooseOptions, type DesignOption } from './choose-options.ts';
import { type DesignedLoop, designedLoop, runsAtFlow } from './design.ts';
import type { DesignLoop, Pipe } from './design-loop.ts';
import { gravityServed } from './gravity-served.ts';
import { type PipePrice, priceOfPipe } from './pipe-price.ts';
import type { PipeworkCosts } from './pipework-costs.ts';
import { type EnergyOfYears, energyOfYears, type Offer, type OfferTerms, offersOf } from './pump-offers.ts';
import { type DesignRejection, rejectionOf } from './rejections.ts';
import type { RunLosses } from './run-loss.ts';
import type { Run } from './run-tree.ts';
import { bestForSizes, type SizeChange, type SizedOption, sizeChanges } from './size-changes.ts';
import { type Sizes, sizedLoop } from './sized-loop.ts';

export interface DesignQuestion extends Omit<OfferTerms, 'loop' | 'flow' | 'gravity'> {
  readonly loop: DesignLoop;
  readonly prices: readonly PipePrice[];
  readonly candidates: readonly Candidate[];
  /** Highest velocity in a pipe that is to be chosen [m/s]; null: none. */
  readonly pipeVelocity: number | null;
  /** Money for one trim [money]. */
  readonly trimPrice: number;
}

/** SI; money as present values, those a year apart. */
export interface DesignRow {
  /** [-] */
  readonly candidate: number;
  /** [%] */
  readonly setting: number;
  /** [m3/s] */
  readonly flow: number;
  /** [m] */
  readonly requiredHead: number;
  /** Given by the pump [m]. */
  readonly head: number;
  /** [W] */
  readonly power: number;
  /** [kWh] */
  readonly annualEnergy: number;
  /** [money] */
  readonly annualCost: number;
  /** The sum of the four costs [money]. */
  readonly presentValue: number;
  /** [money] */
  readonly pumpCost: number;
  /** [money] */
  readonly energyCost: number;
  /** [money] */
  readonly pipeCost: number;
  /** [money] */
  readonly trimCost: number;
  /** `presentValue` at both ends of what the entered points leave open of the power. */
  readonly presentValueRange: Interval;
}

export interface BestDesign extends DesignRow, DesignedLoop {
  readonly sizes: Sizes;
  /** By list, the next smaller and the next larger size. */
  readonly changes: readonly SizeChange[];
  /** The first size of every list with its best pump, whatever the velocity; null where none serves. */
  readonly firstSizes: SizedOption | null;
}

export interface FoundDesigns {
  readonly best: BestDesign | null;
  /** The best design of each other candidate, the cheapest first. */
  readonly ranking: readonly DesignRow[];
  /** By candidate. */
  readonly rejected: readonly DesignRejection[];
  /** What the best design may cost more than the cheapest of its class, as a share; 0 where it is proven to be that [-]. */
  readonly optimalityGap: number;
  /** What runs without a pump with some of the sizes; null where none of them serves by gravity alone. */
  readonly gravity: Gravity | null;
}

export interface Search {
  readonly question: DesignQuestion;
  /** Required in all [m3/s]. */
  readonly flow: number;
  readonly suction: Run;
  readonly losses: RunLosses;
  readonly costs: PipeworkCosts;
}

/** Throws `SolveFailure` where the network of a design does not settle. */
export function searchDesigns(search: Search): FoundDesigns {
  const { question, flow, suction, losses, costs } = search;
  const loop = anyModel(question.loop, costs);
  const leastHead = costs.frontier.heads[0] ?? Number.NaN;
  const gravity = gravityServed(loop, leastHead);
  const candidates = offersOfAll(search, {
    loop,
    gravity: question.limits.gravity === 'reject' ? gravity : null,
  });
  const priced = candidates.flatMap(({ pumpCost, offers }) =>
    pumpCost === null ? [] : [{ pumpCost, offers }],
  );
  const trimCost = question.trimPrice * countTrims(suction);
  const mayMeetTwice = hasSplitLoss(suction);
  const chosen = chooseOptions(priced, {
    ...{ costs, trimCost },
    proves: (option) =>
      (option.offer.runsThere && !mayMeetTwice) || runsAtFlow(loopOf(search, option), option, flow),
  });
  const [row, ...ranking] = chosen.ranking.map((option) => {
    const { pumpCost, pumps } = candidateAt(candidates, option.offer.candidate);
    const presentValueRange = rangeOf(
      option,
      energyOfYears(pumps, question),
      powerIntervalOf(pumps.pump.fit, { ...option.offer.pump, flow }),
    );
    return rowOf(option, { flow, trimCost, pumpCost: pumpCost ?? Number.NaN, presentValueRange });
  });
  const [first] = chosen.ranking;
  const rejected = rejectionsOf(candidates, chosen, costs);
  if (first === undefined || row === undefined)
    return { best: null, ranking: [], rejected, optimalityGap: 0, gravity };
  const { frictionMultiplier } = question.loop;
  const bestFor = bestForSizes({ suction, losses, frictionMultiplier, candidates: priced, trimCost });
  const sizes = first.pipework.sizes();
  const best = {
    ...{ ...row, ...loopOf(search, first), sizes },
    changes: sizeChanges(suction, sizes, bestFor),
    firstSizes: bestFor(sizes.map(() => 0)),
  };
  return { best, ranking, rejected, optimalityGap: gapOf(row.presentValue, chosen), gravity };
}

/** The whole cost with the energy of either end of the power [W]. */
function rangeOf(
  { offer, presentValue }: DesignOption,
  energyOf: (power: number) => EnergyOfYears,
  power: Interval,
): Interval {
  const costs = [power.low, power.high].map(
    (watts) => presentValue + energyOf(watts).energyCost - offer.energyCost,
  );
  return { low: Math.min(...costs), high: Math.max(...costs) };
}

function candidateAt(candidates: readonly CandidateOffers[], place: number): CandidateOffers {
  const found = candidates[place];
  if (found === undefined) throw new Error(`invariant: there is no candidate ${place}`);
  return found;
}

interface CandidateOffers {
  readonly pumps: Candidate;
  readonly offers: readonly Offer[];
  /** Null of a pump without a price. */
  readonly pumpCost: number | null;
}

function offersOfAll(
  { question, flow }: Search,
  judged: Pick<OfferTerms, 'loop' | 'gravity'>,
): readonly CandidateOffers[] {
  const { candidates, lifeCycle } = question;
  return candidates.map((candidate, place) => {
    const { pump, count } = candidate;
    const pumpCost = candidateLifeCycle({ pump: pump.entered, count, annualCost: 0 }, lifeCycle);
    return {
      pumps: candidate,
      pumpCost,
      offers: offersOf(candidate, place, { ...question, ...judged, flow }),
    };
  });
}

/** Of the pipework that requires least head: a loop that can be built. */
function anyModel(loop: DesignLoop, { cheapestFor, frontier }: PipeworkCosts): CompiledLoop {
  const head = frontier.heads[0] ?? Number.NaN;
  const pipework = cheapestFor({ head, suctionLoss: Number.POSITIVE_INFINITY });
  const model = pipework === null ? null : compileLoop(sizedLoop(loop, pipework.sizes()));
  if (model === null || !model.ok) throw new Error('invariant: the pipework of a frontier can be built');
  return model.value;
}

function loopOf({ question, flow }: Search, { offer, pipework }: DesignOption): DesignedLoop {
  const { loop, prices } = question;
  const { head: requiredHead } = pipework;
  const priceOf = (pipe: Pipe): number => priceOfPipe(prices, pipe) ?? Number.NaN;
  return designedLoop({ loop, sizes: pipework.sizes(), flow, head: offer.head, requiredHead }, priceOf);
}

const rowOf = (
  { offer, pipework, presentValue }: DesignOption,
  facts: Pick<DesignRow, 'flow' | 'trimCost' | 'pumpCost' | 'presentValueRange'>,
): DesignRow => ({
  candidate: offer.candidate,
  setting: offer.pump.setting,
  requiredHead: pipework.head,
  head: offer.head,
  power: offer.power,
  annualEnergy: offer.annualEnergy,
  annualCost: offer.annualCost,
  presentValue,
  energyCost: offer.energyCost,
  pipeCost: pipework.cost,
  ...facts,
});

/** One a branch but one of every split, and one behind the pump. */
function countTrims(suction: Run): number {
  const beyond = ({ beyond: branches }: Run): number =>
    branches.reduce((sum, child) => sum + beyond(child), Math.max(0, branches.length - 1));
  return 1 + beyond(suction);
}

/** A straight run may gain head, so that a loop with stated splits may meet a pump more than once. */
const hasSplitLoss = ({ split, beyond }: Run): boolean => split !== undefined || beyond.some(hasSplitLoss);

function rejectionsOf(
  candidates: readonly CandidateOffers[],
  { ranking, unproven }: Chosen,
  costs: PipeworkCosts,
): readonly DesignRejection[] {
  const feasible = new Set(ranking.map(({ offer }) => offer.candidate));
  return candidates.flatMap(({ offers, pumpCost }, candidate): readonly DesignRejection[] => {
    if (feasible.has(candidate)) return [];
    if (pumpCost === null) return [{ candidate, reasons: ['no-price'], shortcomings: [] }];
    if (unproven.includes(candidate)) return [{ candidate, reasons: ['not-enough-head'], shortcomings: [] }];
    return [rejectionOf(candidate, offers, costs)];
  });
}

/** Costs within this share are one. */
const EQUAL = 1e-9;

function gapOf(presentValue: number, { leastCost }: Chosen): number {
  const gap = (presentValue - leastCost) / Math.abs(presentValue);
  return gap > EQUAL ? gap : 0;
}
