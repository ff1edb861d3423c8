/** Pressure of water hammer in plastic pipe, what the pipe is rated for, and how near a valve is to cavitating. */

const WATER_BULK = 2.07e9;
/** Pa; 400 000 psi, PVC. */
const PIPE_MODULUS = 2.76e9;
const DESIGN_STRESS = 13.79e6;

/** Lengths in m. */
interface Bore {
  readonly outside: number;
  readonly bore: number;
}

/** Speed [m/s] of a pressure wave (Korteweg); the wall is half of outside diameter less bore. */
export function waveSpeed({ outside, bore }: Bore, density: number): number {
  const wall = (outside - bore) / 2;
  return Math.sqrt(WATER_BULK / density / (1 + (WATER_BULK * bore) / (PIPE_MODULUS * wall)));
}

/** Pressure [Pa] that stopping a velocity [m/s] at once adds (Joukowsky). */
export const hammer = (pipe: Bore, density: number, velocity: number): number =>
  density * waveSpeed(pipe, density) * velocity;

/** Rating [Pa] of a PVC pipe by its outside diameter and least wall, in one unit (form of ASTM D2241). */
export const pressureRating = ({ outside, leastWall }: { outside: number; leastWall: number }): number =>
  (2 * DESIGN_STRESS * leastWall) / (outside - leastWall);

/** Pressures in Pa: before the valve (absolute), of vapour, and the drop across it. */
export const cavitationIndex = (pressures: { before: number; vapour: number; drop: number }): number =>
  (pressures.before - pressures.vapour) / pressures.drop;
