/** The shape of a network in arrays, and states to start from. */
import { describe, expect, it } from 'vitest';
import type { Branch } from '../../../models/loop/loop.ts';
import { lossOver, type Network } from '../../../models/network/network.ts';
import { branchAt, initialState, lossAt, type TreeState, treeOf } from '../../../models/network/tree.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, networkOf, outlet, pipe, solved } from '../example-loops.ts';

const num = (array: ArrayLike<number>, index: number): number => array[index] ?? Number.NaN;

const level: Branch = {
  run: [pipe(0.04, 1)],
  split: 'tee-90',
  branches: [outlet('a', {}, [pipe(0.03, 2)]), outlet('b', {}, [pipe(0.02, 1)])],
};
const uneven: Branch = {
  run: [pipe(0.04, 1)],
  branches: [
    outlet('low', { staticHead: 0.2 }, [pipe(0.03, 2)]),
    outlet('high', { staticHead: 0.9 }, [pipe(0.02, 1)]),
  ],
};
const netOf = (branch: Branch): Network => networkOf(loopOf(branch));

function expectContinuity({ branches }: Network, { flow }: TreeState, totalFlow: number): void {
  expectClose(num(flow, 0), totalFlow, { relative: 1e-12 });
  for (const [b, { children }] of branches.entries()) {
    if (children.length === 0) continue;
    const beyond = children.reduce((sum, child) => sum + num(flow, child), 0);
    expectClose(beyond, num(flow, b), { relative: 1e-9, absolute: 1e-15 });
  }
}

describe('a tree', () => {
  it('has the parents, outlets and sides of its network', () => {
    const tree = treeOf(netOf(level));
    expect([...tree.parent]).toEqual([-1, 0, 0]);
    expect([...tree.isOutlet]).toEqual([0, 1, 1]);
    expect(tree.restable).toEqual([2]);
    expect(tree.sidesBeyond).toEqual([[2], [], []]);
    expect(tree.hasOneWay).toBe(false);
  });

  it('does not count a closed side', () => {
    const branches = [outlet('a'), outlet('b', {}, [pipe(0.02, 1), { valve: 'ball', opening: 0 }])];
    expect(treeOf(netOf({ ...level, branches })).restable).toEqual([]);
  });

  it('loses what the elements of each branch lose together', () => {
    const network = netOf(level);
    const tree = treeOf(network);
    for (const [b, { elements }] of network.branches.entries()) {
      for (const flow of [-2e-3, 1e-5, 3e-3]) {
        const [one, other] = [lossAt(tree, b, flow), lossOver(elements, flow)];
        expectClose(one.head, other.head, { relative: 1e-12 });
        expectClose(one.slope, other.slope, { relative: 1e-12 });
      }
    }
  });

  it('knows by how much its open outlets differ in level', () => {
    expect(treeOf(netOf(level)).liftRange).toBe(0);
    expectClose(treeOf(netOf(uneven)).liftRange, 0.7, { relative: 1e-12 });
    const closed = {
      ...uneven,
      branches: [outlet('low'), outlet('high', { staticHead: 0.9 }, [{ valve: { kv: 1 }, opening: 0 }])],
    };
    expect(treeOf(netOf(closed)).liftRange).toBe(0);
  });

  it('takes levels that differ by rounding as one', () => {
    const lifts = [0.1 + 0.2, 0.3].map((staticHead, i) => outlet(`o${i}`, { staticHead }));
    expect(treeOf(netOf({ run: [], branches: lifts })).liftRange).toBe(0);
    const apart = [0.3, 0.3 + 1e-9].map((staticHead, i) => outlet(`o${i}`, { staticHead }));
    expectClose(treeOf(netOf({ run: [], branches: apart })).liftRange, 1e-9, { relative: 1e-6 });
  });

  it('throws for a branch that it has not', () => {
    const tree = treeOf(netOf(level));
    expect(() => branchAt(tree, 3)).toThrow('branch 3');
    expect(() => lossAt(tree, 3, 1)).toThrow('branch 3');
  });
});

describe('a state to start from', () => {
  it.each([
    ['outlets at one level', level],
    ['outlets at two levels', uneven],
  ])('keeps continuity, %s', (_, branch) => {
    const network = netOf(branch);
    for (const totalFlow of [0, 1e-6, 2e-3]) {
      expectContinuity(network, initialState(treeOf(network), totalFlow), totalFlow);
    }
  });

  it('is the solution of a network of quadratic losses at one level', () => {
    const lossOnly = (lossCoefficient: number) => [{ lossCoefficient, diameter: 0.02 }];
    const network = netOf({
      run: lossOnly(2),
      branches: [
        outlet('a', {}, lossOnly(3)),
        { run: lossOnly(1), branches: [outlet('b', {}, lossOnly(7)), outlet('c', {}, lossOnly(20))] },
      ],
    });
    const { flow, head } = initialState(treeOf(network), 1e-3);
    const solution = solved(network, 1e-3);
    for (const b of network.branches.keys()) {
      expectClose(num(flow, b), num(solution.flows, b), { relative: 1e-9 });
      expectClose(num(head, b), num(solution.heads, b), { relative: 1e-9, absolute: 1e-12 });
    }
  });

  it('is that of an earlier solution scaled, where all outlets are at one level', () => {
    const network = netOf(level);
    const earlier = solved(network, 1e-3);
    const { flow } = initialState(treeOf(network), 2e-3, { earlier });
    for (const b of network.branches.keys()) {
      expectClose(num(flow, b), 2 * num(earlier.flows, b), { relative: 1e-12 });
    }
  });

  it('is that of an earlier solution carried along its slopes, where they are not', () => {
    const network = netOf(uneven);
    const earlier = solved(network, 1e-3);
    const { flow } = initialState(treeOf(network), 1.1e-3, { earlier });
    for (const b of network.branches.keys()) {
      expectClose(num(flow, b), num(earlier.flows, b) + 1e-4 * num(earlier.flowSlopes, b), {
        relative: 1e-9,
      });
    }
  });

  it('does without an earlier solution that had no flow', () => {
    const network = netOf(level);
    const rest = solved(network, 0);
    expect([...initialState(treeOf(network), 1e-3, { earlier: rest }).flow]).toEqual([
      ...initialState(treeOf(network), 1e-3).flow,
    ]);
  });

  it('lets water run from the high outlet to the low one without a total flow', () => {
    const network = netOf(uneven);
    const { flow } = initialState(treeOf(network), 0);
    expect(num(flow, 1)).toBeGreaterThan(0);
    expect(num(flow, 2)).toBeLessThan(0);
  });

  it('sends nothing into a closed branch, and into an outlet without loss nearly all', () => {
    const branches = [outlet('a', {}, [{ valve: { kv: 1 }, opening: 0 }]), outlet('b')];
    const closed = netOf({ run: [], branches });
    expect(num(initialState(treeOf(closed), 1e-3).flow, 1)).toBe(0);
    const free = netOf({ run: [], branches: [outlet('free', { lossCoefficient: 0 }), outlet('jet')] });
    expect(num(initialState(treeOf(free), 1e-3).flow, 1)).toBeGreaterThan(0.99e-3);
  });
});
