/** Finds the best-efficiency point of a pump at full speed, from its fitted head and power. */
import { headAt } from '../../curves/head-curve.ts';
import { powerAt } from '../../curves/power-law.ts';
import { GRAVITY } from '../physics/gravity.ts';
import type { PumpFit } from './pump-model.ts';

/** Where a pump is most efficient, at full speed. */
export interface BestEfficiencyPoint {
  /** [m3/s] */
  readonly flow: number;
  /** [m] */
  readonly head: number;
  /** Wire to water [-]. */
  readonly efficiency: number;
}

const SCAN = 200;
const GOLDEN_STEPS = 60;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Flow, head and wire-to-water efficiency rho g Q H/P where that is greatest at full speed, within the entered flows.
 *
 * The best of 200 even steps, then golden sections around it.
 * @param water density rho [kg/m3].
 * @returns null where power does not depend on flow, since the place would then say nothing of the pump.
 */
export function bestEfficiencyPoint(
  { headCurve, powerLaw }: PumpFit,
  { density }: { readonly density: number },
): BestEfficiencyPoint | null {
  if (powerLaw.flowTerms.length === 0) return null;
  const efficiency = (flow: number) =>
    (density * GRAVITY * flow * headAt(headCurve, flow)) / powerAt(powerLaw, { flow, speedRatio: 1 });
  const step = headCurve.range.max / SCAN;
  let best = 0;
  let greatest = efficiency(0);
  for (let place = 1; place <= SCAN; place++) {
    const here = efficiency(step * place);
    if (!(here > greatest)) continue;
    best = place;
    greatest = here;
  }
  let low = step * Math.max(0, best - 1);
  let high = step * Math.min(SCAN, best + 1);
  for (let section = 0; section < GOLDEN_STEPS; section++) {
    const span = GOLDEN * (high - low);
    if (efficiency(high - span) < efficiency(low + span)) low = high - span;
    else high = low + span;
  }
  const flow = (low + high) / 2;
  return { flow, head: headAt(headCurve, flow), efficiency: efficiency(flow) };
}
