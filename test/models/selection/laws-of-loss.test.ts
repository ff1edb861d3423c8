/** What holds of every selection when a loop loses more, or is trimmed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Branch, PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { balancedLoop } from '../../../models/selection/balanced-loop.ts';
import type { Balancing } from '../../../models/selection/options.ts';
import { select } from '../../../models/selection/select.ts';
import { expectClose } from '../../expect-close.ts';
import { type RandomCase, randomCase } from '../../random-loop.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;
/** The laws suppose that nothing else decides: no screen, no end of the data, no doubt about efficiency. */
const LIMITS = {
  ...DEFAULT_LIMITS,
  throughSlotVelocity: null,
  allowExtrapolation: true,
  maximumEfficiency: 1e9,
};
const RUNNING = { price: 0.2, hoursPerDay: 24, elevation: 0 };

const everywhere = (branch: Branch, change: (branch: Branch) => Branch): Branch => ({
  ...change(branch),
  ...(branch.branches === undefined
    ? {}
    : { branches: branch.branches.map((child) => everywhere(child, change)) }),
});

const levelsIn = ({ outlet: end, branches = [] }: Branch): readonly number[] =>
  end === undefined ? branches.flatMap(levelsIn) : [end.staticHead ?? 0];

function withoutMaximum({ outlet: end, ...branch }: Branch): Branch {
  if (end === undefined) return branch;
  const { maximumFlow: _, ...rest } = end;
  return { ...branch, outlet: rest };
}

/**
 * An invented case without outlet maxima and the pump's flow limits; null where the pump curve droops. Stated tees are
 * left out where outlets stand at different levels: there a tee may give its side branch less from more,
 * so that a setting that serves does not make all higher ones serve.
 */
function plainCase(seed: number): RandomCase | null {
  const { loop, pump, count } = randomCase({ seed, everyOutlet: true });
  const { flowLimits: _, ...free } = pump;
  if (pumpModelOf(free).fit.headCurve.drooping) return null;
  const isLevel = new Set(levelsIn(loop.discharge)).size === 1;
  const discharge = everywhere(loop.discharge, (branch) => {
    const { split, ...rest } = withoutMaximum(branch);
    return isLevel && split !== undefined ? { ...rest, split } : rest;
  });
  return { loop: { ...loop, discharge }, pump: free, count };
}

interface Outcome {
  /** Infinite where no setting serves. */
  readonly setting: number;
  readonly cost: number;
  readonly limitingOutlet: string | null;
}

function outcome({ loop, pump, count }: RandomCase, balancing: Balancing): Outcome {
  const balanced = balancedLoop(modelOf(loop), balancing);
  if (!balanced.ok) throw new Error(balanced.failure.code);
  const { sampled } = balanced.value;
  const candidates = [{ pump: pumpModelOf(pump), count }];
  const { ranking } = select({ sampled, candidates, limits: LIMITS, running: RUNNING });
  const [best] = ranking;
  return {
    setting: best?.duty.setting ?? Number.POSITIVE_INFINITY,
    cost: best?.annualCost ?? Number.POSITIVE_INFINITY,
    limitingOutlet: sampled.required?.limitingOutlet ?? null,
  };
}

type Path = readonly number[];

/** The ways to all branches of a tree, each as places among the children. */
const pathsIn = (branch: Branch, path: Path = []): readonly Path[] => [
  path,
  ...(branch.branches ?? []).flatMap((child, i) => pathsIn(child, [...path, i])),
];

/** The ways to the branches that the water of one outlet passes. */
const pathsTo = (branch: Branch, name: string): readonly Path[] =>
  pathsIn(branch).filter((path) => {
    const end = path.reduce<Branch | undefined>((at, place) => at?.branches?.[place], branch);
    return end !== undefined && JSON.stringify(end).includes(`"name":${JSON.stringify(name)}`);
  });

function withElement(branch: Branch, [place, ...rest]: Path, element: RunElement): Branch {
  if (place === undefined) return { ...branch, run: [...branch.run, element] };
  return {
    ...branch,
    branches: (branch.branches ?? []).map((child, i) =>
      i === place ? withElement(child, rest, element) : child,
    ),
  };
}

const lossier = (loop: PipeworkLoop, path: Path, lossCoefficient: number): PipeworkLoop => ({
  ...loop,
  discharge: withElement(loop.discharge, path, { lossCoefficient, diameter: 0.03 }),
});

