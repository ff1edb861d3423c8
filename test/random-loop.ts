/** Invented selection questions: a loop, a pump about its size, and requirements that it may or may not meet. */
import type { Branch, IntakeScreen, Outlet, PipeworkLoop } from '../models/loop/loop.ts';
import type { Pump } from '../models/pump/pump.ts';
import { type Draw, drawsFrom, mulberry32 } from './random/draw.ts';
import { randomPipework } from './random/pipework.ts';
import { randomPump } from './random/pump.ts';
import { type System, systemOf } from './reference/independent/flows.ts';
import { circuitFor } from './reference/independent/selection.ts';

export interface RandomCase {
  readonly loop: PipeworkLoop;
  readonly pump: Pump;
  readonly count: number;
}

const LITRE_PER_HOUR = 1 / 3.6e6;
const ATTEMPTS = 200;

/** Flow at which the system needs a head, by bisection between 500 and 20000 L/h; nothing when it lies outside. */
function flowAtHead(system: System, head: number): number | undefined {
  let low = 500 * LITRE_PER_HOUR;
  let high = 20_000 * LITRE_PER_HOUR;
  if (system.head(low) > head || system.head(high) < head) return undefined;
  for (let step = 0; step < 30; step += 1) {
    const middle = (low + high) / 2;
    if (system.head(middle) < head) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function eachOutlet(branch: Branch, change: (outlet: Outlet) => Outlet): Branch {
  return {
    ...branch,
    ...(branch.outlet ? { outlet: change(branch.outlet) } : {}),
    ...(branch.branches ? { branches: branch.branches.map((child) => eachOutlet(child, change)) } : {}),
  };
}

/** A screen whose mean velocity, half clogged, is about the customary limit at a flow. */
function screenFor(draw: Draw, flow: number): IntakeScreen {
  const open = flow / (draw.between(0.06, 0.3) * 0.5);
  const openFraction = draw.between(0.25, 0.5);
  const count = draw.chance(0.2) ? 2 : 1;
  const face = open / openFraction / count;
  if (draw.chance(0.3)) return { shape: 'flat', width: 0.2, length: face / 0.2, openFraction, count };
  const diameter = draw.between(0.05, 0.11);
  return {
    shape: 'cylinder',
    diameter,
    length: face / (Math.PI * diameter),
    openFraction,
    slot: 0.002,
    count,
  };
}

interface Wish {
  readonly draw: Draw;
  /** What the outlet gets when the whole loop is about as its user wants it. */
  readonly gets: number;
  readonly everyOutlet: boolean;
}

function wanted(outlet: Outlet, { draw, gets, everyOutlet }: Wish): Outlet {
  if (gets <= 0) return everyOutlet ? { ...outlet, requiredFlow: 0 } : outlet;
  if (everyOutlet && draw.chance(0.08)) return { ...outlet, requiredFlow: 0 };
  if (!everyOutlet && draw.chance(0.15)) return outlet;
  const requiredFlow = gets * draw.between(0.55, 1);
  const maximum = draw.chance(0.15) ? { maximumFlow: gets * draw.between(1.02, 1.6) } : {};
  const velocity = draw.between(0.05, 0.2);
  const jet =
    outlet.nozzleDiameter !== undefined && draw.chance(0.1)
      ? { reach: { distance: 20 * outlet.nozzleDiameter, velocity } }
      : {};
  return { ...outlet, requiredFlow, ...maximum, ...jet };
}

function attempt(draw: Draw, everyOutlet: boolean): RandomCase | undefined {
  const bare = randomPipework(draw);
  const circuit = circuitFor(bare, 'as-built');
  if (circuit.root.shut) return undefined;
  const system = systemOf(circuit);
  const head = bare.staticHead + draw.scaled(0.5, 10);
  const flow = flowAtHead(system, Math.min(12, head));
  if (flow === undefined) return undefined;
  const count = draw.chance(0.2) ? draw.whole(2, 3) : 1;
  const pump = randomPump(draw, { flow: flow / count, head: system.head(flow) });
  const shares = new Map(
    system.outlets(flow * draw.between(0.45, 1.7)).map((outlet) => [outlet.name, outlet.flow]),
  );
  const discharge = eachOutlet(bare.discharge, (outlet) =>
    wanted(outlet, { draw, gets: shares.get(outlet.name) ?? 0, everyOutlet }),
  );
  const screen = draw.chance(0.5) ? { screen: screenFor(draw, flow) } : {};
  const intake = bare.intake && { ...bare.intake, ...screen };
  return { loop: { ...bare, intake, discharge }, pump, count };
}

/** The same question for the same seed. With `everyOutlet` each outlet has a requirement, as trimming needs. */
export function randomCase({ seed, everyOutlet }: { seed: number; everyOutlet: boolean }): RandomCase {
  const draw = drawsFrom(mulberry32(seed));
  for (let count = 0; count < ATTEMPTS; count += 1) {
    const found = attempt(draw, everyOutlet);
    if (found !== undefined && hasRequirement(found.loop.discharge)) return found;
  }
  throw new Error(`no loop of a sensible size from seed ${seed}`);
}

const hasRequirement = (branch: Branch): boolean =>
  (branch.outlet?.requiredFlow ?? 0) > 0 || (branch.branches ?? []).some(hasRequirement);
