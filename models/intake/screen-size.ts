/** Sizes the intake screen that a flow takes: how long, and how many or how wide where length is not enough. */
import { failed, type Result, success } from '../../curves/result.ts';
import type { IntakeScreen } from '../loop/loop.ts';
import { type ScreenVelocities, SLOT_DISCHARGE_COEFFICIENT, screenVelocities } from './screen.ts';

/** A screen but for its length, and for the count that share the flow: lengths [m] and open fraction [-] above 0. */
export type ScreenToSize = { readonly openFraction: number } & (
  | { readonly shape: 'cylinder'; readonly diameter: number }
  | { readonly shape: 'flat'; readonly width: number }
  | { readonly shape: 'box'; readonly width: number; readonly height: number }
);

export interface SizedScreen {
  readonly screen: IntakeScreen;
  readonly velocities: ScreenVelocities;
  /** Diameter [m] at which one cylinder, ten diameters long, would do instead; null where one of the given diameter does. */
  readonly singleDiameter: number | null;
}

/** More screens than are counted. */
export interface TooManyScreens {
  readonly code: 'too-many-screens';
  /** The most [-]. */
  readonly limit: number;
  /** That it would take [-]. */
  readonly actual: number;
}

/** A longer cylinder draws through its root and hardly at its end. */
export const LONGEST_IN_DIAMETERS = 10;
export const SCREENS_MAX = 1000;
const ROUNDING = 1e-12;

/** y of peak = mean y coth y for each diameter of length. */
const unevennessPerDiameter = (openFraction: number): number =>
  Math.SQRT2 * SLOT_DISCHARGE_COEFFICIENT * 4 * openFraction;

/**
 * The least length, up to 10 diameters, at which mean and peak velocity of a part-clogged screen keep to a limit; failing
 * that the least count with its least length.
 *
 * A cylinder's peak = K coth y, K = sqrt2 x 0.6 x Q/(n pi D^2/4), y = sqrt2 x 0.6 x 4 openFraction (1 - clogged) L/D, so
 * that y = artanh(K/limit): however long, the peak stays above K. Flat screens and boxes draw evenly, so one is enough; a
 * box is made no shorter than it is wide.
 * @param need flow [m3/s] above 0, cloggedFraction [-] 0 up to, not including, 1, limit [m/s] above 0.
 * Fails with `too-many-screens` above a thousand.
 */
export function sizeScreen(need: {
  readonly screen: ScreenToSize;
  readonly flow: number;
  readonly cloggedFraction: number;
  readonly limit: number;
}): Result<SizedScreen, TooManyScreens> {
  const { screen, flow, cloggedFraction, limit } = need;
  if (screen.shape === 'cylinder') return sizeCylinder({ ...need, screen });
  const face = flow / (screen.openFraction * (1 - cloggedFraction) * limit);
  const sized: IntakeScreen =
    screen.shape === 'flat'
      ? { ...screen, length: face / screen.width, count: 1 }
      : { ...screen, length: boxLength(screen, face), count: 1 };
  return success(answered(sized, need, null));
}

function boxLength({ width, height }: { readonly width: number; readonly height: number }, face: number) {
  return Math.max(width, (face - 2 * width * height) / (2 * height + width));
}

function sizeCylinder(need: {
  readonly screen: Extract<ScreenToSize, { readonly shape: 'cylinder' }>;
  readonly flow: number;
  readonly cloggedFraction: number;
  readonly limit: number;
}): Result<SizedScreen, TooManyScreens> {
  const { screen, flow, cloggedFraction, limit } = need;
  const perDiameter = unevennessPerDiameter(screen.openFraction * (1 - cloggedFraction));
  const longest = LONGEST_IN_DIAMETERS * perDiameter;
  const boreVelocity = flow / ((Math.PI / 4) * screen.diameter ** 2);
  const share = (Math.SQRT2 * SLOT_DISCHARGE_COEFFICIENT * boreVelocity) / limit;
  const shareOfLongest = share / Math.tanh(longest);
  const count = Math.max(1, Math.ceil(shareOfLongest * (1 - ROUNDING)));
  if (count > SCREENS_MAX) {
    return failed({ code: 'too-many-screens', limit: SCREENS_MAX, actual: count });
  }
  const y = Math.min(longest, Math.atanh(Math.min(1, share / count)));
  const length = (y / perDiameter) * screen.diameter;
  const singleDiameter = count === 1 ? null : screen.diameter * Math.sqrt(shareOfLongest);
  return success(answered({ ...screen, length, count }, need, singleDiameter));
}

function answered(
  screen: IntakeScreen,
  { flow, cloggedFraction }: { readonly flow: number; readonly cloggedFraction: number },
  singleDiameter: number | null,
): SizedScreen {
  return { screen, velocities: screenVelocities({ screen, flow, cloggedFraction }), singleDiameter };
}
