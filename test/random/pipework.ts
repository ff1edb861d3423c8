/** Invented pipework of realistic sizes: suction, a tree of branches, outlets. */
import type { Branch, Intake, Outlet, PipeworkLoop, RunElement } from '../../models/loop/loop.ts';
import { pipeNames, standardBore } from '../reference/independent/bore.ts';
import type { Draw } from './draw.ts';

/** Standard pipes of 15 to 75 mm bore, widest first. */
const NAMES = pipeNames
  .filter((name) => standardBore(name) >= 0.015 && standardBore(name) <= 0.075)
  .sort((a, b) => standardBore(b) - standardBore(a));

interface Style {
  readonly draw: Draw;
  /** Custom pipes and equivalent lengths state a roughness. */
  readonly rough: boolean;
  readonly staticOutlets: boolean;
}

interface Place {
  readonly outlets: number;
  readonly levels: number;
  /** Bore [m] about which pipes here are sized. */
  readonly bore: number;
}

function pipe({ draw, rough }: Style, about: number): RunElement {
  const length = draw.scaled(0.3, 6);
  if (draw.chance(0.5)) {
    const near = NAMES.filter((name) => Math.abs(standardBore(name) / about - 1) < 0.35);
    return { pipe: draw.pick(near.length > 0 ? near : NAMES), length };
  }
  const insideDiameter = Math.min(0.075, Math.max(0.015, about * draw.between(0.8, 1.25)));
  return {
    pipe: rough ? { insideDiameter, roughness: draw.scaled(1.5e-6, 2e-4) } : { insideDiameter },
    length,
  };
}

function element(style: Style, about: number): RunElement {
  const { draw, rough } = style;
  const diameter = draw.chance(0.25) ? { diameter: about * draw.between(0.8, 1.2) } : {};
  switch (draw.whole(0, 8)) {
    case 0:
    case 1:
      return pipe(style, about);
    case 2:
      return { fitting: draw.pick(['elbow-90', 'elbow-45', 'tee-run', 'tee-branch']), ...diameter };
    case 3:
      return { fitting: draw.pick(['elbow-90', 'elbow-45']), count: draw.whole(1, 4), ...diameter };
    case 4:
      return {
        valve: draw.pick(['ball', 'gate']),
        ...(draw.chance(0.5) ? { opening: 100 } : {}),
        ...diameter,
      };
    case 5: {
      const kv = draw.between(20, 60) * (about / 0.04) ** 2;
      return { valve: draw.chance(0.5) ? { kv } : { cv: 1.2 * kv }, opening: 100 };
    }
    case 6:
      return { lossCoefficient: draw.between(0, 4), ...diameter };
    case 7:
      return {
        equivalentLength: draw.scaled(0.2, 3),
        ...diameter,
        ...(rough ? { roughness: draw.scaled(1.5e-6, 1e-4) } : {}),
      };
    default:
      return { loss: { head: draw.between(0.02, 0.3), flow: draw.between(0.8, 2) * about ** 2 } };
  }
}

const elements = (style: Style, most: number, bore: number): RunElement[] =>
  Array.from({ length: style.draw.whole(0, most) }, () => element(style, bore));

function outlet({ draw, staticOutlets }: Style, bore: number, name: string): Outlet {
  const nozzleCount = draw.chance(0.3) ? draw.whole(2, 4) : 1;
  const nozzle = draw.chance(0.6)
    ? { nozzleDiameter: (bore * draw.between(0.35, 0.9)) / Math.sqrt(nozzleCount), nozzleCount }
    : {};
  const exit = draw.chance(0.2) ? { lossCoefficient: draw.between(0.5, 1.8) } : {};
  const raised = staticOutlets && draw.chance(0.4) ? { staticHead: draw.between(-0.1, 0.8) } : {};
  return { name, ...nozzle, ...exit, ...raised };
}

/** Part sizes of n outlets over a split; at the last level each is alone. */
function parts(draw: Draw, { outlets, levels }: Place): readonly number[] {
  if (levels === 1) return Array.from({ length: outlets }, () => 1);
  const sizes = Array.from({ length: draw.whole(2, Math.min(4, outlets)) }, () => 1);
  for (let left = outlets - sizes.length; left > 0; left -= 1) {
    const index = draw.whole(0, sizes.length - 1);
    sizes[index] = (sizes[index] ?? 0) + 1;
  }
  return sizes;
}

function branch(style: Style, place: Place, nextName: () => string): Branch {
  const { draw } = style;
  const run = elements(style, 3, place.bore);
  const shut: RunElement[] = draw.chance(0.02) ? [{ valve: 'ball', opening: 0, diameter: place.bore }] : [];
  if (place.outlets === 1) return { run: [...run, ...shut], outlet: outlet(style, place.bore, nextName()) };
  const branches = parts(draw, place).map((outlets) => {
    const bore = Math.max(0.015, place.bore * (outlets / place.outlets) ** 0.4);
    return branch(style, { outlets, levels: place.levels - 1, bore }, nextName);
  });
  return draw.chance(0.45) ? { run, branches, split: 'tee-90' } : { run, branches };
}

function intake(draw: Draw): Intake {
  return { lossCoefficient: draw.pick([0.5, 0.05, 1, 0.78]), depth: draw.between(0.2, 0.8) };
}

/** Pipework with 2 to 12 outlets on up to 4 levels of splits; without requirements or a screen yet. */
export function randomPipework(draw: Draw): PipeworkLoop {
  const style: Style = { draw, rough: draw.chance(0.3), staticOutlets: draw.chance(0.25) };
  const bore = draw.scaled(0.02, 0.07);
  const suction = elements(style, 3, bore);
  const sized = draw.chance(0.9) ? [...suction, pipe(style, bore)] : suction;
  let named = 0;
  const nextName = (): string => {
    named += 1;
    return `outlet ${named}`;
  };
  const place = { outlets: draw.whole(2, 12), levels: draw.whole(1, 4), bore };
  const discharge = branch(style, place, nextName);
  return {
    name: 'invented loop',
    water: { temperature: draw.between(5, 32), salinity: draw.pick([0, 20, 35, 38]) },
    pumpElevation: draw.between(-1, 0.5),
    frictionMultiplier: draw.chance(0.3) ? draw.between(0.8, 1.5) : 1,
    staticHead: draw.chance(0.25) ? draw.between(0.2, 2.5) : 0,
    intake: intake(draw),
    suction: sized,
    discharge: { ...discharge, run: [pipe(style, bore), ...discharge.run] },
    ...(draw.chance(0.6) ? { tank: { volume: draw.scaled(0.2, 10) } } : {}),
  };
}
