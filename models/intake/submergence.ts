/** Depth of water that keeps a bare intake from sucking air. */
import { GRAVITY } from '../physics/gravity.ts';

/**
 * Minimum submergence S = D (1 + 2.3 V/sqrt(g D)) [m] above a bare intake of bore D [m] above 0 at a flow [m3/s].
 *
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
