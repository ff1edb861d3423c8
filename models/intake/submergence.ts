/** Finds the depth of water that keeps a bare intake from drawing air. */
import { GRAVITY } from '../physics/gravity.ts';

/**
 * Minimum submergence of a bare intake, S = D (1 + 2.3 V/sqrt(g D)) [m].
 *
 * @param intake flow [m3/s] of 0 or more; diameter, its bore D [m] above 0.
 * Source: Hecker 1987, adopted by ANSI/HI 9.8 (from memory).
 */
export function minimumSubmergence({
  flow,
  diameter,
}: {
  readonly flow: number;
  readonly diameter: number;
}): number {
  const velocity = (4 * flow) / (Math.PI * diameter ** 2);
  return diameter * (1 + (2.3 * velocity) / Math.sqrt(GRAVITY * diameter));
}
