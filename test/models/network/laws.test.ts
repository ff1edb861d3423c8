/** What holds for every tree of branches: conservation, monotony, slopes, independence of the start. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Branch, Outlet } from '../../../models/loop/loop.ts';
import { flowsAtTee } from '../../../models/network/flows-at-tee.ts';
import { lossOver, type Network } from '../../../models/network/network.ts';
import { pipeworkSystem } from '../../../models/network/pipework-system.ts';
import { headToOpen } from '../../../models/network/tee-branch-loss.ts';
import { largestResidual } from '../../../models/network/verify-solution.ts';
import { expectClose } from '../../expect-close.ts';
import { LITRE_PER_HOUR, loopOf, nested, networkOf, outlet, pipe, solved } from '../example-loops.ts';

const SEEDED = { seed: 1, numRuns: 60, endOnFailure: true } as const;

/** Millimetres as whole numbers, so that sizes are real ones; lengths and levels are often 0. */
const millimetres = (min: number, max: number) => fc.integer({ min, max }).map((mm) => mm / 1000);
const nozzle = millimetres(3, 30);
const bore = millimetres(12, 60);
const length = fc.oneof(fc.constant(0), millimetres(1, 10_000));
const lift = fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, millimetres(-300, 600));

const exit = fc.constantFrom<Outlet['exit']>(undefined, 'free', 'submerged');
/** A run of one pipe, with a check valve in one of five. */
const runs = fc
  .record({ bore, length, checked: fc.integer({ min: 0, max: 4 }) })
  .map(({ bore: d, length: l, checked }) =>
    checked === 0 ? [pipe(d, l), { valve: 'check-swing' }] : [pipe(d, l)],
  );

/**
 * Trees of up to four levels, with plain and stated tees, narrower sides, levels that differ, outlets in air and under water, check
 * valves, pipes of no length.
 */
const trees = fc.letrec<{ branch: Branch; end: Branch; split: Branch }>((tie) => ({
  branch: fc.oneof({ maxDepth: 3, depthSize: 'small' }, tie('end'), tie('split')),
  end: fc
    .record({ nozzleDiameter: nozzle, run: runs, staticHead: lift, exit })
    .map(({ run, ...facts }) => outlet('an outlet', facts, run)),
  split: fc
    .record({
      run: runs,
      tee: fc.boolean(),
      branches: fc.array(tie('branch'), { minLength: 2, maxLength: 4 }),
    })
    .map(({ run, tee, branches }) => ({
      run,
      branches,
      ...(tee ? { split: 'tee-90' as const } : {}),
    })),
})).split;

const plainTree = (branch: Branch): Branch => ({
  run: branch.run,
  ...(branch.outlet === undefined ? {} : { outlet: branch.outlet }),
  ...(branch.branches === undefined ? {} : { branches: branch.branches.map(plainTree) }),
});

const flows = fc.double({ min: -6.5, max: -2, noNaN: true }).map((exponent) => 10 ** exponent);

const netOf = (tree: Branch): Network => networkOf(loopOf(tree));

