/** Gives the cautions about a duty beyond what was entered of the pump: its points, its speeds, its settings. */
import { PERCENT } from '../../curves/percent.ts';
import { flowEndPassed, speedEndPassed } from '../../curves/power-law.ts';
import type { DutyFigures } from '../duty/duty-point.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { isOnGrid } from '../pump/settings-grid.ts';
import { EQUAL } from '../selection/criterion.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const ENTERED_RANGE = topic({
  extrapolated: {
    severity: 'warning',
    sentence:
      'The duty lies beyond the largest entered flow: the head curve is a straight continuation there.',
    source: 'rule of the head-curve fit',
  },
  'power-extrapolated': {
    severity: 'warning',
    sentence:
      'The duty lies outside the speeds or flows at which power was entered: `uncertainty` says how far the power can differ. Measure it at this setting.',
    source: 'rule of the power fit',
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

type RangeCaution = CautionOf<typeof ENTERED_RANGE>;

/** Speed ratio [-] below which the affinity laws are doubted without an entered point. */
const LOW_SPEED = 0.5;

/** Whether the flow [m3/s] of one pump brought to full speed is beyond the entered ones. */
export function extrapolationCautions(
  { fit: { headCurve } }: PumpModel,
  flowAtFullSpeed: number,
): readonly RangeCaution[] {
  const { max: limit } = headCurve.range;
  const figures = { pointer: '/headPoints', value: flowAtFullSpeed, limit, quantity: 'flow' } as const;
  return ENTERED_RANGE.when(flowAtFullSpeed > limit * (1 + EQUAL), 'extrapolated', [], figures);
}

/** Whether speed ratio [-] or flow [m3/s] of one pump brought to full speed lie outside those at which power was entered. */
export function powerRangeCautions(
  { fit: { powerLaw } }: PumpModel,
  { speedRatio, flowAtFullSpeed }: { readonly speedRatio: number; readonly flowAtFullSpeed: number },
): readonly RangeCaution[] {
  const speedEnd = powerLaw.exponentAssumed ? null : speedEndPassed(powerLaw, speedRatio);
  const flowEnd = flowEndPassed(powerLaw, flowAtFullSpeed);
  const at = { pointer: '/powerPoints' };
  return [
    ...(speedEnd === null
      ? []
      : [
          ENTERED_RANGE.give('power-extrapolated', [], {
            ...{ ...at, value: PERCENT * speedRatio, limit: PERCENT * speedEnd, quantity: 'speed' },
          }),
        ]),
    ...(flowEnd === null
      ? []
      : [
          ENTERED_RANGE.give('power-extrapolated', [], {
            ...{ ...at, value: flowAtFullSpeed, limit: flowEnd, quantity: 'flow' },
          }),
        ]),
  ];
}

/** Judges the speed ratio [-] and the setting [%] of a duty. */
export function settingCautions(
  { entered: pump }: PumpModel,
  { speedRatio, setting }: Pick<DutyFigures, 'speedRatio' | 'setting'>,
): readonly RangeCaution[] {
  const hasLowPoint = pump.powerPoints.some((point) => point.setting <= setting);
  return [
    ...ENTERED_RANGE.when(speedRatio < LOW_SPEED && !hasLowPoint, 'low-speed', [], {
      ...{
        pointer: '/powerPoints',
        value: PERCENT * speedRatio,
        limit: PERCENT * LOW_SPEED,
        quantity: 'speed',
      },
    }),
    ...ENTERED_RANGE.when(!isOnGrid(pump.settings, setting), 'off-grid', [], {
      ...{ pointer: '/settings/step', value: setting, quantity: 'setting' },
    }),
  ];
}
