/** Brings a pump, or several in parallel, to one setting: head, power and turning points against total flow. */
import { headAtSpeed, risingFlows } from '../../curves/head-curve.ts';
import { powerAt } from '../../curves/power-law.ts';
import { speedRatioAt } from '../../curves/speed-map.ts';
import type { PumpModel } from './pump-model.ts';

/** One or several equal pumps at a setting. */
export interface PumpAtSetting {
  /** [% of full] */
  readonly setting: number;
  /** True speed over full speed [-]. */
  readonly speedRatio: number;
  /** Equal pumps in parallel [-]: each gives flow/count at the common head. */
  readonly count: number;
  /** Head [m] and its slope [s/m2] against the total flow [m3/s]. */
  headAt(flow: number): { readonly head: number; readonly slope: number };
  /** Electrical power of all pumps together [W], standby included, at a total flow [m3/s]. */
  powerAt(flow: number): number;
  /** Total flows at which the head curve turns between rising and falling [m3/s]. */
  readonly turningFlows: readonly number[];
  /** Largest total flow of the entered points, brought to this speed [m3/s]. */
  readonly flowScale: number;
}

/**
 * Brings a pump to a setting [% of full] with a count [-] of its curves: as fitted, or at one end of what they leave
 * open.
 */
export type PumpMaker = (
  model: PumpModel,
  place: { readonly setting: number; readonly count: number },
) => PumpAtSetting;

/**
 * A pump brought to a setting by the affinity laws: H = r^2 H0(Q/(n r)), P = n P0(Q/n, r).
 *
 * @param place setting [% of full] within the range of the pump; count n [-] of 1 or more.
 */
export function pumpAtSetting(
  { fit }: PumpModel,
  { setting, count }: { readonly setting: number; readonly count: number },
): PumpAtSetting {
  const speedRatio = speedRatioAt(fit.speedMap, setting);
  return {
    setting,
    speedRatio,
    count,
    headAt(flow) {
      const each = headAtSpeed(fit.headCurve, { flow: flow / count, speedRatio });
      return { head: each.head, slope: each.slope / count };
    },
    powerAt(flow) {
      return count * powerAt(fit.powerLaw, { flow: flow / count, speedRatio });
    },
    turningFlows: risingFlows(fit.headCurve).map((flow) => flow * speedRatio * count),
    flowScale: fit.headCurve.flowScale * speedRatio * count,
  };
}
