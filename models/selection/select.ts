/** Selects the pump that serves a loop at the least cost, and its setting. */
import type { ExactDuty } from '../duty/duty-point.ts';
import { annualUse } from '../duty/energy.ts';
import type { SampledLoop } from '../duty/sampled-loop.ts';
import type { Limits } from '../loop/limits.ts';
import { candidateLifeCycle } from '../money/candidate-life-cycle.ts';
import { type Interval, powerIntervalOf } from '../pump/power-interval.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { criteriaFor } from './criteria.ts';
import { type DutyHeat, dutyHeat } from './duty-heat.ts';
import { servedByGravity } from './gravity.ts';
import { type GridOutcome, type SearchedEnd, searchGrid } from './grid-search.ts';
import type { Running } from './options.ts';
import { type Throttle, throttleFor } from './throttle.ts';

/** The loop and its pumps at the end of their uncertainty that is against the user. */
export type WorstCase = Omit<SearchedEnd, 'criteria'>;

/** One or several equal pumps. */
export interface Candidate {
  readonly pump: PumpModel;
  /** In parallel [-]. */
  readonly count: number;
}

/** A feasible candidate at its smallest feasible setting. */
export interface Ranked {
  /** Place in the request [-]. */
  readonly candidate: number;
  readonly duty: ExactDuty;
  /** [kWh/year] */
  readonly annualEnergy: number;
  /** [money/year]; null without a price. */
  readonly annualCost: number | null;
  readonly heat: DutyHeat;
  /** Present value [money]; null where it is not asked for, or a price of pump or energy is not known. */
  readonly lifeCycleCost: number | null;
  /**
   * What it is ranked by, at both ends of what the entered points leave open of its power at this flow: its life-cycle cost
   * or annual cost [money], without a price its annual energy [kWh].
   */
  readonly rankedBy: Interval;
}

/** A candidate without a feasible setting. */
export interface Rejected {
  /** Place in the request [-]. */
  readonly candidate: number;
  readonly outcome: Extract<GridOutcome, { feasible: false }>;
  /** The valve that would make it feasible; null where none does, or where its flow is not what it fails by. */
  readonly throttle: Throttle | null;
}

export interface Selection {
  /** Cheapest first. */
  readonly ranking: readonly Ranked[];
  /** In the order of the request. */
  readonly rejected: readonly Rejected[];
}

/**
 * Judges every candidate at its smallest feasible setting and ranks those that have one.
 *
 * With a `worstCase` a setting is feasible when every criterion holds there too; ranking and figures are those as
 * entered.
 * Order: life-cycle cost where that is asked for, annual cost, annual energy, power, setting, count, place in the
 * request; cost and energy with those of chiller or heater where that is asked for.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function select({
  sampled,
  candidates,
  limits,
  running,
  worstCase,
}: {
  readonly sampled: SampledLoop;
  readonly candidates: readonly Candidate[];
  readonly limits: Limits;
  readonly running: Running;
  readonly worstCase?: WorstCase | undefined;
}): Selection {
  const ranking: Ranked[] = [];
  const rejected: Rejected[] = [];
  const gravity = limits.gravity === 'reject' ? servedByGravity(sampled) : null;
  for (const [candidate, { pump, count }] of candidates.entries()) {
    const criteriaOn = ({ loop }: SampledLoop) =>
      criteriaFor({ loop, pump, limits, elevation: running.elevation, gravity });
    const end = { sampled, criteria: criteriaOn(sampled) };
    const worst = worstCase && { ...worstCase, criteria: criteriaOn(worstCase.sampled) };
    const outcome = searchGrid({ ...end, pump, count, worstCase: worst });
    if (!outcome.feasible) {
      const isAbove = outcome.failing.some(({ reason }) => reason === 'pump-above-maximum');
      const throttle = isAbove ? throttleFor(end, { pump, count }, worst) : null;
      rejected.push({ candidate, outcome, throttle });
      continue;
    }
    const { duty } = outcome;
    const standbyPower = count * pump.entered.standbyPower;
    const use = annualUse({ ...running, power: duty.power, standbyPower });
    const heat = dutyHeat({ loop: sampled.loop, pump }, duty, running);
    const lifeCycleCost = lifeCycleOf({ pump, count }, { ...use, heat }, running);
    const rankedByAt = (power: number) =>
      rankedBy({ pump, count }, { ...annualUse({ ...running, power, standbyPower }), heat }, running);
    const powers = powerIntervalOf(pump.fit, duty);
    const ends = { low: rankedByAt(powers.low), high: rankedByAt(powers.high) };
    ranking.push({ candidate, duty, ...use, heat, lifeCycleCost, rankedBy: ends });
  }
  const counted = countedIn(running);
  return { ranking: ranking.toSorted((a, b) => cheaperFirst(a, b, counted)), rejected };
}

type Use = Pick<Ranked, 'annualCost' | 'annualEnergy' | 'heat'>;

function lifeCycleOf({ pump, count }: Candidate, use: Use, running: Running): number | null {
  if (running.lifeCycle === undefined || use.annualCost === null) return null;
  const annualCost = countedIn(running)(use).cost;
  return candidateLifeCycle({ pump: pump.entered, count, annualCost }, running.lifeCycle);
}

function rankedBy(candidate: Candidate, use: Use, running: Running): number {
  const { cost, energy } = countedIn(running)(use);
  return lifeCycleOf(candidate, use, running) ?? (use.annualCost === null ? energy : cost);
}

/** Those without a life-cycle cost come after those with one. */
function lifeCycleFirst(a: Ranked, b: Ranked): number {
  if (a.lifeCycleCost !== null && b.lifeCycleCost !== null) return a.lifeCycleCost - b.lifeCycleCost;
  return Number(a.lifeCycleCost === null) - Number(b.lifeCycleCost === null);
}

type Counted = (use: Use) => { readonly cost: number; readonly energy: number };

const countedIn = ({ heat }: Running): Counted => (heat?.inRanking === true ? withHeat : bare);

const bare: Counted = ({ annualCost, annualEnergy }) => ({ cost: annualCost ?? 0, energy: annualEnergy });

const withHeat: Counted = (ranked) => {
  const { cost, energy } = bare(ranked);
  return { cost: cost + (ranked.heat.annualCost ?? 0), energy: energy + (ranked.heat.annualEnergy ?? 0) };
};

function cheaperFirst(a: Ranked, b: Ranked, counted: Counted): number {
  return (
    lifeCycleFirst(a, b) ||
    counted(a).cost - counted(b).cost ||
    counted(a).energy - counted(b).energy ||
    a.duty.power - b.duty.power ||
    a.duty.setting - b.duty.setting ||
    a.duty.count - b.duty.count ||
    a.candidate - b.candidate
  );
}
