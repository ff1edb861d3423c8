/** Finds the pressure of the standard atmosphere. */
import { GRAVITY } from './gravity.ts';

const SEA_LEVEL_PRESSURE = 101325;
const SEA_LEVEL_TEMPERATURE = 288.15;
const LAPSE_RATE = 0.0065;
const EARTH_RADIUS = 6356766;
/** g0 M/(R lapse rate) with the standard's own constants. */
const EXPONENT = (GRAVITY * 0.0289644) / (8.31432 * LAPSE_RATE);

export const LOWEST_ELEVATION = -500;
export const HIGHEST_ELEVATION = 11000;

/**
 * Pressure [Pa] at a geometric elevation z, p = p0 (1 - L H/T0)^(g0 M/(R L)), H = r z/(r + z).
 *
 * @param elevation [m] -500..11000.
 * Errors: throws a RangeError outside, where the formula no longer holds.
 * Source: US Standard Atmosphere 1976, its lowest layer.
 */
export function atmosphericPressure(elevation: number): number {
  if (!(elevation >= LOWEST_ELEVATION && elevation <= HIGHEST_ELEVATION)) {
    throw new RangeError(`elevation ${elevation} m is outside ${LOWEST_ELEVATION}..${HIGHEST_ELEVATION} m`);
  }
  const geopotential = (EARTH_RADIUS * elevation) / (EARTH_RADIUS + elevation);
  return SEA_LEVEL_PRESSURE * (1 - (LAPSE_RATE * geopotential) / SEA_LEVEL_TEMPERATURE) ** EXPONENT;
}
