/** Gives the cautions about a duty beyond what was entered of the pump: its points, its speeds, its settings. */
import type { DutyFigures } from '../duty/duty-point.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { isOnGrid } from '../pump/settings-grid.ts';
import { EQUAL } from '../selection/criteria.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const ENTERED_RANGE = topic({
  extrapolated: {
    severity: 'warning',
    sentence:
      'The duty lies beyond the largest entered flow: the head curve is a straight continuation there.',
    source: 'rule of the head-curve fit',
  },
  'low-speed': {
    severity: 'warning',
    sentence:
      'Below half speed without an entered point there: the affinity laws overstate what small pumps do at low speed.',
    source: COMMON_PRACTICE,
  },
  'off-grid': {
    severity: 'note',
    sentence: "The setting is not one of the controller's steps.",
    source: 'settings as entered',
  },
});

/** Speed ratio [-] below which the affinity laws are doubted without an entered point. */
const LOW_SPEED = 0.5;

/** Whether the flow [m3/s] of one pump brought to full speed is beyond the entered ones. */
export const extrapolationCautions = (
  { fit }: PumpModel,
  flowAtFullSpeed: number,
): readonly CautionOf<typeof ENTERED_RANGE>[] =>
  ENTERED_RANGE.when(flowAtFullSpeed > fit.headCurve.range.max * (1 + EQUAL), 'extrapolated');

/** Judges the speed ratio [-] and the setting [%] of a duty. */
export function settingCautions(
  { entered: pump }: PumpModel,
  { speedRatio, setting }: Pick<DutyFigures, 'speedRatio' | 'setting'>,
): readonly CautionOf<typeof ENTERED_RANGE>[] {
  const hasLowPoint = pump.powerPoints.some((point) => point.setting <= setting);
  return [
    ...ENTERED_RANGE.when(speedRatio < LOW_SPEED && !hasLowPoint, 'low-speed'),
    ...ENTERED_RANGE.when(!isOnGrid(pump.settings, setting), 'off-grid'),
  ];
}
