/** Finds the wire-to-water efficiency that the entered points of a pump give. */
import { headAt } from '../../curves/head-curve.ts';
import { speedRatioAt } from '../../curves/speed-map.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { waterProperties } from '../physics/water.ts';
import type { PumpModel } from './pump-model.ts';

/** Pumps are entered without a loop, so that their water is taken to be this. */
const WATER = { temperature: 25, salinity: 35 } as const;
/** Share of the largest entered flow below which a pump delivers too little for its efficiency to tell anything. */
const LEAST_SHARE = 0.1;

/**
 * The efficiency rho g Q H/P [-] at each power point, in their order, rho that of water of 25 degC and 35 g/kg.
 *
 * At a point with flow H is that of the head curve at its speed; at one without flow the best over the entered head
 * points, carried to its speed, is taken.
 * @returns null at a point whose flow is below a tenth of the largest entered one.
 */
export function enteredEfficiencies({ entered: pump, fit }: PumpModel): readonly (number | null)[] {
  const weight = waterProperties(WATER).density * GRAVITY;
  const { headCurve } = fit;
  const bestAtFullSpeed = Math.max(
    ...pump.headPoints.map(
      ({ flow, head, setting }) => (flow * head) / speedRatioAt(fit.speedMap, setting) ** 3,
    ),
  );
  return pump.powerPoints.map(({ power, flow, setting }) => {
    const speedRatio = speedRatioAt(fit.speedMap, setting);
    const carried = (weight * speedRatio ** 3) / power;
    if (flow === undefined) return carried * bestAtFullSpeed;
    const fullSpeedFlow = flow / speedRatio;
    if (fullSpeedFlow < LEAST_SHARE * headCurve.range.max) return null;
    return carried * fullSpeedFlow * headAt(headCurve, fullSpeedFlow);
  });
}
