/** Finds between which figures a duty lies when the pump differs from its points as far as grade and fits leave open. */

import { type Interval, powerIntervalOf } from '../pump/power-interval.ts';
import type { PumpAtSetting } from '../pump/pump-at-setting.ts';
import { pumpEnds } from '../pump/pump-at-tolerance.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { type Grade, toleranceOf } from '../pump/tolerance-grades.ts';
import type { ExactDuty } from './duty-point.ts';

/** Between which figures a duty lies. */
export interface UncertaintyRange {
  /** Null: the scatter of the points about their fit alone. */
  readonly grade: Grade | null;
  /** [m3/s] */
  readonly flow: Interval;
  /** [W] */
  readonly power: Interval;
  /** Powers [W] at the flow of the duty itself, a grade left out. */
  readonly lawsPower: Interval;
}

/**
 * Flow [m3/s] and power [W] of the low pump, the pump as entered and the high pump at the setting of a duty: the least
 * and the most of the three flows, and of the powers that the points leave open at them (`powerIntervalOf`), the greatest
 * times (1 + tP), tP that of the grade. Ends are equal where nothing is open.
 *
 * @param of land, which finds the duty of a pump on the loop; others, duties that the range must include too.
 * Throws what `land` does.
 */
export function uncertaintyRange({
  pump,
  grade,
  duty,
  land,
  others = [],
}: {
  readonly pump: PumpModel;
  readonly grade: Grade | null;
  readonly duty: Pick<ExactDuty, 'setting' | 'speedRatio' | 'count' | 'flow'>;
  readonly land: (pump: PumpAtSetting) => Pick<ExactDuty, 'flow'>;
  readonly others?: readonly Pick<ExactDuty, 'flow'>[] | undefined;
}): UncertaintyRange {
  const tolerance = toleranceOf(grade);
  const landed = canDiffer(pump, grade)
    ? Object.values(pumpEnds(tolerance)).map((pumpAt) => land(pumpAt(pump, duty)))
    : [];
  const flows = [duty, ...landed, ...others].map(({ flow }) => flow);
  const powers = flows.map((flow) => powerIntervalOf(pump.fit, { ...duty, flow }));
  return {
    grade,
    flow: { low: Math.min(...flows), high: Math.max(...flows) },
    power: {
      low: Math.min(...powers.map(({ low }) => low)),
      high: (1 + tolerance.power) * Math.max(...powers.map(({ high }) => high)),
    },
    lawsPower: powerIntervalOf(pump.fit, duty),
  };
}

/** Whether the low and the high pump are others than the pump as entered. */
const canDiffer = ({ fit: { headCurve } }: PumpModel, grade: Grade | null): boolean =>
  grade !== null || headCurve.standardError !== null || headCurve.shape === 'assumed';
