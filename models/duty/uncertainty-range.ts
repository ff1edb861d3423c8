/** Finds between which figures a duty lies when the pump differs from its points as far as grade and fit leave open. */

import { type PumpAtSetting, pumpAtSetting } from '../pump/pump-at-setting.ts';
import { pumpEnds } from '../pump/pump-at-tolerance.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { type Grade, toleranceOf } from '../pump/tolerance-grades.ts';
import type { ExactDuty } from './duty-point.ts';

/** An interval. */
export interface Range {
  /** [m3/s] or [W]. */
  readonly low: number;
  /** [m3/s] or [W]. */
  readonly high: number;
}

/** Between which figures a duty lies. */
export interface UncertaintyRange {
  /** Null: the scatter of the points about their fit alone. */
  readonly grade: Grade | null;
  /** [m3/s] */
  readonly flow: Range;
  /** [W] */
  readonly power: Range;
}

/**
 * The least and the most flow [m3/s] and power [W] of the low pump, the pump as entered and the high pump at the
 * setting of a duty; the high power is (1 + tP) times the largest, tP that of the grade.
 *
 * @param of land, which finds the duty of a pump on the loop; others, duties that the range must include too.
 * @returns null where there is neither a grade nor a scatter of the points.
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
  readonly duty: Pick<ExactDuty, 'setting' | 'count' | 'flow'>;
  readonly land: (pump: PumpAtSetting) => Pick<ExactDuty, 'flow'>;
  readonly others?: readonly Pick<ExactDuty, 'flow'>[] | undefined;
}): UncertaintyRange | null {
  if (grade === null && pump.fit.headCurve.standardError === null) return null;
  const tolerance = toleranceOf(grade);
  const { low, high } = pumpEnds(tolerance);
  const landed = [low, high].map((pumpAt) => land(pumpAt(pump, duty)));
  const flows = [duty, ...landed, ...others].map(({ flow }) => flow);
  const asEntered = pumpAtSetting(pump, duty);
  const powers = flows.map((flow) => asEntered.powerAt(flow));
  return {
    grade,
    flow: { low: Math.min(...flows), high: Math.max(...flows) },
    power: { low: Math.min(...powers), high: (1 + tolerance.power) * Math.max(...powers) },
  };
}
