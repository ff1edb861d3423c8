/** Valves set to make the trims of a loop. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Branch, PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import { type Trim, trimNetwork } from '../../../models/network/trim.ts';
import { expectClose } from '../../expect-close.ts';
import { LITRE_PER_HOUR, loopOf, networkOf, outlet, pipe, solved } from '../example-loops.ts';

const L = LITRE_PER_HOUR;

const trimsOf = (loop: PipeworkLoop): readonly Trim[] => trimNetwork(networkOf(loop)).trims;

/** The loop with every valve set as its trims ask. */
function withOpenings(branch: Branch, path: readonly (string | number)[], trims: readonly Trim[]): Branch {
  const openingAt = (place: number) =>
    trims.find(({ valve }) => valve?.join() === [...path, 'run', place].join())?.opening;
  return {
    ...branch,
    run: branch.run.map((element, place) => {
      const opening = openingAt(place);
      return 'valve' in element && typeof opening === 'number' ? { ...element, opening } : element;
    }),
    ...(branch.branches === undefined
      ? {}
      : {
          branches: branch.branches.map((child, i) => withOpenings(child, [...path, 'branches', i], trims)),
        }),
  };
}

const valves = fc.constantFrom('ball', 'gate', 'butterfly', 'diaphragm');
const bores = fc.double({ min: 0.015, max: 0.04, noNaN: true });

/** Trees of up to four levels, a valve of known characteristic in every branch. */
const trees = fc.letrec<{ branch: Branch; end: Branch; split: Branch }>((tie) => ({
  branch: fc.oneof({ maxDepth: 3, depthSize: 'small' }, tie('end'), tie('split')),
  end: fc
    .record({
      bore: bores,
      valve: valves,
      opening: fc.constantFrom(100, 80, 60),
      requiredFlow: fc.double({ min: 200 * L, max: 2000 * L, noNaN: true }),
    })
    .map(({ bore, valve, opening, requiredFlow }) =>
      outlet('an outlet', { nozzleDiameter: 0.012, requiredFlow }, [pipe(bore, 2), { valve, opening }]),
    ),
  split: fc
    .record({
      bore: bores,
      valve: valves,
      tee: fc.boolean(),
      branches: fc.array(tie('branch'), { minLength: 2, maxLength: 3 }),
    })
    .map(({ bore, valve, tee, branches }) => ({
      run: [pipe(bore, 1), { valve }],
      branches,
      ...(tee ? { split: 'tee-90' as const } : {}),
    })),
})).split;

describe('the valves of a loop, set as its trims ask', () => {
  it('level it at exactly the required flows, without any trim, whatever the friction multiplier', () => {
    fc.assert(
      fc.property(trees, fc.constantFrom(1, 0.5, 3), (discharge, frictionMultiplier) => {
        const loop = loopOf(discharge, { frictionMultiplier });
        const trims = trimsOf(loop);
        for (const { valve, opening } of trims) {
          expect(valve).not.toBeNull();
          expect(opening).toBeGreaterThan(0);
          expect(opening).toBeLessThanOrEqual(100);
        }
        const network = networkOf({ ...loop, discharge: withOpenings(discharge, ['discharge'], trims) });
        const required = network.outlets.map((b) => network.branches[b]?.outlet?.requiredFlow ?? 0);
        const total = required.reduce((sum, flow) => sum + flow, 0);
        const { flows } = solved(network, total);
        for (const [i, b] of network.outlets.entries()) {
          expectClose(flows[b] ?? Number.NaN, required[i] ?? Number.NaN, { relative: 1e-7 });
        }
      }),
      { seed: 1, numRuns: 100 },
    );
  });
});

describe('the valve of a trim', () => {
  const loop = (run: readonly RunElement[], requiredFlow = 500 * L): PipeworkLoop =>
    loopOf({
      run: [pipe(0.04, 1)],
      branches: [
        outlet('far', { requiredFlow: 2000 * L }, [pipe(0.02, 8)]),
        outlet('near', { requiredFlow }, [pipe(0.03, 1), ...run]),
      ],
    });
  const valveOf = (run: readonly RunElement[], requiredFlow?: number) => {
    const [trim] = trimsOf(loop(run, requiredFlow));
    return [trim?.valve?.join('/') ?? null, trim?.opening ?? null];
  };

  it('is the first in the run whose part openings are known', () => {
    const [place] = valveOf([
      { valve: 'check-swing' },
      { valve: { kv: 20 } },
      { valve: 'ball' },
      { valve: 'gate' },
    ]);
    expect(place).toBe('discharge/branches/1/run/3');
  });

  it.each<[string, RunElement[]]>([
    ['no valve', []],
    ['a check valve', [{ valve: 'check-swing' }]],
    ['a valve by its Kv', [{ valve: { kv: 20 } }]],
    ['a fitting', [{ fitting: 'elbow-90' }]],
  ])('is not told with %s', (_, run) => {
    expect(valveOf(run)).toEqual([null, null]);
  });

  it.each<[string, RunElement]>([
    ['a ball valve', { valve: 'ball' }],
    ['a valve by its Kv', { valve: { kv: 20 } }],
    ['a straight diaphragm valve', { valve: 'diaphragm-straight' }],
  ])('is shut where nothing is required: %s', (_, valve) => {
    expect(valveOf([valve], 0)).toEqual(['discharge/branches/1/run/1', 0]);
  });

  it('is not told of a closed branch without one', () => {
    expect(valveOf([], 0)).toEqual([null, null]);
  });
});

describe('trims of a tree as deep as loops go', () => {
  it('level 32 levels', () => {
    let branch = outlet('deepest', { requiredFlow: 200 * L }, [pipe(0.03, 1), { valve: 'ball' }]);
    for (let level = 31; level > 0; level -= 1) {
      const side = outlet(`level ${level}`, { requiredFlow: (100 + 5 * level) * L, nozzleDiameter: 0.01 }, [
        pipe(0.02, 0.5),
        { valve: 'gate' },
      ]);
      branch = { run: [pipe(0.035, 0.5), { valve: 'ball' }], branches: [branch, side], split: 'tee-90' };
    }
    const { network, trims } = trimNetwork(networkOf(loopOf(branch)));
    const required = network.outlets.map((b) => network.branches[b]?.outlet?.requiredFlow ?? 0);
    const total = required.reduce((sum, flow) => sum + flow, 0);
    const { flows } = solved(network, total);
    for (const [i, b] of network.outlets.entries()) {
      expectClose(flows[b] ?? Number.NaN, required[i] ?? Number.NaN, {
        relative: 1e-9,
        absolute: 1e-9 * total,
      });
    }
    // At each split all children but one are throttled.
    expect(trims.length).toBe(31);
    expect(trims.every(({ opening }) => opening !== null)).toBe(true);
  });
});
