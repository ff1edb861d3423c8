/** Follows a free round jet along its axis: how fast, how far, from what flow. */

/**
 * Velocity-decay constant B [-] of a free round jet; measured 6.11 at Re 19400 (Abdel-Rahman, Al-Fahed and Chakroun 1996,
 * Mechanics Research Communications 23(3), who find it falling to 1.35 at Re 1430); others lie in 5.8..6.5 (from memory).
 */
export const JET_DECAY = 6;

const LONGEST_REACH_IN_DIAMETERS = 70;
const LEAST_TURBULENT_REYNOLDS = 3000;
const WIDTH_PER_DISTANCE = 0.2;

/**
 * Velocity [m/s] of a jet on its axis: u = u0 to x = B d, beyond it u = u0 B d/x.
 *
 * @param jet distance x [m] of 0 or more from the nozzle; exitVelocity u0 [m/s]; nozzleDiameter d [m] above 0.
 * Source: the self-similar round jet, for instance Rajaratnam 1976, Turbulent Jets.
 */
export function axisVelocity(jet: {
  readonly distance: number;
  readonly exitVelocity: number;
  readonly nozzleDiameter: number;
}): number {
  return jet.exitVelocity / decayAt(jet);
}

/**
 * Distance [m] to which the axis of a jet keeps a velocity v: B d u0/v, 0 where the nozzle itself is slower.
 *
 * @param jet velocity v [m/s] above 0; exitVelocity u0 [m/s]; nozzleDiameter d [m] above 0.
 */
export function reachOf(jet: {
  readonly velocity: number;
  readonly exitVelocity: number;
  readonly nozzleDiameter: number;
}): number {
  if (jet.exitVelocity < jet.velocity) return 0;
  return (JET_DECAY * jet.nozzleDiameter * jet.exitVelocity) / jet.velocity;
}

/**
 * Total flow [m3/s] of equal nozzles that each keep a velocity v at a distance x: Q = n (pi d^2/4) v max(1, x/(B d)).
 *
 * @param jet distance x [m] of 0 or more; velocity v [m/s] above 0; nozzleDiameter d [m] above 0; nozzleCount n [-]
 *   of 1 or more.
 */
export function flowForReach(jet: {
  readonly distance: number;
  readonly velocity: number;
  readonly nozzleDiameter: number;
  readonly nozzleCount: number;
}): number {
  const area = (Math.PI / 4) * jet.nozzleDiameter ** 2;
  return jet.nozzleCount * area * jet.velocity * decayAt(jet);
}

/** Where the free-jet formula is stretched. */
export interface JetCautions {
  readonly beyond70d: boolean;
  readonly reynoldsBelow3000: boolean;
  readonly touchesWalls: boolean;
}

/**
 * Which limits of the formula a reach exceeds: 70 nozzle diameters, a Reynolds number of 3000, or walls that the jet
 * touches.
 *
 * The jet is 0.2 x wide at a distance x, which is compared with half the tank's width and depth.
 * @param jet distance x [m]; exitVelocity [m/s]; nozzleDiameter [m] above 0; kinematicViscosity [m2/s] above 0; width
 *   and depth of the tank [m] where known.
 */
export function jetCautions(jet: {
  readonly distance: number;
  readonly exitVelocity: number;
  readonly nozzleDiameter: number;
  readonly kinematicViscosity: number;
  readonly tank?: { readonly width?: number | undefined; readonly depth?: number | undefined } | undefined;
}): JetCautions {
  const { distance, nozzleDiameter } = jet;
  const room = Math.min(
    jet.tank?.width ?? Number.POSITIVE_INFINITY,
    jet.tank?.depth ?? Number.POSITIVE_INFINITY,
  );
  return {
    beyond70d: distance > LONGEST_REACH_IN_DIAMETERS * nozzleDiameter,
    reynoldsBelow3000:
      (jet.exitVelocity * nozzleDiameter) / jet.kinematicViscosity < LEAST_TURBULENT_REYNOLDS,
    touchesWalls: WIDTH_PER_DISTANCE * distance > room / 2,
  };
}

function decayAt({
  distance,
  nozzleDiameter,
}: {
  readonly distance: number;
  readonly nozzleDiameter: number;
}) {
  return Math.max(1, distance / (JET_DECAY * nozzleDiameter));
}
