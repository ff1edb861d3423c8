/** A tree of runs whose sizes are all to be chosen, and pumps of about its size. */
import type { DesignBranch } from '../../models/designs/design-loop.ts';
import type { DesignQuestion } from '../../models/designs/search-designs.ts';
import { DEFAULT_LIMITS } from '../../models/loop/limits.ts';
import { fitPump } from '../../models/pump/pump-model.ts';
import { type Draw, drawsFrom, mulberry32 } from '../random/draw.ts';
import { pumpOfFigures } from '../random/pump-figures.ts';

const SEED = 20260131;
const LITRE_PER_HOUR = 1 / 3.6e6;
const CENTS = 100;
const DECIMETRES = 10;

export interface Extent {
  /** An odd number: each split has two branches. */
  readonly runs: number;
  readonly sizes: number;
  readonly pumps: number;
}

const rounded = (value: number, parts: number): number => Math.round(value * parts) / parts;

/** Random where a run splits, 200 to 800 L/h an outlet. */
function tree(draw: Draw, runs: number, bores: readonly number[]): DesignBranch {
  const run = [
    {
      pipes: bores.map((insideDiameter) => ({ insideDiameter })),
      length: rounded(draw.between(0.5, 8), DECIMETRES),
    },
    { lossCoefficient: draw.between(0.5, 4) },
  ];
  if (runs < 3) {
    const name = `outlet ${draw.whole(0, 1e9)}`;
    return { run, outlet: { name, requiredFlow: draw.between(200, 800) * LITRE_PER_HOUR } };
  }
  const left = 1 + 2 * Math.floor(draw.between(0, (runs - 2) / 2));
  return { run, branches: [tree(draw, left, bores), tree(draw, runs - 1 - left, bores)] };
}

const requiredOf = ({ outlet, branches = [] }: DesignBranch): number =>
  (outlet?.requiredFlow ?? 0) + branches.reduce((sum, child) => sum + requiredOf(child), 0);

function pump(draw: Draw, flow: number, place: number) {
  const shutoff = draw.between(4, 20);
  const largest = flow * draw.between(1.1, 3);
  const figures = {
    ...{ largest, shutoff, head: 0.4 * shutoff, standby: 3, price: draw.whole(200, 900), lifeYears: 8 },
    ...{ power: 9800 * largest * shutoff * draw.between(0.8, 1.4), least: null, npsh: null, count: 1 },
    settings: { min: 30, max: 100, step: 1 },
  };
  const entered = pumpOfFigures(`pump ${place}`, figures);
  const fit = fitPump(entered);
  if (!fit.ok) throw new Error(`${entered.name} has no curves: ${fit.failure.code}`);
  return { pump: { entered, fit: fit.value }, count: 1 };
}

/** The same question for the same extent. */
export function runsToSize({ runs, sizes, pumps }: Extent): DesignQuestion {
  const draw = drawsFrom(mulberry32(SEED));
  const bores = Array.from({ length: sizes }, (_, place) => 0.016 * (90 / 16) ** (place / (sizes - 1)));
  const discharge = tree(draw, runs, bores);
  const flow = requiredOf(discharge);
  return {
    loop: {
      ...{ name: 'runs to size', water: { temperature: 25, salinity: 35 }, pumpElevation: 0, staticHead: 0 },
      ...{ frictionMultiplier: 1, suction: [{ pipe: { insideDiameter: 0.09 }, length: 1 }], discharge },
    },
    prices: bores.map((insideDiameter) => ({
      pipe: { insideDiameter },
      price: rounded(900 * insideDiameter ** 1.6 * draw.between(0.9, 1.1), CENTS),
    })),
    candidates: Array.from({ length: pumps }, (_, place) => pump(draw, flow, place)),
    limits: DEFAULT_LIMITS,
    ...{ pipeVelocity: null, trimPrice: 12, price: 0.25, hoursPerDay: 24, elevation: 0 },
    lifeCycle: {
      ...{ years: 10, discountRate: 0.04, inflation: 0.02, energyInflation: 0.03 },
      ...{ labourRate: 30, minutesPerFailure: 60 },
    },
  };
}
