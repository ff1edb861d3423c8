/** Finds the specific heat of fresh water and seawater at one atmosphere. */
import type { WaterState } from './water.ts';

/**
 * Specific heat at constant pressure [J/(kg K)]: cp = cp_w(t) + A(t) S + B(t) S^1.5.
 *
 * @param state temperature [degC] 0..45, salinity [g/kg] 0..60, taken as they are (no conversion to IPTS-68 or to the
 *   practical scale). Fitted to 0..35 degC and 0..40 g/kg; outside, inside the range above, it is continued.
 * Accuracy: meets the published check value to 0.001 J/(kg K) with its pressure terms left out (test/models/physics/specific-heat.test.ts).
 * Source: Millero, Perron and Desnoyers 1973, as in Fofonoff and Millard 1983, UNESCO Technical Papers in Marine Science 44
 *   (coefficients from memory, proved by check values).
 * Example: 25 degC, 35 g/kg takes 3997.68 J/(kg K).
 */
export function specificHeat({ temperature: t, salinity }: WaterState): number {
  const fresh = 4217.4 + t * (-3.720283 + t * (0.1412855 + t * (-2.654387e-3 + t * 2.093236e-5)));
  const linear = -7.643575 + t * (0.1072763 - t * 1.38385e-3);
  const threeHalves = 0.1770383 + t * (-4.07718e-3 + t * 5.148e-5);
  return fresh + salinity * (linear + threeHalves * Math.sqrt(salinity));
}
