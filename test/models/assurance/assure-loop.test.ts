/** Settings that still serve in the worst case, each form against a plain selection of a loop or pump made worse by hand. */
import { describe, expect, it } from 'vitest';
import type { Assurance } from '../../../models/assurance/assure-loop.ts';
import { type Choice, choose, type Question } from '../../../models/assurance/choose-assured.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Branch, PipeworkLoop } from '../../../models/loop/loop.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { pumpEnds } from '../../../models/pump/pump-at-tolerance.ts';
import { gridSize, settingAt } from '../../../models/pump/settings-grid.ts';
import { GRADES } from '../../../models/pump/tolerance-grades.ts';
import { expectClose } from '../../expect-close.ts';
import { randomCase } from '../../random-loop.ts';
import { canister250, kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { modelOf, pumpModelOf } from '../example-loops.ts';

const LIMITS = {
  ...DEFAULT_LIMITS,
  throughSlotVelocity: null,
  allowExtrapolation: true,
  maximumEfficiency: 1e9,
};
const pump = pumpModelOf(canister250);
const flume = modelOf(kelpFlume);

function asked(facts: Partial<Question> = {}): Question {
  return {
    candidates: [{ pump, count: 1 }],
    balancing: 'as-built',
    limits: LIMITS,
    running: { price: 0.21, hoursPerDay: 24, elevation: 0 },
    assurance: null,
    ...facts,
  };
}

function chosen(model: Parameters<typeof choose>[0], facts: Partial<Question> = {}): Choice {
  const choice = choose(model, asked(facts));
  if (!choice.ok) throw new Error(choice.failure.code);
  return choice.value;
}

const settingOf = ({ selection: { ranking } }: Choice): number =>
  ranking[0]?.duty.setting ?? Number.POSITIVE_INFINITY;

const everyOutlet = (branch: Branch, factor: number): Branch => ({
  ...branch,
  ...(branch.outlet && {
    outlet: { ...branch.outlet, requiredFlow: factor * (branch.outlet.requiredFlow ?? 0) },
  }),
  ...(branch.branches && { branches: branch.branches.map((one) => everyOutlet(one, factor)) }),
});

describe('a grade', () => {
  it('takes the first setting of a scan at which the low pump serves', () => {
    const low = pumpEnds(GRADES['2B']).low;
    const { settings } = canister250;
    const serves = Array.from({ length: gridSize(settings) }, (_, i) => settingAt(settings, i)).find(
      (setting) => {
        const { outletFlows } = dutyPoint(flume, low(pump, { setting, count: 1 }));
        return flume.system.outlets.every(
          ({ requiredFlow }, i) => (outletFlows[i] ?? 0) >= (requiredFlow ?? 0),
        );
      },
    );
    expect(settingOf(chosen(flume, { assurance: { grade: '2B' } }))).toBe(serves);
  });

  it('tells the duty of the pump as entered at that setting', () => {
    const [best] = chosen(flume, { assurance: { grade: '2B' } }).selection.ranking;
    if (best === undefined) throw new Error('the pump serves the flume');
    const { setting } = best.duty;
    const entered = dutyPoint(flume, pumpAtSetting(pump, { setting, count: 1 }));
    expectClose(best.duty.flow, entered.flow, { relative: 1e-9 });
    expectClose(best.duty.power, entered.power, { relative: 1e-9 });
  });

  it('rejects a pump that no longer serves at its low end', () => {
    const weak = pumpModelOf({ ...canister250, settings: { min: 30, max: 70, step: 1 } });
    const facts = { candidates: [{ pump: weak, count: 1 }] };
    expect(settingOf(chosen(flume, facts))).toBe(70);
    const { selection } = chosen(flume, { ...facts, assurance: { grade: '3B' } });
    expect(selection.ranking).toEqual([]);
    expect(selection.rejected[0]?.outcome.failing.map(({ reason }) => reason)).toEqual(['not-enough-head']);
  });
});

describe('a margin', () => {
  it.each(['as-built', 'trimmed'] as const)('is a request of larger flows, %s', (balancing) => {
    for (const margin of [0, 0.05, 0.1, 0.25]) {
      const larger = { ...kelpFlume, discharge: everyOutlet(kelpFlume.discharge, 1 + margin) };
      const expected = chosen(modelOf(larger), { balancing }).selection.ranking[0];
      const actual = chosen(flume, { balancing, assurance: { margin } }).selection.ranking[0];
      expect(actual?.duty.setting).toBe(expected?.duty.setting);
      expectClose(actual?.duty.flow ?? 0, expected?.duty.flow ?? 1, { relative: 1e-9 });
    }
  });

  it('keeps the requirements as entered in what the answer is told on', () => {
    const { balanced, worstCase } = chosen(flume, { assurance: { margin: 0.1 } });
    const wanted = flume.system.outlets.map(({ requiredFlow }) => requiredFlow);
    expect(balanced.sampled.loop.system.outlets.map(({ requiredFlow }) => requiredFlow)).toEqual(wanted);
    const tenth = worstCase?.sampled.loop.system.outlets.map(({ requiredFlow }) => requiredFlow);
    expect(tenth).toEqual(wanted.map((flow) => (flow === null ? null : 1.1 * flow)));
  });

  it('works for a loop known by its system curve', () => {
    const curve = {
      ...{ name: 'curve', water: { temperature: 25, salinity: 35 }, pumpElevation: 0, frictionMultiplier: 1 },
      systemCurve: { points: [{ flow: 2e-3, head: 2 }] },
      outlets: [{ name: 'all', share: 1, requiredFlow: 1.8e-3 }],
    };
    const larger = { ...curve, outlets: [{ name: 'all', share: 1, requiredFlow: 1.2 * 1.8e-3 }] };
    expect(settingOf(chosen(modelOf(curve), { assurance: { margin: 0.2 } }))).toBe(
      settingOf(chosen(modelOf(larger))),
    );
    const heavier = modelOf({ ...curve, frictionMultiplier: 1.5 });
    expect(settingOf(chosen(modelOf(curve), { assurance: { frictionMultiplier: 1.5 } }))).toBe(
      settingOf(chosen(heavier)),
    );
  });
});

describe('more friction', () => {
  it('is a loop with that multiplier, as built', () => {
    for (const frictionMultiplier of [1.2, 2, 3]) {
      const heavier = settingOf(chosen(modelOf({ ...kelpFlume, frictionMultiplier })));
      const assured = settingOf(chosen(flume, { assurance: { frictionMultiplier } }));
      // It has to serve as entered too.
      expect(assured).toBe(Math.max(heavier, settingOf(chosen(flume))));
    }
  });

  it("comes on top of the loop's own", () => {
    const own = modelOf({ ...kelpFlume, frictionMultiplier: 1.5 });
    const twice = settingOf(chosen(own, { assurance: { frictionMultiplier: 2 } }));
    expect(twice).toBe(settingOf(chosen(modelOf({ ...kelpFlume, frictionMultiplier: 3 }))));
  });

  it('finds trims as they were set', () => {
    const { balanced, worstCase } = chosen(flume, {
      balancing: 'trimmed',
      assurance: { frictionMultiplier: 2 },
    });
    const trimsIn = (sampled = balanced.sampled) =>
      (sampled.loop.network?.branches ?? []).flatMap(({ elements }) =>
        elements.filter(({ kind }) => kind === 'trim').map(({ resistance }) => resistance.lossAt(1e-3).head),
      );
    expect(trimsIn()).not.toEqual([]);
    expect(trimsIn(worstCase?.sampled)).toEqual(trimsIn());
  });
});

describe('a stricter assurance never lowers the setting', () => {
  const STRICTER: readonly (readonly (Assurance | null)[])[] = [
    [null, { grade: '1U' }, { grade: '1B' }, { grade: '2B' }, { grade: '3B' }],
    [null, { margin: 0 }, { margin: 0.05 }, { margin: 0.2 }, { margin: 0.5 }],
    [null, { frictionMultiplier: 1 }, { frictionMultiplier: 1.3 }, { frictionMultiplier: 2 }],
  ];
  const seeds = Array.from({ length: 12 }, (_, index) => 400 + index);

  /** Without what the law supposes away: maxima of outlets, limits of the pump, drooping curves. */
  function plainCase(seed: number): { loop: PipeworkLoop; candidate: Question['candidates'] } | null {
    const { loop, pump: drawn, count } = randomCase({ seed, everyOutlet: true });
    const { flowLimits: _, ...free } = drawn;
    const fitted = pumpModelOf(free);
    if (fitted.fit.headCurve.drooping) return null;
    const withoutMaxima = (branch: Branch): Branch => {
      const { outlet, branches, ...rest } = branch;
      return {
        ...rest,
        ...(outlet && { outlet: { ...outlet, maximumFlow: undefined } }),
        ...(branches && { branches: branches.map(withoutMaxima) }),
      };
    };
    const { split: _split, ...discharge } = withoutMaxima(loop.discharge);
    return { loop: { ...loop, discharge }, candidate: [{ pump: fitted, count }] };
  }

  it.each(
    seeds.flatMap((seed) => (['as-built', 'trimmed'] as const).map((balancing) => ({ seed, balancing }))),
  )('of loop $seed $balancing', ({ seed, balancing }) => {
    const found = plainCase(seed);
    if (found === null) return;
    const model = modelOf(found.loop);
    for (const row of STRICTER) {
      const settings = row.map((assurance) =>
        settingOf(chosen(model, { candidates: found.candidate, balancing, assurance })),
      );
      expect(settings).toEqual(settings.toSorted((a, b) => a - b));
    }
  });
});
