/** Finds the setting of a pump that serves one set of required flows. */
import type { ExactDuty } from '../duty/duty-point.ts';
import { estimateDuty, exactDuty, type SampledLoop } from '../duty/sampled-loop.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { hasRequirement } from '../network/margins.ts';
import { requiredDuty } from '../network/required-duty.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import { type Criterion, criteriaFor } from '../selection/criteria.ts';
import { holds, searchGrid } from '../selection/grid-search.ts';
import type { Limits } from '../selection/options.ts';

/** A pump on a loop, with what a selection of its settings is judged by. */
export interface Station {
  readonly pump: PumpModel;
  /** Equal pumps in parallel [-]. */
  readonly count: number;
  readonly limits: Limits;
  /** Of the site above sea level [m]. */
  readonly elevation: number;
}

/** How a phase runs. */
export interface PhaseDuty {
  /** [% of full] */
  readonly setting: number;
  /** False: no setting serves, and this is the highest inside the pump's own limits. */
  readonly feasible: boolean;
  readonly duty: ExactDuty;
}

const OWN_LIMITS: ReadonlySet<Criterion['reason']> = new Set(['pump-below-minimum', 'pump-above-maximum']);

/**
 * The smallest grid setting at which every criterion holds; where none does, the highest that keeps to the flow
 * limits of the pump itself, else the highest of all.
 *
 * @param sampled the loop, from which `loop` differs in its requirements alone.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function phaseDuty(sampled: SampledLoop, loop: CompiledLoop, station: Station): PhaseDuty {
  const { pump, count } = station;
  const criteria = criteriaFor({ ...station, loop });
  const here: SampledLoop = { ...sampled, loop, required: requiredDuty(loop.system) };
  if (hasRequirement(loop.system.outlets)) {
    const outcome = searchGrid({ sampled: here, pump, count, criteria });
    if (outcome.feasible) return { setting: outcome.duty.setting, feasible: true, duty: outcome.duty };
  }
  const own = criteria.filter(({ reason }) => OWN_LIMITS.has(reason));
  const duty = highestWithin(here, station, own);
  return { setting: duty.setting, feasible: false, duty };
}

/** The exact duty of a pump at any setting [% of full], on the grid or off it. */
export function dutyAt(sampled: SampledLoop, { pump, count }: Station, setting: number): ExactDuty {
  const at = pumpAtSetting(pump, { setting, count });
  return exactDuty(sampled, at, estimateDuty(sampled, at, sampled.required?.flow));
}

function highestWithin(sampled: SampledLoop, station: Station, own: readonly Criterion[]): ExactDuty {
  const { settings } = station.pump.entered;
  for (let index = gridSize(settings) - 1; index >= 0 && own.length > 0; index--) {
    const at = pumpAtSetting(station.pump, { setting: settingAt(settings, index), count: station.count });
    const estimate = estimateDuty(sampled, at);
    if (own.every((criterion) => holds(criterion.judge(estimate)))) {
      return exactDuty(sampled, at, estimate);
    }
  }
  return dutyAt(sampled, station, settings.max);
}
