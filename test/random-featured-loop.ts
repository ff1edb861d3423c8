/** Invented selection questions about loops with check valves, free outlets, steps of bore and reducing tees. */
import { type Draw, drawsFrom, mulberry32 } from './random/draw.ts';
import type { ExtendedLoop, ExtendedPump } from './random/extended-loop.ts';
import { EVERY_FEATURE, type Features, withFeatures } from './random/features.ts';
import { withOtherPoints } from './random/kneed-pump.ts';
import { randomPipework } from './random/pipework.ts';
import { randomPump } from './random/pump.ts';
import { screenFor } from './random/screen.ts';
import { flowAtHead, hasRequirement, withWishes } from './random/wishes.ts';
import { systemOf } from './reference/independent-complementarity/flows.ts';
import { headLaw } from './reference/independent-complementarity/head-law.ts';
import { circuitFor } from './reference/independent-complementarity/selection.ts';

export interface FeaturedCase {
  readonly loop: ExtendedLoop;
  readonly pump: ExtendedPump;
  readonly count: number;
  readonly limits: { readonly allowReverseFlow: boolean; readonly gravity: 'report' | 'reject' };
}

interface Asked {
  readonly seed: number;
  /** Each outlet has a requirement, as trimming needs. */
  readonly everyOutlet: boolean;
  readonly features?: Features;
}

const ATTEMPTS = 300;

/** Invented pipework with features; without requirements or a screen yet. */
export const randomPipeworkWith = (draw: Draw, features: Features): ExtendedLoop =>
  withFeatures(draw, features, randomPipework(draw));

function attempt(draw: Draw, { everyOutlet, features = EVERY_FEATURE }: Asked): FeaturedCase | undefined {
  const bare = randomPipeworkWith(draw, features);
  const circuit = circuitFor(bare, 'as-built');
  if (circuit.root.shut) return undefined;
  const system = systemOf(circuit);
  const flow = flowAtHead(system, Math.min(12, Math.max(0, bare.staticHead) + draw.scaled(0.5, 10)));
  if (flow === undefined) return undefined;
  const count = draw.chance(0.2) ? draw.whole(2, 3) : 1;
  const target = { flow: flow / count, head: system.head(flow) };
  const pump = withOtherPoints(draw, randomPump(draw, target));
  if (headLaw(pump) === undefined) return undefined;
  const shares = new Map(
    system.outlets(flow * draw.between(0.45, 1.7)).map((outlet) => [outlet.name, outlet.flow]),
  );
  const discharge = withWishes(bare.discharge, { draw, shares, everyOutlet });
  const screen = draw.chance(0.5) ? { screen: screenFor(draw, flow) } : {};
  const intake = bare.intake && { ...bare.intake, ...screen };
  const gravity = draw.chance(0.2) ? 'reject' : 'report';
  const limits = { allowReverseFlow: draw.chance(0.3), gravity } as const;
  return { loop: { ...bare, intake, discharge }, pump, count, limits };
}

/** The same question for the same seed. */
export function featuredCase(asked: Asked): FeaturedCase {
  const draw = drawsFrom(mulberry32(asked.seed));
  for (let count = 0; count < ATTEMPTS; count += 1) {
    const found = attempt(draw, asked);
    if (found !== undefined && hasRequirement(found.loop.discharge)) return found;
  }
  throw new Error(`no loop of a sensible size from seed ${asked.seed}`);
}
