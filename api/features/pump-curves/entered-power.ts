/** Places the entered power points of a pump at the flows that the fit takes them at. */
import { speedRatioAt } from '../../../curves/speed-map.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';

export interface EnteredPower {
  readonly flow: number;
  readonly power: number;
  readonly isFlowKnown: boolean;
}

/** Where power does not depend on flow, a point without flow may have any flow: that in the middle. */
const MIDDLE = 0.5;

/** A point without flow takes the mean flow of the others, brought to its speed by the affinity laws. */
export function enteredPower({ entered: pump, fit }: PumpModel): readonly EnteredPower[] {
  const { flowScale, flowCentre } = fit.powerLaw;
  const usual =
    flowScale === null || flowCentre === null ? MIDDLE * fit.headCurve.flowScale : flowScale * flowCentre;
  return pump.powerPoints.map(({ setting, power, flow }) => ({
    power,
    flow: flow ?? usual * speedRatioAt(fit.speedMap, setting),
    isFlowKnown: flow !== undefined,
  }));
}
