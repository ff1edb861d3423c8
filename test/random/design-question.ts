/** Invented loops whose sizes are to be chosen, small enough for every combination of sizes to be tried. */
import type { DesignBranch, DesignElement, DesignLoop, Pipe } from '../../models/designs/design-loop.ts';
import type { PipePrice } from '../../models/designs/pipe-price.ts';
import type { Outlet, RunElement } from '../../models/loop/loop.ts';
import { type Draw, drawsFrom, mulberry32 } from './draw.ts';
import { type PumpFigures, randomPumpFigures } from './pump-figures.ts';

export interface RandomDesign {
  readonly loop: DesignLoop;
  readonly prices: readonly PipePrice[];
  readonly pumps: readonly PumpFigures[];
  /** [m/s] */
  readonly pipeVelocity: number | null;
  readonly enforceNpsh: boolean;
  readonly trimPrice: number;
  readonly years: number;
  readonly discountRate: number;
  readonly inflation: number;
  readonly energyInflation: number;
  readonly price: number;
  readonly hoursPerDay: number;
}

const LITRE_PER_HOUR = 1 / 3.6e6;
const COMBINATIONS_MOST = 300;
const BORES = [0.0155, 0.0195, 0.0254, 0.0318, 0.0402, 0.0516];
const PIPES: readonly Pipe[] = BORES.map((insideDiameter) => ({ insideDiameter }));

interface Style {
  readonly draw: Draw;
  /** How many combinations of sizes are still to be used up. */
  combinations: number;
  outlets: number;
}

function pipe(style: Style): DesignElement {
  const { draw } = style;
  const length = Math.round(draw.between(3, 80)) / 10;
  const sizes = draw.whole(2, 4);
  if (style.combinations < sizes || draw.chance(0.15)) return { pipe: draw.pick(PIPES.slice(2)), length };
  style.combinations /= sizes;
  const first = draw.whole(0, PIPES.length - sizes);
  const pipes = PIPES.slice(first, first + sizes);
  return { pipes: draw.chance(0.3) ? pipes.toReversed() : pipes, length };
}

function other({ draw }: Style): RunElement {
  const diameter = draw.chance(0.2) ? { diameter: draw.pick(BORES.slice(1)) } : {};
  switch (draw.whole(0, 5)) {
    case 0:
      return { fitting: draw.pick(['elbow-90', 'elbow-45']), count: draw.whole(1, 3), ...diameter };
    case 1:
      return { valve: draw.pick(['ball', 'gate', 'check-swing']), ...diameter };
    case 2:
      return { equivalentLength: draw.between(0.2, 2), ...diameter };
    case 3:
      return { loss: { head: draw.between(0.01, 0.1), flow: 2000 * LITRE_PER_HOUR } };
    case 4:
      return { lossCoefficient: draw.between(0.2, 3), ...diameter, boreChange: draw.chance(0.5) };
    default:
      return { lossCoefficient: draw.between(0.2, 3), ...diameter };
  }
}

/** Elements before a pipe go with the pipe upstream. */
function run(style: Style, pipes: number): readonly DesignElement[] {
  const { draw } = style;
  const elements: DesignElement[] = draw.chance(0.35) ? [other(style)] : [];
  for (let count = 0; count < pipes; count += 1) {
    elements.push(pipe(style));
    if (draw.chance(0.6)) elements.push(other(style));
  }
  return elements;
}

function outlet(style: Style, closable: boolean): Outlet {
  const { draw } = style;
  style.outlets += 1;
  const requiredFlow = closable && draw.chance(0.1) ? 0 : draw.between(400, 1800) * LITRE_PER_HOUR;
  return {
    ...{ name: `outlet ${style.outlets}`, requiredFlow },
    ...(draw.chance(0.4) ? { nozzleDiameter: draw.between(0.012, 0.02) } : {}),
    ...(draw.chance(0.3) ? { staticHead: draw.between(-0.2, 0.5) } : {}),
  };
}

function branch(style: Style, levels: number, closable: boolean): DesignBranch {
  const { draw } = style;
  const own = run(style, draw.pick([0, 1, 1, 2, 2]));
  if (levels === 0 || draw.chance(0.3)) return { run: own, outlet: outlet(style, closable) };
  const split = draw.chance(0.4) ? { split: 'tee-90' as const } : {};
  const branches = Array.from({ length: draw.whole(2, 3) }, (_, place) =>
    branch(style, levels - 1, closable && place > 0),
  );
  return { run: own, branches, ...split };
}

const requiredOf = ({ outlet: end, branches = [] }: DesignBranch): number =>
  (end?.requiredFlow ?? 0) + branches.reduce((sum, child) => sum + requiredOf(child), 0);

/** The first outlet of all always requires a flow; other ones may be closed. */
export function randomDesign(seed: number): RandomDesign {
  const draw = drawsFrom(mulberry32(seed));
  const style: Style = { draw, combinations: COMBINATIONS_MOST, outlets: 0 };
  const suction = [...run(style, draw.pick([0, 1])), pipe(style)];
  const discharge = branch(style, 2, false);
  const loop: DesignLoop = {
    ...{ name: 'invented loop', water: { temperature: draw.between(5, 30), salinity: draw.pick([0, 35]) } },
    ...{ pumpElevation: draw.between(-1, 1), staticHead: draw.chance(0.3) ? draw.between(0.2, 1.5) : 0 },
    frictionMultiplier: draw.chance(0.3) ? draw.between(0.9, 1.4) : 1,
    intake: { lossCoefficient: draw.pick([0.5, 1]) },
    ...(draw.chance(0.3) ? { boreChanges: 'ignored' } : {}),
    suction,
    discharge: { ...discharge, run: [pipe(style), ...discharge.run] },
  };
  const flow = requiredOf(discharge) + 1e-4;
  const about = { flow, head: draw.between(1, 6) };
  return {
    loop,
    prices: PIPES.map((one, place) => ({ pipe: one, price: 1.5 + place ** 1.6 + draw.whole(0, 9) / 10 })),
    pumps: Array.from({ length: draw.whole(1, 3) }, () => randomPumpFigures(draw, about)),
    pipeVelocity: draw.pick([null, 1.5, 2.5, 4]),
    enforceNpsh: draw.chance(0.4),
    ...{ trimPrice: draw.pick([0, 12]), years: draw.whole(2, 12), discountRate: draw.between(0, 0.08) },
    ...{ inflation: draw.between(0, 0.03), energyInflation: draw.between(0, 0.05) },
    ...{ price: draw.between(0.1, 0.4), hoursPerDay: draw.pick([24, 12]) },
  };
}
