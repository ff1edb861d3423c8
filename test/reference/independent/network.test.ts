/** Laws that every solved network obeys, seen from its answer alone. */
import { describe, expect, it } from 'vitest';
import type { Branch } from '../../../models/loop/loop.ts';
import { expectClose } from '../../expect-close.ts';
import { randomCase } from '../../random-loop.ts';
import { type OutletFlow, systemOf } from './flows.ts';
import { type Circuit, circuitOf, type Leg } from './legs.ts';
import { quadraticFactor } from './losses.ts';
import { needsOf } from './requirements.ts';
import { circuitFor } from './selection.ts';
import { trimsOf } from './trims.ts';

const SEEDS = Array.from({ length: 12 }, (_, index) => index + 1);

/** The worst disagreement [m] between the heads of a tree, walking down from the root by the outlet flows alone. */
function worstMismatch(circuit: Circuit, flows: readonly OutletFlow[], head: number): number {
  const at = new Map(flows.map((each) => [each.name, each.flow]));
  const flowOf = (leg: Leg): number =>
    leg.end === undefined
      ? leg.children.reduce((sum, child) => sum + flowOf(child), 0)
      : (at.get(leg.end.outlet.name) ?? Number.NaN);
  const total = flowOf(circuit.root);
  const walk = (leg: Leg, entry: number): number => {
    const flow = flowOf(leg);
    const node = entry - leg.loss(flow);
    if (leg.end !== undefined) return Math.abs(node - (leg.end.outlet.staticHead ?? 0) - leg.end.exit(flow));
    const drop = leg.combined * Math.max(0, flow) ** 2;
    const mismatches = leg.children.map((child) => {
      const passing = flowOf(child);
      if (child.shut) return Math.abs(passing);
      if (child.side && Math.abs(passing) < 1e-12) return 0;
      return walk(child, child.side && passing > 0 ? node - drop : node);
    });
    return Math.max(...mismatches);
  };
  return walk(circuit.root, head - circuit.suction(total) - circuit.staticHead);
}

describe('continuity and head along every path', () => {
  it.each(SEEDS)('hold in the invented loop %d at several total flows', (seed) => {
    const { loop } = randomCase({ seed, everyOutlet: false });
    const circuit = circuitFor(loop, 'as-built');
    const system = systemOf(circuit);
    for (const flow of [2e-4, 1e-3, 3e-3]) {
      const flows = system.outlets(flow);
      const total = flows.reduce((sum, each) => sum + each.flow, 0);
      expectClose(total, flow, { relative: 1e-10 });
      expect(worstMismatch(circuit, flows, system.head(flow))).toBeLessThan(1e-9 * (1 + system.head(flow)));
    }
  });
});

describe('the system curve', () => {
  it.each(SEEDS.slice(0, 4))('of invented loop %d rises with flow', (seed) => {
    const { loop } = randomCase({ seed, everyOutlet: false });
    const system = systemOf(circuitFor(loop, 'as-built'));
    const heads = [0, 1, 2, 3, 5, 8].map((tenths) => system.head(tenths * 4e-4));
    for (const [index, head] of heads.entries())
      expect(head).toBeGreaterThan(heads[index - 1] ?? Number.NEGATIVE_INFINITY);
  });

  it('has a head at no flow between the outlets that exchange water', () => {
    const raised = (name: string, staticHead: number): Branch => ({
      run: [],
      outlet: { name, staticHead, nozzleDiameter: 0.02 },
    });
    const discharge = { run: [], branches: [raised('low', 0), raised('high', 0.5)] };
    const pipework = { staticHead: 0, suction: [], discharge, frictionMultiplier: 1, viscosity: 1e-6 };
    const system = systemOf(circuitOf(pipework));
    // Equal nozzles at 0 and 0.5 m balance half way between.
    expectClose(system.head(0), 0.25, { relative: 1e-10 });
    const [low, high] = system.outlets(0).map((each) => each.flow);
    expectClose((low ?? Number.NaN) + (high ?? Number.NaN), 0, { absolute: 1e-14 });
    expectClose(low ?? Number.NaN, Math.sqrt(0.25 / quadraticFactor(1, 0.02)), { relative: 1e-10 });
  });
});

describe('a tee', () => {
  const bore = 0.04;
  const outlet = (name: string, coefficient: number): Branch => ({
    run: [],
    outlet: { name, nozzleDiameter: bore, lossCoefficient: coefficient },
  });
  const sideShare = (branches: readonly Branch[]): number => {
    const discharge: Branch = {
      run: [{ pipe: { insideDiameter: bore }, length: 1 }],
      branches,
      split: 'tee-90',
    };
    const pipework = { staticHead: 0, suction: [], discharge, frictionMultiplier: 1, viscosity: 1e-6 };
    return (systemOf(circuitOf(pipework)).outlets(1e-3)[1]?.flow ?? Number.NaN) / 1e-3;
  };

  // Branch K of a diverging equal tee on the combined velocity: Crane TP-410 formulas, computed by a general fluids library.
  it.each([
    [0.2, 1.0241],
    [0.25, 1.0379],
    [0.5, 1.1556],
    [0.8, 1.4209],
  ])(
    'gives a side branch the share %d where the published branch coefficient says so',
    (share, published) => {
      const side = 20;
      const straight = (published + side * share ** 2) / (1 - share) ** 2;
      expectClose(sideShare([outlet('run', straight), outlet('side', side)]), share, { relative: 0.003 });
    },
  );

  it('passes nothing into a side branch whose driving head is under the combined velocity head', () => {
    expect(sideShare([outlet('run', 0.5), outlet('side', 1)])).toBe(0);
  });
});

describe('trims', () => {
  it.each(SEEDS.slice(0, 6))('level invented loop %d at exactly its required flows', (seed) => {
    const { loop } = randomCase({ seed, everyOutlet: true });
    const trimmed = systemOf(circuitFor(loop, 'trimmed'));
    const { head, trims } = trimsOf(circuitFor(loop, 'as-built'));
    const required = new Map<string, number>();
    const note = (branch: Branch): void => {
      if (branch.outlet?.reach === undefined && branch.outlet !== undefined)
        required.set(branch.outlet.name, branch.outlet.requiredFlow ?? Number.NaN);
      branch.branches?.forEach(note);
    };
    note(loop.discharge);
    expect(trims.every((trim) => trim.head >= 0)).toBe(true);
    const total = trimmedTotal(loop);
    expectClose(trimmed.head(total), head, { relative: 1e-9 });
    for (const { name, flow } of trimmed.outlets(total)) {
      const wanted = required.get(name);
      if (wanted !== undefined) expectClose(flow, wanted, { relative: 1e-8 });
    }
  });
});

/** Sum of what a loop's outlets require, reaches included. */
function trimmedTotal(loop: Parameters<typeof circuitFor>[0]): number {
  return needsOf(circuitFor(loop, 'as-built').root).reduce((sum, need) => sum + (need.required ?? 0), 0);
}
