/** Gives the cautions about a flow at which a pump is not to be kept. */
import { preferredRegion } from '../pump/preferred-region.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { EQUAL } from '../selection/criteria.ts';
import { type CautionOf, topic } from './topic.ts';

export const FLOW_REGION = topic({
  'pump-flow-limits': {
    severity: 'warning',
    sentence: 'The duty lies outside the flow limits entered for the pump.',
    source: 'flow limits as entered',
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
  return FLOW_REGION.when(isOutside(flowAtFullSpeed, { min, max }), 'pump-flow-limits');
}

/** Whether it is outside the preferred region of the pump; `density` [kg/m3] of the water. */
export function preferredRegionCautions(
  { fit }: PumpModel,
  flowAtFullSpeed: number,
  water: { readonly density: number },
): readonly CautionOf<typeof FLOW_REGION>[] {
  const preferred = preferredRegion(fit, water);
  return FLOW_REGION.when(
    preferred !== null && isOutside(flowAtFullSpeed, preferred),
    'off-preferred-region',
  );
}

const isOutside = (flow: number, { min, max }: { readonly min: number; readonly max: number }): boolean =>
  flow < min * (1 - EQUAL) || flow > max * (1 + EQUAL);
