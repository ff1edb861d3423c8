/** Gives the cautions about a flow at which a pump is not to be kept. */
import { leastFlow, preferredRegion } from '../pump/preferred-region.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { EQUAL } from '../selection/criterion.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const FLOW_REGION = topic({
  'pump-flow-limits': {
    severity: 'warning',
    sentence: 'The duty lies outside the flow limits entered for the pump.',
    source: 'flow limits as entered',
  },
  'low-flow': {
    severity: 'warning',
    sentence:
      'The pump runs at hardly any flow: it heats its water and its bearings wear. Choose a smaller pump, or open the loop.',
    source: `${COMMON_PRACTICE}: below a fifth of the best-efficiency flow; not looked up`,
  },
  'off-preferred-region': {
    severity: 'warning',
    sentence:
      'The duty lies outside 70 to 120 % of the best-efficiency flow at this speed: the pump wears sooner and wastes power there.',
    source: 'preferred operating region, ANSI/HI 9.6.3, as trade articles give it',
  },
});

/** Whether the flow [m3/s] of one pump brought to full speed is outside the limits entered for the pump. */
export function flowLimitCautions(
  { entered: pump }: PumpModel,
  flowAtFullSpeed: number,
): readonly CautionOf<typeof FLOW_REGION>[] {
  const { min = 0, max = Number.POSITIVE_INFINITY } = pump.flowLimits ?? {};
  const limit = endPassed(flowAtFullSpeed, { min, max });
  if (limit === null) return [];
  const pointer = limit === min ? '/flowLimits/min' : '/flowLimits/max';
  return [
    FLOW_REGION.give('pump-flow-limits', [], { pointer, value: flowAtFullSpeed, limit, quantity: 'flow' }),
  ];
}

/** Whether it is outside the preferred region of the pump; `density` [kg/m3] of the water. */
export function preferredRegionCautions(
  { fit }: PumpModel,
  flowAtFullSpeed: number,
  water: { readonly density: number },
): readonly CautionOf<typeof FLOW_REGION>[] {
  const preferred = preferredRegion(fit, water);
  const limit = preferred === null ? null : endPassed(flowAtFullSpeed, preferred);
  if (limit === null) return [];
  return [FLOW_REGION.give('off-preferred-region', [], { value: flowAtFullSpeed, limit, quantity: 'flow' })];
}

/** Whether the pump moves water, but hardly any: its flow brought to full speed [m3/s]; `density` [kg/m3] of the water. */
export function lowFlowCautions(
  { fit }: PumpModel,
  flowAtFullSpeed: number,
  water: { readonly density: number },
): readonly CautionOf<typeof FLOW_REGION>[] {
  const limit = leastFlow(fit, water);
  const isLow = flowAtFullSpeed > 0 && flowAtFullSpeed < limit * (1 - EQUAL);
  return FLOW_REGION.when(isLow, 'low-flow', [], { value: flowAtFullSpeed, limit, quantity: 'flow' });
}

/** The end of a range that a flow lies beyond; null where it lies inside. */
function endPassed(
  flow: number,
  { min, max }: { readonly min: number; readonly max: number },
): number | null {
  if (flow < min * (1 - EQUAL)) return min;
  return flow > max * (1 + EQUAL) ? max : null;
}
