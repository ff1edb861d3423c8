/** Finds the pressure that builds up where running water is stopped at once. */
import type { PipeSize } from './pipe-sizes.ts';

/** Bulk modulus of water [Pa]. */
const WATER_MODULUS = 2.07e9;
/** Young's modulus of unplasticised PVC [Pa], 400 000 psi. */
const WALL_MODULUS = 2.76e9;

/**
 * The speed [m/s] of a pressure wave in a standard pipe, a = sqrt(K/rho)/sqrt(1 + K D/(E e)), D its mean bore and
 * e = (OD - D)/2 its mean wall [m], K = 2.07 GPa, E = 2.76 GPa.
 *
 * @param density rho of the water [kg/m3], above 0.
 * Source: Korteweg; both moduli as design handbooks of plastic pipe give them.
 */
export function waveSpeed({ outsideDiameter, insideDiameter }: PipeSize, density: number): number {
  const wall = (outsideDiameter - insideDiameter) / 2;
  return (
    Math.sqrt(WATER_MODULUS / density) /
    Math.sqrt(1 + (WATER_MODULUS * insideDiameter) / (WALL_MODULUS * wall))
  );
}

/**
 * The rise of pressure [Pa] where a valve stops at once what runs in a standard pipe, rho a v: the most that a closing
 * valve can cause, since one that closes slowly causes less.
 *
 * @param stopped density rho of the water [kg/m3]; velocity v before [m/s], 0 or more.
 * Source: Joukowsky.
 */
export function surgePressure(
  size: PipeSize,
  { density, velocity }: { readonly density: number; readonly velocity: number },
): number {
  return density * waveSpeed(size, density) * velocity;
}
