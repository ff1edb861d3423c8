/** Finds what a pump's power does to the temperature of the water. */

import { DAYS_PER_YEAR, HOURS_PER_DAY, SECONDS_PER_DAY } from '../calendar/time-factors.ts';
import { WATTS_PER_KILOWATT } from '../physics/unit-factors.ts';

/** What a dry pump hands on to the water where no motor efficiency is known. */
export const ASSUMED_MOTOR_EFFICIENCY = 0.8;

/** How water is kept at its temperature: `cooling` takes the pump's heat away, `heating` is spared what the pump gives. */
export interface HeatTerms {
  /** Coefficient of performance of chiller or heater: heat moved over electricity [-], above 0. */
  readonly cop: number;
  readonly mode: 'cooling' | 'heating';
  /** Whether its cost counts in the ranking. */
  readonly inRanking: boolean;
}

/** Powers [W] of all pumps together, `power` with standby. */
interface Drawn {
  readonly power: number;
  readonly standbyPower: number;
  readonly mounting: 'dry' | 'submerged' | undefined;
  readonly motorEfficiency: number | undefined;
}

/**
 * Heat into the water while the pump runs [W]: all of the power for a submerged pump; (power - standby)
 * motorEfficiency for a dry one, which a pump is taken for where its mounting is not known.
 *
 * In a closed loop friction turns the shaft power into heat wholly.
 * @param drawn power and standbyPower [W] of all pumps together; motorEfficiency [-] 0..1, 0.8 where it is not known.
 */
export function pumpHeat({ power, standbyPower, mounting, motorEfficiency }: Drawn): number {
  if (mounting === 'submerged') return power;
  return (power - standbyPower) * (motorEfficiency ?? ASSUMED_MOTOR_EFFICIENCY);
}

/**
 * Heat into the water on average over the day [W]; while it is stopped a submerged pump warms it by its standby
 * power.
 *
 * @param drawn as of `pumpHeat` [W].
 * @param hoursPerDay [h] 0..24 that it runs.
 */
export function meanHeat(drawn: Drawn, hoursPerDay: number): number {
  const resting = drawn.mounting === 'submerged' ? drawn.standbyPower : 0;
  return (hoursPerDay * pumpHeat(drawn) + (HOURS_PER_DAY - hoursPerDay) * resting) / HOURS_PER_DAY;
}

/**
 * Warming [K/day] before losses to the room: heat x 86400/(rho cp V).
 *
 * @param into heat [W]; density rho [kg/m3]; specificHeat cp [J/(kg K)]; volume V [m3], all but the heat above 0.
 */
export function dailyRise(into: {
  readonly heat: number;
  readonly density: number;
  readonly specificHeat: number;
  readonly volume: number;
}): number {
  return (into.heat * SECONDS_PER_DAY) / (into.density * into.specificHeat * into.volume);
}

/**
 * Electricity of a year that a mean heat costs a chiller or, negative, saves a heater: heat x 8760/(1000 cop).
 *
 * @param heat mean over the year [W].
 * @param terms cop [-] above 0; mode; price [money/kWh], null where none is known.
 * @returns annualEnergy [kWh], negative where heating is saved; annualCost [money], null without a price.
 */
export function heatUse(
  heat: number,
  { cop, mode, price }: Pick<HeatTerms, 'cop' | 'mode'> & { readonly price: number | null },
): { readonly annualEnergy: number; readonly annualCost: number | null } {
  const moved = (heat * DAYS_PER_YEAR * HOURS_PER_DAY) / WATTS_PER_KILOWATT / cop;
  const annualEnergy = mode === 'cooling' ? moved : -moved;
  return { annualEnergy, annualCost: price === null ? null : annualEnergy * price };
}
