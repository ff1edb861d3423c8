/** Finds how fast water passes through the openings of an intake screen. */
import type { IntakeScreen } from '../loop/loop.ts';

/** Through-slot velocities. */
export interface ScreenVelocities {
  /** Over the open area [m/s]. */
  readonly mean: number;
  /** Where the screen draws most [m/s]. */
  readonly peak: number;
}

export const SLOT_DISCHARGE_COEFFICIENT = 0.6;
/** Below this y coth y is 1 + y^2/3 to rounding. */
const SMALL = 1e-4;

/**
 * Mean and peak through-slot velocity of a screen that draws a flow.
 *
 * mean = Q/(A_open (1 - clogged)), A_open = openFraction x count x (pi D L, the end not counted; width x length; of a box
 * 2 (width + length) height + width x length, the side it is fixed on not counted).
 * A cylinder drawn from one end draws most at its root: peak = mean y coth y,
 * y = sqrt2 x 0.6 x (one screen's open area that clogging leaves)/(pi D^2/4): openings that are clogged evenly draw more
 * evenly. Flat screens and boxes are taken to draw evenly.
 * @param draw flow [m3/s] at or above 0, cloggedFraction [-] 0 up to, not including, 1; the screen's lengths, open fraction, count above 0.
 */
export function screenVelocities(draw: {
  readonly screen: IntakeScreen;
  readonly flow: number;
  readonly cloggedFraction: number;
}): ScreenVelocities {
  const { screen, flow, cloggedFraction } = draw;
  const openArea = screen.openFraction * (1 - cloggedFraction) * grossArea(screen);
  const mean = flow / (openArea * screen.count);
  return { mean, peak: mean * unevenness(screen, openArea) };
}

/** Gross area [m2] of one screen. */
function grossArea(screen: IntakeScreen): number {
  switch (screen.shape) {
    case 'cylinder':
      return Math.PI * screen.diameter * screen.length;
    case 'flat':
      return screen.width * screen.length;
    case 'box':
      return 2 * (screen.width + screen.length) * screen.height + screen.width * screen.length;
  }
}

function unevenness(screen: IntakeScreen, openArea: number): number {
  if (screen.shape !== 'cylinder') return 1;
  const boreArea = (Math.PI / 4) * screen.diameter ** 2;
  const y = (Math.SQRT2 * SLOT_DISCHARGE_COEFFICIENT * openArea) / boreArea;
  return y < SMALL ? 1 + (y * y) / 3 : y / Math.tanh(y);
}
