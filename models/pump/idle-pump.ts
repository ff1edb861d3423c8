/** Finds the resistance of a stopped pump that others push water back through. */
import { headAt } from '../../curves/head-curve.ts';
import type { PumpFit } from './pump-model.ts';

const SCAN = 200;

/**
 * Resistance k [s2/m5] of H = k Q^2 of a stopped pump, held against turning: that of the point of its own curve with
 * the greatest hydraulic power Q H.
 *
 * By the affinity laws k does not depend on the speed of the points.
 * Source: common practice, from memory: in published four-quadrant curves of radial pumps a stopped rotor takes about
 *   the head of the best-efficiency point from the flow of that point, half of it to one and a half times.
 */
export function idlePumpResistance({ headCurve }: PumpFit): number {
  const { max } = headCurve.range;
  let best = { flow: max, head: 0 };
  for (let place = 1; place <= SCAN; place++) {
    const flow = (max * place) / SCAN;
    const head = headAt(headCurve, flow);
    if (flow * head > best.flow * best.head) best = { flow, head };
  }
  return best.head / best.flow ** 2;
}
