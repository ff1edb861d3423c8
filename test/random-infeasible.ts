/** Invented loops and pumps whose limits leave few settings, or none. */
import type { StatedLimits } from '../models/loop/limits.ts';
import type { Branch } from '../models/loop/loop.ts';
import type { Pump } from '../models/pump/pump.ts';
import { type Draw, drawsFrom, mulberry32 } from './random/draw.ts';
import { hasRequirement } from './random/wishes.ts';
import { type RandomCase, randomCase } from './random-loop.ts';

/** Apart from the seeds of the loops themselves. */
const SEEDS_APART = 7_919;
/** NPSH is entered beyond all flows, so that it is read between its points alone. */
const FAR = 20;

function withMaxima(branch: Branch, draw: Draw): Branch {
  const { outlet, branches } = branch;
  const most = (outlet?.requiredFlow ?? 0) * draw.between(1, 2.5);
  const limited = outlet !== undefined && most > 0 && draw.chance(0.4);
  return {
    ...branch,
    ...(limited ? { outlet: { ...outlet, maximumFlow: most } } : {}),
    ...(branches === undefined ? {} : { branches: branches.map((child) => withMaxima(child, draw)) }),
  };
}

/** Outlets under water at unlike levels, of which the higher, where nothing is required of them, feed the lower ones. */
function withLevels(branch: Branch, draw: Draw): Branch {
  const { outlet, branches } = branch;
  const staticHead = draw.between(-0.8, 0.8);
  const dropped = staticHead > 0 ? { requiredFlow: undefined } : {};
  return {
    ...branch,
    ...(outlet && { outlet: { ...outlet, ...dropped, staticHead, exit: 'submerged' as const } }),
    ...(branches && { branches: branches.map((child) => withLevels(child, draw)) }),
  };
}

function limitedPump(pump: Pump, draw: Draw): Pump {
  const largest = Math.max(...pump.headPoints.map(({ flow }) => flow));
  const most = draw.between(0.2, 1.1) * largest;
  const head = draw.between(0.5, 6);
  const mistyped = draw.chance(0.15) ? 0.2 : 1;
  return {
    ...pump,
    powerPoints: pump.powerPoints.map((point) => ({
      ...point,
      power: pump.standbyPower + (point.power - pump.standbyPower) * mistyped,
    })),
    ...(draw.chance(0.6)
      ? { flowLimits: { min: draw.between(0, 0.8) * most, max: most } }
      : { flowLimits: undefined }),
    ...(draw.chance(0.4)
      ? {
          npshPoints: [
            { flow: 0, head },
            { flow: FAR * largest, head: head * (1 + FAR * draw.between(0, 2)) },
          ],
        }
      : {}),
  };
}

export interface InfeasibleCase extends RandomCase {
  /** Times what the loop requires [-]. */
  readonly factor: number;
  readonly limits: StatedLimits;
  readonly draw: Draw;
}

const randomLimits = (draw: Draw): StatedLimits => ({
  ...(draw.chance(0.3) ? { allowReverseFlow: draw.chance(0.7) } : {}),
  ...(draw.chance(0.2) ? { throughSlotVelocity: draw.pick([null, draw.between(0.05, 0.4)]) } : {}),
  ...(draw.chance(0.2) ? { cloggedFraction: draw.between(0, 0.8) } : {}),
  ...(draw.chance(0.2) ? { maximumEfficiency: draw.between(0.2, 0.7) } : {}),
  ...(draw.chance(0.2) ? { allowExtrapolation: true } : {}),
});

/** The same question for the same seed; most of them have no feasible setting. */
export function tightCase(seed: number): InfeasibleCase {
  const { loop, pump, count } = randomCase({ seed, everyOutlet: false });
  const draw = drawsFrom(mulberry32(seed + SEEDS_APART));
  const other = drawsFrom(mulberry32(seed + 2 * SEEDS_APART));
  const levels = other.chance(0.3) ? withLevels(loop.discharge, other) : loop.discharge;
  const discharge = withMaxima(hasRequirement(levels) ? levels : loop.discharge, draw);
  const pumpElevation = draw.between(-1, 6);
  return {
    ...{ loop: { ...loop, discharge, pumpElevation }, pump: limitedPump(pump, draw), count },
    ...{ factor: draw.between(0.4, 3), limits: randomLimits(other), draw },
  };
}
