/** Finds the energy and cost of a year at one setting. */

import { DAYS_PER_YEAR, HOURS_PER_DAY } from '../calendar/time-factors.ts';
import { WATTS_PER_KILOWATT } from '../physics/unit-factors.ts';

/**
 * Energy of a year [kWh] = 365 (h P + (24 - h) P_standby)/1000, and its cost at a price per kWh.
 *
 * @param use power P [W] at the setting, standby included; standbyPower [W]; hoursPerDay h [h] 0..24; price
 *   [money/kWh], null where none is known.
 * @returns annualEnergy [kWh]; annualCost [money], null without a price.
 */
export function annualUse({
  power,
  standbyPower,
  hoursPerDay,
  price,
}: {
  readonly power: number;
  readonly standbyPower: number;
  readonly hoursPerDay: number;
  readonly price: number | null;
}): { readonly annualEnergy: number; readonly annualCost: number | null } {
  const wattHoursPerDay = hoursPerDay * power + (HOURS_PER_DAY - hoursPerDay) * standbyPower;
  const annualEnergy = (DAYS_PER_YEAR * wattHoursPerDay) / WATTS_PER_KILOWATT;
  return { annualEnergy, annualCost: price === null ? null : annualEnergy * price };
}