describe('a solved tree', () => {
  it('keeps continuity at every node and heads along every path', () => {
    fc.assert(
      fc.property(trees, fc.oneof(fc.constant(0), flows), (tree, flow) => {
        const network = netOf(tree);
        expect(largestResidual(network, solved(network, flow))).toBeLessThan(1e-9);
      }),
      { ...SEEDED, numRuns: 300 },
    );
  });

  it('lets no water back through a check valve or into an outlet in air', () => {
    fc.assert(
      fc.property(trees, fc.oneof(fc.constant(0), flows), (tree, flow) => {
        const network = netOf(tree);
        const solution = solved(network, flow);
        for (const [b, { hasCheckValve, outlet: end }] of network.branches.entries()) {
          if (hasCheckValve || end?.exit === 'free') expect(solution.flows[b]).toBeGreaterThanOrEqual(0);
        }
      }),
      { ...SEEDED, numRuns: 300 },
    );
  });

  it('holds back no water that could run', () => {
    fc.assert(
      fc.property(trees, fc.oneof(fc.constant(0), flows), (tree, flow) => {
        const network = netOf(tree);
        const { flows: found, heads, rootHead } = solved(network, flow);
        const scale = 1 + Math.abs(rootHead);
        for (const [b, { parent, hasCheckValve, outlet: end, lift: level }] of network.branches.entries()) {
          if (parent < 0 || found[b] !== 0 || !(hasCheckValve || end?.exit === 'free')) continue;
          const toOpen = headToOpen(
            network.branches[b]?.teeLoss ?? null,
            flowsAtTee(network.branches, found, b),
          );
          const beyond = end === null ? (heads[b] ?? Number.NaN) : level;
          expect((heads[parent] ?? Number.NaN) - toOpen - beyond).toBeLessThan(1e-9 * scale);
        }
      }),
      { ...SEEDED, numRuns: 300 },
    );
  });

  it('needs more head for more flow', () => {
    fc.assert(
      fc.property(trees, flows, (tree, flow) => {
        const network = netOf(tree);
        const heads = [flow, 1.5 * flow, 2 * flow].map((one) => solved(network, one).rootHead);
        expect(heads).toEqual(heads.toSorted((a, b) => a - b));
      }),
      SEEDED,
    );
  });

  it('gives every outlet more from more, without tees', () => {
    fc.assert(
      fc.property(trees.map(plainTree), flows, (tree, flow) => {
        const network = netOf(tree);
        const [less, more] = [solved(network, flow), solved(network, 1.3 * flow)];
        for (const index of network.outlets) {
          // A branch near rest is told from its neighbours' heads: a quadratic loss leaves a root of their rounding.
          const rounding = 1e-6 * flow + 1e-10;
          expect(more.flows[index] ?? Number.NaN).toBeGreaterThanOrEqual(
            (less.flows[index] ?? Number.NaN) - rounding,
          );
        }
      }),
      SEEDED,
    );
  });

  it('does not depend on the solution it starts from', () => {
    fc.assert(
      fc.property(trees, flows, flows, (tree, flow, other) => {
        const network = netOf(tree);
        const cold = solved(network, flow);
        const warm = solved(network, flow, solved(network, other));
        expectClose(warm.rootHead, cold.rootHead, { relative: 1e-9, absolute: 1e-12 });
        for (const [b, q] of cold.flows.entries()) {
          // A branch near rest is told from its neighbours' heads: a quadratic loss leaves a root of their rounding.
          expectClose(warm.flows[b] ?? Number.NaN, q, { relative: 1e-8, absolute: 1e-5 * flow + 1e-9 });
        }
      }),
      SEEDED,
    );
  });

  it('tells the slopes that finite differences give', () => {
    const tree: Branch = {
      run: [pipe(0.04, 2)],
      split: 'tee-90',
      branches: [
        outlet('straight', {}, [pipe(0.04, 3)]),
        {
          run: [pipe(0.03, 1)],
          branches: [outlet('low', { staticHead: 0 }), outlet('high', { staticHead: 0.2 })],
        },
      ],
    };
    const system = pipeworkSystem(netOf(tree));
    for (const flow of [3e-4, 1e-3, 4e-3]) {
      const step = 1e-4 * flow;
      const [low, mid, high] = [flow - step, flow, flow + step].map((one) => system.stateAt(one));
      if (low === undefined || mid === undefined || high === undefined) throw new Error('three states');
      expectClose(mid.slope, (high.head - low.head) / (2 * step), { relative: 1e-5 });
      for (const [i, slope] of mid.outletSlopes.entries()) {
        const difference = (high.outletFlows[i] ?? Number.NaN) - (low.outletFlows[i] ?? Number.NaN);
        expectClose(slope, difference / (2 * step), { relative: 1e-4, absolute: 1e-6 });
      }
    }
  });
});

