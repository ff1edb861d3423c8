/** Finds the setting of a pump that serves one set of required flows. */
import type { ExactDuty } from '../duty/duty-point.ts';
import { estimateDuty, exactDuty, type SampledLoop } from '../duty/sampled-loop.ts';
import type { Limits } from '../loop/limits.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { hasRequirement } from '../network/margins.ts';
import { requiredDuty } from '../network/required-duty.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { criteriaFor } from '../selection/criteria.ts';
import { CRITERION_REASONS, type Criterion } from '../selection/criterion.ts';
import { type GridOutcome, searchGrid } from '../selection/grid-search.ts';
import { type Demand, type Protection, protectiveSetting } from './protective-setting.ts';
import type { VolumeDemand } from './schedule.ts';
import type { SettingGrid } from './setting-grid.ts';
import { upperLimits, volumeCeiling } from './upper-limits.ts';

/** A pump on a loop, with what a selection of its settings is judged by. */
export interface Station {
  readonly pump: PumpModel;
  /** Equal pumps in parallel [-]. */
  readonly count: number;
  readonly limits: Limits;
  /** Of the site above sea level [m]. */
  readonly elevation: number;
}

/** A loop with some outlets closed: its samples, and the settings of the pump on it. */
export interface JudgedLoop {
  readonly sampled: SampledLoop;
  readonly grid: SettingGrid;
}

/** `no-setting`: each criterion holds somewhere, and all of them nowhere; or the phase does not fit its loop. */
export const INFEASIBLE_REASONS = [...CRITERION_REASONS, 'no-setting'] as const;

export type InfeasibleReason = (typeof INFEASIBLE_REASONS)[number];

/** Why no setting is feasible, and how the one that is given was chosen. */
export interface Infeasible extends Protection {
  /** The first reason of a selection. */
  readonly reason: InfeasibleReason;
}

export type Feasibility = { readonly feasible: true } | ({ readonly feasible: false } & Infeasible);

/** How a phase runs. */
export type PhaseDuty = Feasibility & {
  /** [% of full] */
  readonly setting: number;
  readonly duty: ExactDuty;
};

/**
 * The lowest grid setting at which every criterion holds; where none does, the one that protects best.
 *
 * @param judged the loop, from which `loop` differs in its requirements alone.
 * @param fits false: the phase names what the loop does not have, and no setting is feasible.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function phaseDuty(
  judged: JudgedLoop,
  loop: CompiledLoop,
  station: Station,
  fits: boolean,
): PhaseDuty {
  const criteria = criteriaFor({ ...station, loop });
  const isRequired = hasRequirement(loop.system.outlets);
  const outcome = isRequired ? searched(judged, loop, station, criteria) : null;
  if (fits && outcome?.feasible === true) {
    return { feasible: true, setting: outcome.duty.setting, duty: outcome.duty };
  }
  const served = criteria.find(({ reason }) => reason === 'not-enough-head') ?? null;
  const demand = { served: isRequired ? served : null, upper: upperLimits({ ...station, loop }) };
  return protectedDuty(judged, demand, outcome === null ? 'no-setting' : reasonOf(outcome, 'no-setting'));
}

/**
 * The duty of a phase that moves a volume, for the runs in which that is out of reach: at the highest setting within
 * the upper limits, and the greatest flow of the volume.
 *
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function volumeDuty(
  judged: JudgedLoop,
  loop: CompiledLoop,
  station: Station,
  { ceiling }: Pick<VolumeDemand, 'ceiling'>,
): PhaseDuty {
  const outcome = searched(judged, loop, station, criteriaFor({ ...station, loop }));
  const upper = [
    ...(ceiling === undefined ? [] : [volumeCeiling(ceiling)]),
    ...upperLimits({ ...station, loop }),
  ];
  return protectedDuty(judged, { served: null, upper }, reasonOf(outcome, 'not-enough-head'));
}

function searched(
  { sampled }: JudgedLoop,
  loop: CompiledLoop,
  { pump, count }: Station,
  criteria: readonly Criterion[],
): GridOutcome {
  const here: SampledLoop = { ...sampled, loop, required: requiredDuty(loop.system) };
  return searchGrid({ sampled: here, pump, count, criteria });
}

/** `otherwise`: the reason where settings are feasible that do not do for the phase. */
function reasonOf(outcome: GridOutcome, otherwise: InfeasibleReason): InfeasibleReason {
  return outcome.feasible ? otherwise : (outcome.failing[0]?.reason ?? 'no-setting');
}

function protectedDuty({ grid }: JudgedLoop, demand: Demand, reason: InfeasibleReason): PhaseDuty {
  const { index, ...protection } = protectiveSetting(grid, demand);
  const [setting, duty] = [grid.settingAt(index), grid.dutyAt(index)];
  return { feasible: false, reason, ...protection, setting, duty };
}

/** The exact duty of a pump at any setting [% of full], on the grid or off it. */
export function dutyAt(sampled: SampledLoop, { pump, count }: Station, setting: number): ExactDuty {
  const at = pumpAtSetting(pump, { setting, count });
  return exactDuty(sampled, at, estimateDuty(sampled, at, sampled.required?.flow));
}
