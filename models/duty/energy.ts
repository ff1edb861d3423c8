/** Energy and cost of a year at one setting. */

import { DAYS_PER_YEAR, HOURS_PER_DAY } from '../calendar/time-factors.ts';
import { WATTS_PER_KILOWATT } from '../physics/unit-factors.ts';

/**
 * kWh a year = 365 (h P + (24 - h) P_standby)/1000, and its cost at a price per kWh.
 *
 * @param use power [W] at the setting, standby included; standbyPower [W]; hoursPerDay 0..24; price per kWh or null.
 * @returns annualEnergy [kWh]; annualCost in the price's currency, null without a price.
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
