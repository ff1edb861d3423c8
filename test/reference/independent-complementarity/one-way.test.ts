/** One-way runs and free outlets against worked figures, and the conditions that each of them must meet. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import type {
  ExtendedBranch,
  ExtendedElement,
  ExtendedLoop,
  ExtendedOutlet,
} from '../../random/extended-loop.ts';
import { LH, loopOf, pipe, pumpE, pumpW, SEA, STATED } from './cases.ts';
import { circuitOfLoop, landing, systemOfLoop } from './duties.ts';
import { restingOutlets } from './resting-outlets.ts';

const NOTHING = { absolute: 1e-9 };

const close = (actual: readonly number[], expected: readonly number[]): void => {
  for (const [index, flow] of expected.entries())
    expectClose(actual[index] ?? Number.NaN, flow, flow === 0 ? NOTHING : STATED);
};

/** Two branches, a lower than c. */
function pair(
  staticHead: number,
  valve: readonly ExtendedElement[],
  c: Partial<ExtendedOutlet> = {},
): ExtendedLoop {
  const branches: ExtendedBranch[] = [
    { run: [pipe(25, 4)], outlet: { name: 'a', staticHead: -1 } },
    { run: [pipe(20, 3), ...valve], outlet: { name: 'c', ...c } },
  ];
  return loopOf({ staticHead, suction: [pipe(40, 1)], discharge: { run: [pipe(40, 2)], branches } });
}

const CHECK: readonly ExtendedElement[] = [{ fitting: 'check-swing' }];

// Figures of a separate calculation for fresh water of 20 degC, head curve 6 m (1 - (Q/10000 L/h)^2).
describe('a check valve in one of two branches', () => {
  it.each([
    ['holds back', CHECK, 55, [2391.4, 0]],
    ['is missed', [], 55, [2961.62, -1368.87]],
    ['lets pass', CHECK, 100, [5233.9, 1739.04]],
    ['is missed', [], 100, [5060.22, 2034.9]],
  ] as const)('%s', (_, valve, setting, expected) => {
    close(landing(pair(2, valve), pumpE, setting).outlets, expected);
  });

  it('may be a valve, and several act as one', () => {
    const two = [{ valve: 'check-swing' }, { fitting: 'foot-hinged' }];
    close(landing(pair(2, two), pumpE, 55).outlets, [2391.4, 0]);
  });
});

describe('an outlet above the others', () => {
  it.each([
    ['free by default', undefined, 55, [3197.08, 0]],
    ['submerged', 'submerged', 55, [3925.98, -1685.93]],
    ['free by default', undefined, 100, [5643.77, 1681.33]],
    ['submerged', 'submerged', 100, [5643.77, 1681.33]],
  ] as const)('%s', (_, exit, setting, expected) => {
    close(landing(pair(1.4, [], { staticHead: 0.6, exit }), pumpE, setting).outlets, expected);
  });

  it('sets the head at no flow between the levels only where it is submerged', () => {
    const free = systemOfLoop(pair(1.4, [], { staticHead: 0.6 })).head(0);
    expectClose(free, 0.4, { relative: 1e-12 });
    const submerged = systemOfLoop(pair(1.4, [], { staticHead: 0.6, exit: 'submerged' })).head(0);
    expect(submerged).toBeGreaterThan(0.4);
    expect(submerged).toBeLessThan(2);
  });
});

/** Seawater: a low outlet at 0.4 m, and a high one. */
function levels(high: ExtendedBranch, highestElevation?: number): ExtendedLoop {
  const low = { run: [pipe(28, 5)], outlet: { name: 'low', staticHead: -1.2 } };
  return loopOf({
    water: SEA,
    staticHead: 1.6,
    suction: [pipe(45, 1.5)],
    discharge: { run: [pipe(45, 2.5)], branches: [low, high], highestElevation },
  });
}

const checked: ExtendedBranch = {
  run: [pipe(22, 2), { fitting: 'check-swing-clear' }],
  outlet: { name: 'high' },
};
const open: ExtendedBranch = { run: [pipe(22, 2)], outlet: { name: 'high' } };
const raised: ExtendedBranch = { run: [pipe(22, 2)], outlet: { name: 'high', staticHead: 0.8 } };

// Figures of a separate calculation, seawater of 25 degC, head curve 7 m (1 - (Q/14000 L/h)^2).
describe('a low and a high outlet', () => {
  it.each([
    ['with a check valve', checked, 42, [3027.18, 0]],
    ['with a check valve', checked, 80, [5974.61, 1924.56]],
    ['without', open, 42, [3887.11, -2366.26]],
    ['without', open, 80, [5862.84, 2126.6]],
    ['the high one free', raised, 42, [3027.18, 0]],
    ['the high one free', raised, 80, [6719.61, 508.931]],
  ] as const)('%s', (_, high, setting, expected) => {
    close(landing(levels(high), pumpW, setting).outlets, expected);
  });

  it('have the stated heads', () => {
    const loop = levels(checked);
    expectClose(landing(loop, pumpW, 80).head, 2.25154, STATED);
    const { head, solution, flow } = landing(loop, pumpW, 42);
    expectClose(head, 0.907521, STATED);
    const { suction, root } = circuitOfLoop(loop);
    expectClose(suction(flow * LH), 0.018772, { relative: 1e-4 });
    expectClose(root.loss(flow * LH), 0.019409, { relative: 1e-4 });
    const [state] = [...solution.values()];
    expectClose(state?.end ?? Number.NaN, 0.86934, STATED);
  });
});

describe('a free outlet that no water reaches', () => {
  it.each([
    ['outlet-dry', undefined, 2.4],
    ['air-drawn', 1.5, 1.5],
    ['outlet-dry', 0.5, 2.4],
  ] as const)('is %s where the root rises to %s m', (code, elevation, limit) => {
    const loop = levels(raised, elevation);
    const { solution } = landing(loop, pumpW, 42);
    const root = [...solution.keys()][0];
    const [resting] = root === undefined ? [] : restingOutlets(root, solution);
    expect(resting).toMatchObject({ code, outlet: 'high' });
    expectClose(resting?.value ?? Number.NaN, 0.86934, STATED);
    expectClose(resting?.limit ?? Number.NaN, limit, { relative: 1e-12 });
  });
});
