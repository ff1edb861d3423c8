/** The cautions about curves that cross more than once: whether a pump starts, and where it then lands. */
import { dutyPoint, type ExactDuty } from '../duty/duty-point.ts';
import { solving } from '../network/solve-failure.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { ConditionContext } from '../selection/criteria.ts';
import { type Caution, caution } from './catalogue.ts';

/** Only a drooping pump crosses a rising system more than once. */
export function startCautions(
  { loop, pump }: Pick<ConditionContext, 'loop' | 'pump'>,
  { setting, count, state, deadHead }: ExactDuty,
): readonly Caution[] {
  if (!pump.fit.headCurve.drooping || state === null) return [];
  const found = solving(() => dutyPoint(loop, pumpAtSetting(pump, { setting, count }), state));
  if (!found.ok) return [];
  const duties = found.value.crossings.filter(({ stable }) => stable).length;
  if (deadHead) return duties > 0 ? [caution('does-not-start')] : [];
  return duties > 1 ? [caution('several-duties')] : [];
}
