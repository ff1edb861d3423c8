/** A thousand invented pumps of all sizes: too weak, right, too strong, badly measured, with narrow limits. */
import type { Pump } from '../../models/pump/pump.ts';
import { fitPump, type PumpModel } from '../../models/pump/pump-model.ts';
import { type Draw, drawsFrom, mulberry32 } from '../random/draw.ts';

const PUMPS = 1000;
const SEED = 20260131;
const CUBIC_METRE_PER_HOUR = 1 / 3600;
const WEIGHT_OF_WATER = 10_000;

function inventedPump(draw: Draw, place: number): Pump {
  const shutoff = draw.scaled(2, 14);
  const runOut = draw.scaled(5, 40) * CUBIC_METRE_PER_HOUR;
  const straightness = draw.between(0, 0.4);
  const headAt = (x: number) => shutoff * (1 - straightness * x - (1 - straightness) * x ** 2);
  // A few claim more than any pump gives.
  const bestEfficiency = draw.chance(0.05) ? draw.between(0.9, 1.2) : draw.between(0.25, 0.6);
  const full = (WEIGHT_OF_WATER * 0.6 * runOut * headAt(0.6)) / bestEfficiency;
  const powerAt = (setting: number, x: number) => 2 + full * (0.6 + 0.65 * x) * (setting / 100) ** 3;
  // Some were measured near shutoff only, some have limits that leave little.
  const reach = draw.chance(0.04) ? draw.between(0.2, 0.5) : draw.between(0.8, 0.95);
  const most = draw.chance(0.08) ? draw.between(0.3, 0.6) : draw.between(0.8, 1);
  const flowLimits = draw.chance(0.5) ? { flowLimits: { min: 0.1 * runOut, max: most * runOut } } : {};
  return {
    name: `Invented ${place}`,
    headPoints: [0, 0.2, 0.4, 0.6, 0.8, 1].map((share) => ({
      flow: share * reach * runOut,
      head: headAt(share * reach) * (1 + draw.between(-0.005, 0.005)),
      setting: 100,
    })),
    powerPoints: [
      ...[0.2, 0.5, 0.8].map((x) => ({ setting: 100, power: powerAt(100, x), flow: x * runOut })),
      { setting: 60, power: powerAt(60, 0.5), flow: 0.3 * runOut },
    ],
    settings: { min: 30, max: 100, step: draw.pick([1, 1, 1, 2, 5]) },
    standbyPower: 2,
    ...flowLimits,
  };
}

/** The same pumps each time, their curves fitted; all curves fall. */
export function thousandPumps(): readonly PumpModel[] {
  const draw = drawsFrom(mulberry32(SEED));
  return Array.from({ length: PUMPS }, (_, place) => {
    const entered = inventedPump(draw, place);
    const fit = fitPump(entered);
    if (!fit.ok) throw new Error(`${entered.name} has no curves: ${fit.failure.code}`);
    return { entered, fit: fit.value };
  });
}
