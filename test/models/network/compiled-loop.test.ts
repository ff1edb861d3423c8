/** Pipework compiled: inherited bores, losses at intake and outlets, and pipework that makes no sense. */
import { describe, expect, it } from 'vitest';
import type { Branch, PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import { compileLoop } from '../../../models/network/compiled-loop.ts';
import { lossOver } from '../../../models/network/network.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, networkOf, outlet, pipe } from '../example-loops.ts';

const bare: Branch = { run: [], outlet: { name: 'bare' } };
const withRun = (...run: RunElement[]): PipeworkLoop => loopOf(outlet('jet', {}, run));
const unsized = (discharge: Branch, facts: Partial<PipeworkLoop> = {}) =>
  loopOf(discharge, { suction: [], ...facts });

const SENSELESS: readonly [string, PipeworkLoop, string, string][] = [
  [
    'a pipe nobody makes',
    withRun({ pipe: 'sch80 9-9/9', length: 1 }),
    'unknown-pipe',
    '/discharge/run/0/pipe',
  ],
  ['an unknown fitting', withRun({ fitting: 'knot' }), 'unknown-fitting', '/discharge/run/0/fitting'],
  ['an unknown valve', withRun({ valve: 'tap' }), 'unknown-valve', '/discharge/run/0/valve'],
  [
    'a rated valve half open',
    withRun({ valve: { kv: 10 }, opening: 50 }),
    'opening-not-known',
    '/discharge/run/0/opening',
  ],
  [
    'an unknown pipe of the suction',
    loopOf(outlet('jet'), { suction: [pipe(0.05, 1), { pipe: 'hose', length: 1 }] }),
    'unknown-pipe',
    '/suction/1/pipe',
  ],
  [
    'an unknown fitting deep in the tree',
    loopOf({
      run: [],
      branches: [outlet('a'), { run: [], branches: [outlet('b'), outlet('c', {}, [{ fitting: 'knot' }])] }],
    }),
    'unknown-fitting',
    '/discharge/branches/1/branches/1/run/0/fitting',
  ],
  [
    'an elbow without any pipe',
    unsized(outlet('jet', {}, [{ fitting: 'elbow-90' }])),
    'element-without-diameter',
    '/discharge/run/0',
  ],
  ['an outlet without any pipe', unsized(bare), 'element-without-diameter', '/discharge/outlet'],
  [
    'a tee without any pipe',
    unsized({ run: [], branches: [outlet('a'), outlet('b')], split: 'tee-90' }),
    'element-without-diameter',
    '/discharge/split',
  ],
];

describe('pipework that makes no sense', () => {
  it.each(SENSELESS)('%s is named', (_, loop, code, pointer) => {
    const built = compileLoop(loop);
    expect(built.ok).toBe(false);
    if (built.ok) return;
    expect([built.failure.code, `/${built.failure.path.join('/')}`]).toEqual([code, pointer]);
  });
});

describe('the bore of an element without a diameter', () => {
  const boreOf = (loop: PipeworkLoop, branch: number, element: number) =>
    networkOf(loop).branches[branch]?.elements[element]?.bore;
  const elbow: RunElement = { fitting: 'elbow-90' };

  it('is that of the pipe before it in its run', () => {
    expect(boreOf(withRun(pipe(0.03, 1), pipe(0.04, 1), elbow, pipe(0.02, 1)), 0, 2)).toBe(0.04);
  });

  it('is else that of the nearest pipe upstream, the suction for the root', () => {
    expect(boreOf(withRun(elbow, pipe(0.02, 1)), 0, 0)).toBe(0.05);
    const tree = loopOf({ run: [pipe(0.04, 1)], branches: [outlet('a', {}, [elbow]), outlet('b')] });
    expect(boreOf(tree, 1, 0)).toBe(0.04);
  });

  it('is else that of the first pipe after it, also beyond its run', () => {
    expect(boreOf(unsized(outlet('jet', {}, [elbow, pipe(0.02, 1)])), 0, 0)).toBe(0.02);
    const tree = unsized({ run: [elbow], branches: [outlet('a', {}, [pipe(0.025, 1)]), outlet('b')] });
    expect(boreOf(tree, 0, 0)).toBe(0.025);
  });

  it('is its own where it states one', () => {
    expect(boreOf(withRun(pipe(0.03, 1), { fitting: 'elbow-90', diameter: 0.06 }), 0, 1)).toBe(0.06);
  });
});

describe('the ends of a loop', () => {
  it('lose at the intake on the first suction pipe, and nowhere without one', () => {
    const intake = { lossCoefficient: 0.5 };
    const { suction } = networkOf(
      loopOf(outlet('jet'), { intake, suction: [pipe(0.05, 0), pipe(0.03, 0)], boreChanges: 'ignored' }),
    );
    const velocity = 1e-3 / ((Math.PI / 4) * 0.05 ** 2);
    expectClose(lossOver(suction, 1e-3).head, (0.5 * velocity ** 2) / (2 * 9.80665), { relative: 1e-12 });
    expect(networkOf(unsized(outlet('jet'), { intake })).suction).toEqual([]);
  });

  it('lose one velocity head of the nozzles together at an outlet', () => {
    const [branch] = networkOf(loopOf(outlet('jet', { nozzleDiameter: 0.01, nozzleCount: 4 }))).branches;
    const velocity = 1e-3 / (4 * (Math.PI / 4) * 0.01 ** 2);
    expectClose(lossOver(branch?.elements ?? [], 1e-3).head, velocity ** 2 / (2 * 9.80665), {
      relative: 1e-12,
    });
  });

  it('lift by the loop and the outlet together', () => {
    expect(
      networkOf(loopOf(outlet('jet', { staticHead: 0.5 }), { staticHead: 1.25 })).branches[0]?.lift,
    ).toBe(1.75);
  });

  it('require the larger of a stated flow and that of a reach', () => {
    // n (pi d^2/4) v x/(6 d) at 1.5 m and 0.1 m/s from a nozzle of 15 mm: 16.7 times the nozzle's own.
    const reach = { distance: 1.5, velocity: 0.1 };
    const forReach = (Math.PI / 4) * 0.015 ** 2 * 0.1 * (1.5 / (6 * 0.015));
    const requiredOf = (requiredFlow: number) =>
      networkOf(loopOf(outlet('jet', { reach, requiredFlow }))).branches[0]?.outlet?.requiredFlow;
    expectClose(requiredOf(0) ?? Number.NaN, forReach, { relative: 1e-12 });
    expect(requiredOf(2 * forReach)).toBe(2 * forReach);
  });
});
