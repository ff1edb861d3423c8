/** Answers the intervals of the figures of a duty. */
import type { Assurance } from '../../../models/assurance/assure-loop.ts';
import {
  type CalibrationUncertainty,
  type DutyUncertainty,
  dutyUncertainty,
} from '../../../models/calibration/duty-uncertainty.ts';
import type { ExactDuty } from '../../../models/duty/duty-point.ts';
import { annualUse } from '../../../models/duty/energy.ts';
import { type UncertaintyRange, uncertaintyRange } from '../../../models/duty/uncertainty-range.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import type { Interval } from '../../../models/pump/power-interval.ts';
import { type PumpAtSetting, pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import type { Running } from '../../../models/selection/options.ts';
import type { DutyAnswer } from './duty-answer.ts';

/** Throws `SolveFailure` where an end of it is not solved within the limits. */
export function uncertaintyAnswer({
  pump,
  duty,
  running,
  assurance,
  land,
  others = [],
  calibrated = null,
}: {
  readonly pump: PumpModel;
  readonly duty: ExactDuty;
  readonly running: Running;
  readonly assurance: Assurance | null;
  /** Finds the duty of a pump on the loop. */
  readonly land: (pump: PumpAtSetting) => ExactDuty;
  /** Duties that the figures shall include besides. */
  readonly others?: readonly ExactDuty[];
  /** The loop and what its calibration leaves open; null without one. */
  readonly calibrated?: Calibrated | null;
}): DutyAnswer['uncertainty'] {
  const asked = assurance !== null && 'grade' in assurance ? assurance.grade : null;
  const grade = asked ?? pump.entered.grade ?? null;
  const known = uncertaintyRange({ pump, grade, duty, land, others });
  const open =
    calibrated === null
      ? null
      : dutyUncertainty(calibrated.uncertainty, { loop: calibrated.loop, pump, duty });
  const { flow, power } = widened(known, open, { pump, duty });
  const standbyPower = duty.count * pump.entered.standbyPower;
  const energyAt = (watts: number) => annualUse({ ...running, power: watts, standbyPower }).annualEnergy;
  const energyOf = ({ low, high }: Interval) => ({ low: energyAt(low), high: energyAt(high) });
  return {
    ...{ grade, flow, power, annualEnergy: energyOf(power) },
    laws: { power: known.lawsPower, annualEnergy: energyOf(known.lawsPower) },
    margin: open?.margin ?? undefined,
  };
}

interface Calibrated {
  readonly loop: CompiledLoop;
  readonly uncertainty: CalibrationUncertainty;
}

/** What the pump leaves open, and what the calibration does. */
function widened(
  { flow, power }: UncertaintyRange,
  open: DutyUncertainty | null,
  { pump, duty }: { readonly pump: PumpModel; readonly duty: ExactDuty },
): Pick<UncertaintyRange, 'flow' | 'power'> {
  if (open === null) return { flow, power };
  const flows = { low: Math.min(flow.low, open.flow.low), high: Math.max(flow.high, open.flow.high) };
  const powers = [flows.low, flows.high].map((one) => pumpAtSetting(pump, duty).powerAt(Math.max(0, one)));
  return {
    flow: flows,
    power: { low: Math.min(power.low, ...powers), high: Math.max(power.high, ...powers) },
  };
}
