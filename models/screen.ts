/** How fast water passes through the openings of an intake screen. */
import type { IntakeScreen } from './loop.ts';

/** Through-slot velocities [m/s]: over the open area, and where the screen draws most. */
export interface ScreenVelocities {
  readonly mean: number;
  readonly peak: number;
}

const DISCHARGE_COEFFICIENT = 0.6;
/** Below this y coth y is 1 + y^2/3 to rounding. */
const SMALL = 1e-4;

/**
 * Mean and peak through-slot velocity of a screen that draws a flow.
 *
 * mean = Q/(A_open (1 - clogged)), A_open = openFraction x count x (pi D L, the end not counted, or width x length).
 * A cylinder drawn from one end draws most at its root: peak = mean y coth y,
 * y = sqrt2 x 0.6 x (one screen's unclogged open area)/(pi D^2/4); a flat screen draws evenly.
 * @param draw flow [m3/s] at or above 0, cloggedFraction [-] 0 up to, not including, 1; the screen's lengths, open fraction, count above 0.
 */
export function screenVelocities(draw: {
  readonly screen: IntakeScreen;
  readonly flow: number;
  readonly cloggedFraction: number;
}): ScreenVelocities {
  const { screen, flow, cloggedFraction } = draw;
  const openArea = screen.openFraction * grossArea(screen);
  const mean = flow / (openArea * screen.count * (1 - cloggedFraction));
  return { mean, peak: mean * unevenness(screen, openArea) };
}

/** Gross area [m2] of one screen. */
function grossArea(screen: IntakeScreen): number {
  return screen.shape === 'flat' ? screen.width * screen.length : Math.PI * screen.diameter * screen.length;
}

function unevenness(screen: IntakeScreen, openArea: number): number {
  if (screen.shape === 'flat') return 1;
  const boreArea = (Math.PI / 4) * screen.diameter ** 2;
  const y = (Math.SQRT2 * DISCHARGE_COEFFICIENT * openArea) / boreArea;
  return y < SMALL ? 1 + (y * y) / 3 : y / Math.tanh(y);
}