describe('a tree by hand', () => {
  it('splits by the roots of the loss coefficients', () => {
    // Two throttles K1, K2 of one bore at one level: Q1/Q2 = sqrt(K2/K1), an identity.
    const end = (name: string, k: number): Branch => ({
      run: [],
      outlet: { name, nozzleDiameter: 0.02, lossCoefficient: k },
    });
    const network = netOf({ run: [pipe(0.04, 0)], branches: [end('a', 4), end('b', 9)] });
    const [, a = 0, b = 0] = solved(network, 1e-3).flows;
    expectClose(a / b, 1.5, { relative: 1e-10 });
  });

  it('circulates between unlike levels although nothing enters', () => {
    // Equal throttles at 0 and 0.5 m: the node stands halfway, and 0.25 m = K v^2/2g drives each.
    const end = (name: string, staticHead: number): Branch => ({
      run: [],
      outlet: { name, nozzleDiameter: 0.02, lossCoefficient: 2, staticHead, exit: 'submerged' },
    });
    const network = netOf({ run: [pipe(0.04, 1)], branches: [end('low', 0), end('high', 0.5)] });
    const { flows: found, rootHead } = solved(network, 0);
    const expected = (Math.PI / 4) * 0.02 ** 2 * Math.sqrt((2 * 9.80665 * 0.25) / 2);
    expectClose(rootHead, 0.25, { relative: 1e-9 });
    expectClose(found[1] ?? Number.NaN, expected, { relative: 1e-9 });
    expectClose(found[2] ?? Number.NaN, -expected, { relative: 1e-9 });
  });

  it('multiplies friction and splits, not outlets, by the friction multiplier', () => {
    const tree = nested(3, 'tee-90');
    const [plain, doubled] = [1, 2].map((frictionMultiplier) =>
      networkOf(loopOf(tree, { frictionMultiplier })),
    );
    for (const [b, branch] of (plain?.branches ?? []).entries()) {
      const other = doubled?.branches[b];
      if (other === undefined) throw new Error('one shape');
      const isExit = (kind: string) => kind === 'outlet';
      const runLoss = (one: typeof branch) =>
        lossOver(
          one.elements.filter(({ kind }) => !isExit(kind)),
          1e-3,
        ).head;
      const exitLoss = (one: typeof branch) =>
        lossOver(
          one.elements.filter(({ kind }) => isExit(kind)),
          1e-3,
        ).head;
      expectClose(runLoss(other), 2 * runLoss(branch), { relative: 1e-12 });
      expect(exitLoss(other)).toBe(exitLoss(branch));
      expectClose(other.teeLoss?.combined ?? 0, 2 * (branch.teeLoss?.combined ?? 0), { relative: 1e-12 });
    }
  });
});

describe('the largest and the oddest trees', () => {
  it.each(['tee-90', undefined] as const)('32 levels deep solve (split %s)', (split) => {
    const network = netOf(nested(32, split));
    for (const flow of [1e-5, 1e-3, 1e-2]) {
      expect(largestResidual(network, solved(network, flow))).toBeLessThan(1e-9);
    }
  });

  it.each(['tee-90', undefined] as const)('2,000 branches solve (split %s)', (split) => {
    const manifold = (many: number, name: string): Branch => ({
      run: [pipe(0.05, 0.2)],
      branches: Array.from({ length: many }, (_, i) =>
        outlet(`${name} ${i}`, { nozzleDiameter: 0.004 + 1e-6 * i, staticHead: 1e-4 * (i % 7) }, [
          pipe(0.02, 0.1 + 0.01 * i),
        ]),
      ),
      ...(split === undefined ? {} : { split }),
    });
    const network = netOf({
      run: [pipe(0.1, 1)],
      branches: Array.from({ length: 20 }, (_, i) => manifold(98, `row ${i}`)),
    });
    expect(network.branches.length).toBe(1 + 20 * 99);
    expect(largestResidual(network, solved(network, 0.01))).toBeLessThan(1e-9);
  });

  it.each([1, 1e3, 1e6])('%d L/h solve', (litresPerHour) => {
    const network = netOf(nested(4, 'tee-90'));
    expect(largestResidual(network, solved(network, litresPerHour * LITRE_PER_HOUR))).toBeLessThan(1e-9);
  });

  it.each([0.1, 10])('friction times %d solves', (frictionMultiplier) => {
    const network = networkOf(loopOf(nested(6, 'tee-90'), { frictionMultiplier }));
    expect(largestResidual(network, solved(network, 1e-3))).toBeLessThan(1e-9);
  });

  it('outlets without any loss share their flow', () => {
    const free = (name: string): Branch => ({ run: [], outlet: { name, lossCoefficient: 0 } });
    const network = netOf({ run: [pipe(0.04, 1)], branches: [free('a'), free('b')] });
    const { flows: found } = solved(network, 1e-3);
    expectClose(found[1] ?? Number.NaN, 5e-4, { relative: 1e-6 });
  });

  it('an outlet without loss pins its node beside outlets with loss', () => {
    const network = netOf({
      run: [pipe(0.04, 1)],
      branches: [{ run: [], outlet: { name: 'free', lossCoefficient: 0 } }, outlet('jet')],
    });
    const { flows: found } = solved(network, 1e-3);
    expectClose(found[1] ?? Number.NaN, 1e-3, { relative: 1e-6 });
  });

  it('a shut branch with shut branches beyond it is just shut', () => {
    const shut = { valve: 'ball', opening: 0 } as const;
    const network = netOf({
      run: [pipe(0.04, 1)],
      branches: [
        outlet('open'),
        { run: [shut], branches: [outlet('a', {}, [shut]), outlet('b', {}, [shut])] },
      ],
    });
    const solution = solved(network, 1e-3);
    expect([...solution.flows]).toEqual([1e-3, 1e-3, 0, 0, 0]);
    expect(largestResidual(network, solution)).toBeLessThan(1e-9);
  });
});
