/** The second look at a solution: it notices each way in which an answer can be wrong. */
import { describe, expect, it } from 'vitest';
import type { Branch } from '../../../models/loop/loop.ts';
import type { NetworkSolution } from '../../../models/network/solve-network.ts';
import { ALLOWED_RESIDUAL, largestResidual } from '../../../models/network/verify-solution.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, networkOf, outlet, pipe, solved } from '../example-loops.ts';

const TREE: Branch = {
  run: [pipe(0.04, 1)],
  split: 'tee-90',
  branches: [
    outlet('a', { staticHead: 0.3 }, [pipe(0.03, 2)]),
    { run: [pipe(0.03, 1)], branches: [outlet('b', {}, [pipe(0.02, 1)]), outlet('c', {}, [pipe(0.02, 2)])] },
  ],
};
const NETWORK = networkOf(loopOf(TREE));
const TOTAL = 2e-3;
const SOLUTION = solved(NETWORK, TOTAL);

const residualOf = (change: Partial<NetworkSolution>) => largestResidual(NETWORK, { ...SOLUTION, ...change });
const num = (array: readonly number[], index: number): number => array[index] ?? Number.NaN;

describe('the residual of a solution', () => {
  it('is rounding of one that was solved for', () => {
    expect(residualOf({})).toBeLessThan(ALLOWED_RESIDUAL);
  });

  it.each([0, 1, 2, 3, 4])('shows a flow of branch %i that is 1 % off', (b) => {
    expect(residualOf({ flows: SOLUTION.flows.with(b, 1.01 * num(SOLUTION.flows, b)) })).toBeGreaterThan(
      1e-4,
    );
  });

  it('is the flow that is missing at a node, as a share of the largest', () => {
    // A path of no loss leaves the heads as they are.
    const free = {
      run: [],
      branches: [outlet('a', { lossCoefficient: 0 }), outlet('b', { lossCoefficient: 0 })],
    };
    const network = networkOf(loopOf(free));
    const flows = [2e-3, 1e-3, 0.9e-3];
    const solution = { ...SOLUTION, flows, heads: [0, 0, 0], rootHead: 0 };
    expectClose(largestResidual(network, solution), 0.1e-3 / 2e-3, { relative: 1e-9 });
  });

  it('is the head that is missing on the way to an outlet, as a share of the longest way', () => {
    const off = 0.01;
    const way = residualOf({ rootHead: SOLUTION.rootHead + off });
    expect(way).toBeGreaterThan(1e-4);
    expectClose(residualOf({ rootHead: SOLUTION.rootHead + 2 * off }), 2 * way, { relative: 1e-6 });
    expectClose(residualOf({ rootHead: SOLUTION.rootHead - off }), way, { relative: 1e-6 });
  });

  it('shows an answer that is no number', () => {
    expect(residualOf({ rootHead: Number.NaN }) <= ALLOWED_RESIDUAL).toBe(false);
  });
});

describe('the residual beyond a closed branch', () => {
  const branches = [
    outlet('a', {}, [pipe(0.03, 1)]),
    outlet('b', {}, [{ valve: 'ball', opening: 0 }, pipe(0.03, 1)]),
  ];
  const network = networkOf(loopOf({ run: [pipe(0.04, 1)], branches }));
  const solution = solved(network, TOTAL);

  it('does not ask the head of the node it leaves', () => {
    expect(largestResidual(network, solution)).toBeLessThan(ALLOWED_RESIDUAL);
  });

  it('shows water that passes all the same', () => {
    const flows = [TOTAL, 0.9 * TOTAL, 0.2 * TOTAL];
    expect(largestResidual(network, { ...solution, flows })).toBeGreaterThan(0.05);
  });
});

describe('the residual of a side branch that rests', () => {
  // The side's outlet is so high that the combined velocity head holds it at rest.
  const velocityHead = (TOTAL / ((Math.PI / 4) * 0.03 ** 2)) ** 2 / (2 * 9.80665);
  const network = networkOf(
    loopOf({
      run: [pipe(0.03, 0)],
      split: 'tee-90',
      branches: [
        outlet('straight', { lossCoefficient: 0 }),
        outlet('side', { staticHead: -0.5 * velocityHead }, [pipe(0.03, 1)]),
      ],
    }),
  );
  const solution = solved(network, TOTAL);

  it('is rounding where it is driven by less than the velocity head that holds it', () => {
    expect(num(solution.flows, 2)).toBe(0);
    expect(largestResidual(network, solution)).toBeLessThan(ALLOWED_RESIDUAL);
  });

  it.each([
    ['driven by more than the velocity head', -1.5 * velocityHead],
    ['driven backwards', 0.5 * velocityHead],
  ])('shows a branch that rests although it is %s', (_, head) => {
    expect(largestResidual(network, { ...solution, heads: solution.heads.with(2, head) })).toBeGreaterThan(
      0.1,
    );
  });
});
