/** What a solve gives, starts from, and ends by. */
import { describe, expect, it } from 'vitest';
import type { Branch } from '../../../models/loop/loop.ts';
import { NETWORK_LIMITS, solveNetwork } from '../../../models/network/solve-network.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, nested, networkOf, outlet, pipe, solved } from '../example-loops.ts';

const num = (array: ArrayLike<number>, index: number): number => array[index] ?? Number.NaN;

const TREE: Branch = {
  run: [pipe(0.04, 1)],
  split: 'tee-90',
  branches: [outlet('a', { staticHead: 0.1 }, [pipe(0.03, 2)]), outlet('b', {}, [pipe(0.02, 1)])],
};

describe('a solution', () => {
  const network = networkOf(loopOf(TREE));

  it('has slopes that differences of solutions show', () => {
    const [low, here, high] = [1.999e-3, 2e-3, 2.001e-3].map((flow) => solved(network, flow));
    if (low === undefined || here === undefined || high === undefined) throw new Error('not solved');
    expectClose(here.rootSlope, (high.rootHead - low.rootHead) / 2e-6, { relative: 1e-5 });
    for (const b of network.branches.keys()) {
      expectClose(num(here.flowSlopes, b), (num(high.flows, b) - num(low.flows, b)) / 2e-6, {
        relative: 1e-5,
      });
    }
    expectClose(num(here.flowSlopes, 0), 1, { relative: 1e-12 });
  });

  it('adds the loss of the first run to the head at its end', () => {
    const { rootHead, heads } = solved(network, 2e-3);
    const trunk = solved(networkOf(loopOf(outlet('only', { lossCoefficient: 0 }, [pipe(0.04, 1)]))), 2e-3);
    expectClose(rootHead - num(heads, 0), trunk.rootHead, { relative: 1e-9 });
  });

  it('is the same whatever it starts from, in fewer steps from near by', () => {
    const plain = solved(network, 2e-3);
    const near = solved(network, 2e-3, solved(network, 1.99e-3));
    for (const b of network.branches.keys()) {
      expectClose(num(near.flows, b), num(plain.flows, b), { relative: 1e-9 });
    }
    expect(near.steps).toBeLessThanOrEqual(plain.steps);
  });

  it('is found from flows that are far from any solution', () => {
    const nonsense = { ...solved(network, 2e-3), flows: [2e-3, 1, 2e-3 - 1], flowSlopes: [1, 0.5, 0.5] };
    const found = solved(network, 1e-3, nonsense);
    for (const b of network.branches.keys()) {
      expectClose(num(found.flows, b), num(solved(network, 1e-3).flows, b), { relative: 1e-9 });
    }
  });

  it('is not changed by a later one', () => {
    const first = solved(network, 1e-3);
    const kept = structuredClone(first);
    solved(network, 3e-3);
    expect(first).toEqual(kept);
  });

  it('of a deep tree takes few steps', () => {
    const deep = networkOf(loopOf(nested(32, 'tee-90')));
    expect(solved(deep, 1e-3).steps).toBeLessThan(NETWORK_LIMITS.steps / 2);
  });
});

describe('a network that does not settle', () => {
  it('is named with its total flow, the steps taken and what does not balance', () => {
    const network = networkOf(loopOf(TREE));
    const lossless = { linear: Number.NaN, quadratic: 0, frictions: [] };
    const broken = {
      ...network,
      branches: network.branches.map((branch) => ({
        ...branch,
        elements: branch.elements.map((element) => ({
          ...element,
          resistance: { terms: lossless, lossAt: () => ({ head: Number.NaN, slope: 1 }) },
        })),
      })),
    };
    const result = solveNetwork(broken, 2e-3);
    expect(result.ok ? null : result.failure).toMatchObject({ code: 'network-unsolved', totalFlow: 2e-3 });
  });
});