const seeds = fc.integer({ min: 1, max: 5000 });
const losses = fc.double({ min: 0.1, max: 60, noNaN: true });
const shares = fc.double({ min: 0, max: 0.999, noNaN: true });
const RUNS = { seed: 1, numRuns: 25 } as const;

const pick = (paths: readonly Path[], share: number): Path => paths[Math.floor(share * paths.length)] ?? [];

describe('more loss', () => {
  it('anywhere in a trimmed loop never lowers the setting, nor makes it serve where it did not', () => {
    fc.assert(
      fc.property(seeds, losses, shares, (seed, loss, share) => {
        const plain = plainCase(seed);
        if (plain === null) return;
        const path = pick(pathsIn(plain.loop.discharge), share);
        const worse = { ...plain, loop: lossier(plain.loop, path, loss) };
        expect(outcome(worse, 'trimmed').setting).toBeGreaterThanOrEqual(outcome(plain, 'trimmed').setting);
      }),
      RUNS,
    );
  });

  it("on the limiting outlet's own way as built never lowers the setting either", () => {
    fc.assert(
      fc.property(seeds, losses, shares, (seed, loss, share) => {
        const plain = plainCase(seed);
        if (plain === null) return;
        const before = outcome(plain, 'as-built');
        if (before.limitingOutlet === null) return;
        const path = pick(pathsTo(plain.loop.discharge, before.limitingOutlet), share);
        const worse = { ...plain, loop: lossier(plain.loop, path, loss) };
        expect(outcome(worse, 'as-built').setting).toBeGreaterThanOrEqual(before.setting);
      }),
      RUNS,
    );
  });
});

describe('a trimmed loop', () => {
  it('never needs a higher setting than as built', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const plain = plainCase(seed);
        if (plain === null) return;
        expect(outcome(plain, 'trimmed').setting).toBeLessThanOrEqual(outcome(plain, 'as-built').setting);
      }),
      RUNS,
    );
  });

  it('costs no more than as built where power does not fall with flow', () => {
    fc.assert(
      fc.property(seeds, fc.double({ min: 0, max: 0.5, noNaN: true }), (seed, rise) => {
        const plain = plainCase(seed);
        if (plain === null) return;
        const pump = risingPower(plain.pump, rise);
        const trimmed = outcome({ ...plain, pump }, 'trimmed').cost;
        const asBuilt = outcome({ ...plain, pump }, 'as-built').cost;
        expect(trimmed).toBeLessThanOrEqual(asBuilt * (1 + 1e-9));
      }),
      RUNS,
    );
  });

  it('saves by hand what its power law says', () => {
    // One outlet far, one near and greedy; at the same setting the trims save nothing but the flow given away.
    const loop = loopOf({
      run: [pipe(0.04, 1)],
      branches: [
        outlet('far', { requiredFlow: 2000 * L }, [pipe(0.02, 12)]),
        outlet('near', { requiredFlow: 1000 * L }, [pipe(0.03, 0.5)]),
      ],
    });
    const pump = risingPower(randomCase({ seed: 3, everyOutlet: true }).pump, 0);
    const [asBuilt, trimmed] = (['as-built', 'trimmed'] as const).map((balancing) =>
      outcome({ loop, pump, count: 1 }, balancing),
    );
    if (asBuilt === undefined || trimmed === undefined) throw new Error('two outcomes');
    expect(trimmed.setting).toBeLessThan(asBuilt.setting);
    // Of the power of points of one speed 8 % are fixed, the rest goes with the cube of the setting; standby apart, costs are alike.
    const above = (cost: number) => cost - (365 * 24 * pump.standbyPower * 0.2) / 1000;
    const drawn = (setting: number) => 0.08 + 0.92 * (setting / 100) ** 3;
    expectClose(above(asBuilt.cost) / above(trimmed.cost), drawn(asBuilt.setting) / drawn(trimmed.setting), {
      relative: 1e-9,
    });
  });
});

/** The pump with power that rises by a share over its range of flow at full speed; the cube law otherwise. */
function risingPower(pump: Pump, rise: number): Pump {
  const { speedMap: _, ...plain } = pump;
  const most = Math.max(...pump.headPoints.map(({ flow }) => flow));
  const powerPoints = [0.2, 0.6, 1].map((share) => ({
    ...{ setting: 100, flow: share * most },
    power: pump.standbyPower + 200 * Math.exp(rise * share),
  }));
  return { ...plain, powerPoints };
}
