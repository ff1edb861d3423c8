/** Invented loops and pumps whose limits leave few settings, or none. */
import type { Branch } from '../models/loop/loop.ts';
import type { Pump } from '../models/pump/pump.ts';
import { type Draw, drawsFrom, mulberry32 } from './random/draw.ts';
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
  readonly draw: Draw;
}

/** The same question for the same seed; most of them have no feasible setting. */
export function tightCase(seed: number): InfeasibleCase {
  const { loop, pump, count } = randomCase({ seed, everyOutlet: false });
  const draw = drawsFrom(mulberry32(seed + SEEDS_APART));
  const discharge = withMaxima(loop.discharge, draw);
  const pumpElevation = draw.between(-1, 6);
  return {
    ...{ loop: { ...loop, discharge, pumpElevation }, pump: limitedPump(pump, draw), count },
    ...{ factor: draw.between(0.4, 3), draw },
  };
}
