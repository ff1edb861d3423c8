/** Finds the resistance of a valve from its rated flow coefficient. */

import { failed, type Result, success } from '../../curves/result.ts';
import { SECONDS_PER_HOUR } from '../calendar/time-factors.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { BAR } from '../physics/unit-factors.ts';
import { quadraticLoss } from './resistance.ts';
import type { OpeningNotKnown, ValveState } from './valve-opening.ts';

/** Density [kg/m3] of the water that Kv is rated with. */
const RATED_DENSITY = 1000;
/** Cv per Kv: US gallons a minute at 1 psi against m3/h at 1 bar. */
const CV_PER_KV = 1.15609923;

/** Kv [m3/h at 1 bar] of a Cv [US gal/min at 1 psi]: Kv = Cv/1.15609923 (IEC 60534-2-1). */
export const kvOfCv = (cv: number): number => cv / CV_PER_KV;

/** Cv [US gal/min at 1 psi] of a Kv [m3/h at 1 bar] (IEC 60534-2-1). */
export const cvOfKv = (kv: number): number => kv * CV_PER_KV;

/** Kv [m3/h at 1 bar] of a valve that loses a head [m] above 0 at a flow [m3/s]; the inverse of `flowCoefficientValve`. */
export const kvOfLoss = ({ head, flow }: { readonly head: number; readonly flow: number }): number =>
  (SECONDS_PER_HOUR * flow) / Math.sqrt((head * RATED_DENSITY * GRAVITY) / BAR);

/**
 * Resistance of a valve of known Kv, h = (Q/Kv)^2 x 1 bar/(rho g), Q in m3/h, rho = 1000 kg/m3.
 *
 * @param valve kv [m3/h at 1 bar] above 0, opening [%]: 100, the rated state, or 0.
 * @returns 'closed' at opening 0.
 * Errors: `opening-not-known` at any other opening, since Kv says nothing of it.
 * Source: IEC 60534-2-1, incompressible turbulent flow.
 */
export function flowCoefficientValve(valve: {
  readonly kv: number;
  readonly opening: number;
}): Result<ValveState, OpeningNotKnown> {
  const { kv, opening } = valve;
  if (opening === 0) return success('closed');
  if (opening !== 100) return failed({ code: 'opening-not-known', opening });
  return success(quadraticLoss(((SECONDS_PER_HOUR / kv) ** 2 * BAR) / (RATED_DENSITY * GRAVITY)));
}
