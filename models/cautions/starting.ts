/** Gives the cautions about whether a pump moves water from rest, and to which of several duties. */
import { dutyPoint, type ExactDuty } from '../duty/duty-point.ts';
import { solving } from '../network/solve-failure.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { CriteriaContext } from '../selection/criteria.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const STARTING = topic({
  'dead-head': {
    severity: 'danger',
    sentence: 'The pump moves no water at this setting: it would run against a closed column and overheat.',
    source: COMMON_PRACTICE,
  },
  'does-not-start': {
    severity: 'danger',
    sentence:
      'From rest the pump does not lift the water although it would keep a flow going: its head at no flow is below what the loop needs.',
    source: 'crossings of a drooping pump curve with the system curve',
  },
  'several-duties': {
    severity: 'warning',
    sentence:
      'The drooping pump curve crosses the system curve more than once: the duty given is that reached from rest, and a disturbance can move the pump to another.',
    source: 'crossings of a drooping pump curve with the system curve',
  },
});

/** Judges a duty; only a drooping pump crosses a rising system more than once. */
export function startCautions(
  { loop, pump }: Pick<CriteriaContext, 'loop' | 'pump'>,
  { setting, count, head, state, deadHead }: ExactDuty,
): readonly CautionOf<typeof STARTING>[] {
  const heads = { value: head, limit: state?.head, quantity: 'head' } as const;
  const still = STARTING.when(deadHead, 'dead-head', [], heads);
  if (!pump.fit.headCurve.drooping || state === null) return still;
  const found = solving(() => dutyPoint(loop, pumpAtSetting(pump, { setting, count }), state));
  if (!found.ok) return still;
  const duties = found.value.crossings.filter(({ stable }) => stable).length;
  return deadHead
    ? [...still, ...STARTING.when(duties > 0, 'does-not-start', [], heads)]
    : STARTING.when(duties > 1, 'several-duties', [], { value: duties, limit: 1 });
}
