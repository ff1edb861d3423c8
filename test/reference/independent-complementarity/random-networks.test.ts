/** Invented networks with one-way runs, free outlets, steps of bore and reducing tees against the laws that they obey. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import type { ExtendedBranch, ExtendedLoop } from '../../random/extended-loop.ts';
import { EVERY_FEATURE } from '../../random/features.ts';
import { featuredCase } from '../../random-featured-loop.ts';
import { randomCase } from '../../random-loop.ts';
import { systemOf as systemWithoutRules } from '../independent/flows.ts';
import { circuitFor as circuitWithoutRules } from '../independent/selection.ts';
import { systemOf } from './flows.ts';
import { isOneWay } from './runs.ts';
import { circuitFor } from './selection.ts';
import { greatestSideShare, mismatch } from './verify.ts';

const SEEDS = Array.from({ length: 20 }, (_, index) => index + 1);
const FLOWS = [0, 1e-5, 2e-4, 1e-3, 3e-3];
/** Several balances may exist where the sides of a reducing tee take more. */
const MOST_SIDE = 0.9;

/** Names of the outlets that nothing may flow back from. */
function oneWayOutlets(branch: ExtendedBranch): readonly string[] {
  const { outlet } = branch;
  if (outlet === undefined) return (branch.branches ?? []).flatMap(oneWayOutlets);
  const free = outlet.exit === 'free' || (outlet.exit === undefined && (outlet.staticHead ?? 0) > 0);
  return free || branch.run.some(isOneWay) ? [outlet.name] : [];
}

describe.each([
  ['every feature', EVERY_FEATURE],
  ['no tee', { ...EVERY_FEATURE, reducingTee: 0 }],
])('loops with %s', (_, features) => {
  it.each(SEEDS)('keep continuity, heads, closed and resting ways (seed %d)', (seed) => {
    const { loop } = featuredCase({ seed, everyOutlet: false, features });
    const circuit = circuitFor(loop, 'as-built');
    const system = systemOf(circuit);
    const oneWay = new Set(oneWayOutlets(loop.discharge));
    for (const flow of FLOWS) {
      const outlets = system.outlets(flow);
      if (greatestSideShare(circuit, outlets) > MOST_SIDE) continue;
      const head = system.head(flow);
      const sum = outlets.reduce((total, outlet) => total + outlet.flow, 0);
      expectClose(sum, flow, { relative: 1e-9, absolute: 1e-13 });
      expect(mismatch(circuit, outlets, head)).toBeLessThan(1e-9 * (1 + Math.abs(head)));
      for (const outlet of outlets)
        if (oneWay.has(outlet.name)) expect(outlet.flow).toBeGreaterThanOrEqual(0);
    }
  });
});

const withoutTees = (branch: ExtendedBranch): ExtendedBranch => ({
  ...branch,
  split: undefined,
  ...(branch.outlet && { outlet: { ...branch.outlet, exit: 'submerged' as const } }),
  ...(branch.branches && { branches: branch.branches.map(withoutTees) }),
});

describe('loops to which none of the rules applies', () => {
  it.each(SEEDS)('have the flows of the plain solution (seed %d)', (seed) => {
    const { loop } = randomCase({ seed, everyOutlet: false });
    const plain: ExtendedLoop = { ...loop, boreChanges: 'ignored', discharge: withoutTees(loop.discharge) };
    const system = systemOf(circuitFor(plain, 'as-built'));
    const expected = systemWithoutRules(circuitWithoutRules(plain, 'as-built'));
    for (const flow of FLOWS.slice(1)) {
      expectClose(system.head(flow), expected.head(flow), { relative: 1e-9, absolute: 1e-12 });
      for (const [index, outlet] of expected.outlets(flow).entries()) {
        const actual = system.outlets(flow)[index]?.flow ?? Number.NaN;
        expectClose(actual, outlet.flow, { relative: 1e-8, absolute: 1e-9 * flow });
      }
    }
  });
});
