/** Selects the pump that serves a loop at the least cost, and its setting. */
import type { ExactDuty } from '../duty/duty-point.ts';
import { annualUse } from '../duty/energy.ts';
import type { SampledLoop } from '../duty/sampled-loop.ts';
import { candidateLifeCycle } from '../money/candidate-life-cycle.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { criteriaFor } from './criteria.ts';
import { type DutyHeat, dutyHeat } from './duty-heat.ts';
import { type GridOutcome, type SearchedEnd, searchGrid } from './grid-search.ts';
import type { Limits, Running } from './options.ts';

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
}

/** A candidate without a feasible setting. */
export interface Rejected {
  /** Place in the request [-]. */
  readonly candidate: number;
  readonly outcome: Extract<GridOutcome, { feasible: false }>;
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
  for (const [candidate, { pump, count }] of candidates.entries()) {
    const criteriaOn = ({ loop }: SampledLoop) =>
      criteriaFor({ loop, pump, limits, elevation: running.elevation });
    const outcome = searchGrid({
      sampled,
      criteria: criteriaOn(sampled),
      pump,
      count,
      worstCase: worstCase && { ...worstCase, criteria: criteriaOn(worstCase.sampled) },
    });
    if (!outcome.feasible) {
      rejected.push({ candidate, outcome });
      continue;
    }
    const { duty } = outcome;
    const standbyPower = count * pump.entered.standbyPower;
    const use = annualUse({ ...running, power: duty.power, standbyPower });
    const heat = dutyHeat({ loop: sampled.loop, pump }, duty, running);
    const lifeCycleCost = lifeCycleOf({ pump, count }, { ...use, heat }, running);
    ranking.push({ candidate, duty, ...use, heat, lifeCycleCost });
  }
  const counted = running.heat?.inRanking === true ? withHeat : bare;
  return { ranking: ranking.toSorted((a, b) => cheaperFirst(a, b, counted)), rejected };
}

function lifeCycleOf(
  { pump, count }: Candidate,
  use: Pick<Ranked, 'annualCost' | 'annualEnergy' | 'heat'>,
  { lifeCycle, heat }: Running,
): number | null {
  if (lifeCycle === undefined || use.annualCost === null) return null;
  const annualCost = (heat?.inRanking === true ? withHeat : bare)(use).cost;
  return candidateLifeCycle({ pump: pump.entered, count, annualCost }, lifeCycle);
}

/** Those without a life-cycle cost come after those with one. */
function lifeCycleFirst(a: Ranked, b: Ranked): number {
  if (a.lifeCycleCost !== null && b.lifeCycleCost !== null) return a.lifeCycleCost - b.lifeCycleCost;
  return Number(a.lifeCycleCost === null) - Number(b.lifeCycleCost === null);
}

type Counted = (ranked: Pick<Ranked, 'annualCost' | 'annualEnergy' | 'heat'>) => {
  readonly cost: number;
  readonly energy: number;
};

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
