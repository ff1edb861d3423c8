/** Answers the intervals of the figures of a duty. */
import type { Assurance } from '../../../models/assurance/assure-loop.ts';
import type { ExactDuty } from '../../../models/duty/duty-point.ts';
import { annualUse } from '../../../models/duty/energy.ts';
import { uncertaintyRange } from '../../../models/duty/uncertainty-range.ts';
import type { Interval } from '../../../models/pump/power-interval.ts';
import type { PumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
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
}: {
  readonly pump: PumpModel;
  readonly duty: ExactDuty;
  readonly running: Running;
  readonly assurance: Assurance | null;
  /** Finds the duty of a pump on the loop. */
  readonly land: (pump: PumpAtSetting) => ExactDuty;
  /** Duties that the figures shall include besides. */
  readonly others?: readonly ExactDuty[];
}): DutyAnswer['uncertainty'] {
  const asked = assurance !== null && 'grade' in assurance ? assurance.grade : null;
  const grade = asked ?? pump.entered.grade ?? null;
  const { flow, power, lawsPower } = uncertaintyRange({ pump, grade, duty, land, others });
  const standbyPower = duty.count * pump.entered.standbyPower;
  const energyAt = (watts: number) => annualUse({ ...running, power: watts, standbyPower }).annualEnergy;
  const energyOf = ({ low, high }: Interval) => ({ low: energyAt(low), high: energyAt(high) });
  return {
    ...{ grade, flow, power, annualEnergy: energyOf(power) },
    laws: { power: lawsPower, annualEnergy: energyOf(lawsPower) },
  };
}
