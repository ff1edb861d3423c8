/** Invented selection questions: a loop, a pump about its size, and requirements that it may or may not meet. */
import type { PipeworkLoop } from '../models/loop/loop.ts';
import type { Pump } from '../models/pump/pump.ts';
import { type Draw, drawsFrom, mulberry32 } from './random/draw.ts';
import { randomPipework } from './random/pipework.ts';
import { randomPump } from './random/pump.ts';
import { screenFor } from './random/screen.ts';
import { flowAtHead, hasRequirement, withWishes } from './random/wishes.ts';
import { systemOf } from './reference/independent/flows.ts';
import { circuitFor } from './reference/independent/selection.ts';

export interface RandomCase {
  readonly loop: PipeworkLoop;
  readonly pump: Pump;
  readonly count: number;
}

const ATTEMPTS = 200;

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
  const discharge = withWishes(bare.discharge, { draw, shares, everyOutlet });
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
