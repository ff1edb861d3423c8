/** Finds what a pump at its duty does to the temperature of the tank, and what that costs a year. */
import type { DutyFigures } from '../duty/duty-point.ts';
import { dailyRise, heatUse, meanHeat, pumpHeat } from '../duty/heat.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { specificHeat } from '../physics/specific-heat.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import type { Running } from './options.ts';

/** What a duty does to the temperature of a tank. */
export interface DutyHeat {
  /** Heat into the water while the pump runs [W]. */
  readonly power: number;
  /** Whether 0.8 was taken for the motor's efficiency. */
  readonly motorEfficiencyAssumed: boolean;
  /** Warming by the day's mean heat, before losses to the room [K/day]; null without a tank volume. */
  readonly dailyRise: number | null;
  /** Electricity of chiller or heater [kWh/year], negative where it is saved; null where not asked for. */
  readonly annualEnergy: number | null;
  /** Of that electricity [money/year]; null where not asked for, or without a price. */
  readonly annualCost: number | null;
}

/**
 * What a duty of some power [W] does to the temperature of the tank of its loop, and what that costs a year at a
 * price [money/kWh].
 */
export function dutyHeat(
  {
    loop: { entered: loop, water },
    pump: { entered: pump },
  }: { readonly loop: CompiledLoop; readonly pump: PumpModel },
  { power, count }: Pick<DutyFigures, 'power' | 'count'>,
  { heat: terms, hoursPerDay, price }: Pick<Running, 'heat' | 'hoursPerDay' | 'price'>,
): DutyHeat {
  const { mounting, motorEfficiency } = pump;
  const drawn = { power, standbyPower: count * pump.standbyPower, mounting, motorEfficiency };
  const heat = meanHeat(drawn, hoursPerDay);
  const volume = loop.tank?.volume;
  const into = { heat, density: water.density, specificHeat: specificHeat(loop.water) };
  const use = terms === undefined ? null : heatUse(heat, { ...terms, price });
  return {
    power: pumpHeat(drawn),
    motorEfficiencyAssumed: mounting !== 'submerged' && motorEfficiency === undefined,
    dailyRise: volume === undefined ? null : dailyRise({ ...into, volume }),
    annualEnergy: use?.annualEnergy ?? null,
    annualCost: use?.annualCost ?? null,
  };
}
