/** Velocities at an intake screen. */
import type { IntakeScreen } from '../../../models/loop/loop.ts';

/** Open area [m2] of all unclogged screens, the end of a cylinder not counted. */
export function openArea(screen: IntakeScreen): number {
  if (screen.shape === 'box') throw new Error('boxes are not part of this solution');
  const face =
    screen.shape === 'flat' ? screen.length * screen.width : Math.PI * screen.diameter * screen.length;
  return screen.openFraction * screen.count * face;
}

interface Cylinder {
  readonly diameter: number;
  readonly length: number;
  readonly openFraction: number;
  readonly clogged: number;
}

/** Mean and peak velocity [m/s] of one cylinder drawn from one end at a flow [m3/s], and y, on which their ratio depends. */
export function cylinderVelocities(
  { diameter, length, openFraction, clogged }: Cylinder,
  flow: number,
): { mean: number; y: number; peak: number } {
  const open = openFraction * (1 - clogged) * Math.PI * diameter * length;
  const mean = flow / open;
  const y = (Math.SQRT2 * 0.6 * open) / ((Math.PI * diameter ** 2) / 4);
  return { mean, y, peak: (mean * y) / Math.tanh(y) };
}
