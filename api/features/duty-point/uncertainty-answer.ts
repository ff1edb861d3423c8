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
import { solving } from '../../../models/network/solve-failure.ts';
import { type PumpAtSetting, pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import type { Running } from '../../../models/selection/options.ts';
import type { DutyAnswer } from './duty-answer.ts';

/** Null also where an end of the range is not solved within the limits. */
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
  readonly calibrated?: {
    readonly loop: CompiledLoop;
    readonly uncertainty: CalibrationUncertainty;
  } | null;
}): DutyAnswer['doubt'] {
  const asked = assurance !== null && 'grade' in assurance ? assurance.grade : null;
  const grade = asked ?? pump.entered.grade ?? null;
  const solved = solving(() => uncertaintyRange({ pump, grade, duty, land, others }));
  const open = calibrated === null ? null : calibratedRange(calibrated, { pump, duty });
  if (!solved.ok || (solved.value === null && open === null)) return null;
  const { flow, power } = widened(solved.value, open, { pump, duty });
  const standbyPower = duty.count * pump.entered.standbyPower;
  const energyAt = (watts: number) => annualUse({ ...running, power: watts, standbyPower }).annualEnergy;
  return {
    ...{ grade, flow, power },
    annualEnergy: { low: energyAt(power.low), high: energyAt(power.high) },
    margin: open?.margin ?? undefined,
  };
}

interface Landed {
  readonly pump: PumpModel;
  readonly duty: ExactDuty;
}

function calibratedRange(
  { loop, uncertainty }: { readonly loop: CompiledLoop; readonly uncertainty: CalibrationUncertainty },
  landed: Landed,
): DutyUncertainty | null {
  const solved = solving(() => dutyUncertainty(uncertainty, { loop, ...landed }));
  return solved.ok ? solved.value : null;
}

/** What the pump leaves open, and what the calibration does. */
function widened(
  known: UncertaintyRange | null,
  open: DutyUncertainty | null,
  { pump, duty }: Landed,
): Pick<UncertaintyRange, 'flow' | 'power'> {
  const { flow, power } = known ?? {
    flow: { low: duty.flow, high: duty.flow },
    power: { low: duty.power, high: duty.power },
  };
  if (open === null) return { flow, power };
  const flows = { low: Math.min(flow.low, open.flow.low), high: Math.max(flow.high, open.flow.high) };
  const powers = [flows.low, flows.high].map((one) => pumpAtSetting(pump, duty).powerAt(Math.max(0, one)));
  return {
    flow: flows,
    power: { low: Math.min(power.low, ...powers), high: Math.max(power.high, ...powers) },
  };
}
