/** Which candidates are too close to the best to call, and whose power to measure. */
import { describe, expect, it } from 'vitest';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { closeToBest } from '../../../models/selection/close-to.ts';
import type { Running } from '../../../models/selection/options.ts';
import { select } from '../../../models/selection/select.ts';
import { expectClose } from '../../expect-close.ts';
import { LH, loopOf, pipe, pumpE } from '../../reference/independent-complementarity/cases.ts';
import { modelOf, pumpModelOf } from '../example-loops.ts';

const loop = loopOf({
  suction: [pipe(40, 1)],
  discharge: { run: [pipe(40, 4)], outlet: { name: 'end', requiredFlow: 4000 * LH } },
});
const running: Running = { price: null, hoursPerDay: 24, elevation: 0 };

/** Powers of one pump [W] at settings [%]. */
const powered = (powers: readonly (readonly [setting: number, power: number])[]): Pump => ({
  ...pumpE,
  powerPoints: powers.map(([setting, power]) => ({ setting, power })),
});

function rankedBy(pumps: readonly Pump[], terms: Partial<Running> = {}) {
  const { ranking } = select({
    sampled: sampleLoop(modelOf(loop)),
    candidates: pumps.map((pump) => ({ pump: pumpModelOf(pump), count: 1 })),
    limits: DEFAULT_LIMITS,
    running: { ...running, ...terms },
  });
  return { ranking, ...closeToBest(ranking) };
}

/** P = 300 W (s + (1 - s) r^3) at the setting of a duty [%], s of it fixed. */
const assumed = (setting: number, share: number): number =>
  300 * (share + (1 - share) * (setting / 100) ** 3);
/** kWh of a year at a power [W]. */
const yearOf = (watts: number): number => 8.76 * watts;

describe('a pump entered at one speed', () => {
  const guessed = powered([[100, 300]]);

  it('is ranked by the energy of 8 % fixed loss, which may be that of none or of a fifth', () => {
    const [ranked] = rankedBy([guessed]).ranking;
    const setting = ranked?.duty.setting ?? 0;
    expect(setting).toBeLessThan(60);
    expectClose(ranked?.annualEnergy ?? 0, yearOf(assumed(setting, 0.08)), { relative: 1e-9 });
    expectClose(ranked?.rankedBy.low ?? 0, yearOf(assumed(setting, 0)), { relative: 1e-9 });
    expectClose(ranked?.rankedBy.high ?? 0, yearOf(assumed(setting, 0.2)), { relative: 1e-9 });
  });

  it('is too close to call against one whose measured power lies within that', () => {
    const setting = rankedBy([guessed]).ranking[0]?.duty.setting ?? 0;
    const measured = powered([
      [100, 320],
      [setting, assumed(setting, 0.12)],
    ]);
    const { closeTo, measure } = rankedBy([measured, guessed]);
    expect(closeTo.map(({ candidate }) => candidate)).toEqual([0]);
    // The one that is known least, although it is the best.
    expect(measure).toMatchObject({ candidate: 1, duty: { setting } });
  });

  it('is clear of one whose measured power lies beyond', () => {
    const setting = rankedBy([guessed]).ranking[0]?.duty.setting ?? 0;
    const worse = powered([
      [100, 400],
      [setting, 1.01 * assumed(setting, 0.2)],
    ]);
    expect(rankedBy([worse, guessed])).toMatchObject({ closeTo: [], measure: null });
    const equal = powered([
      [100, 400],
      [setting, 0.99 * assumed(setting, 0.2)],
    ]);
    expect(rankedBy([equal, guessed]).closeTo).toHaveLength(1);
  });
});

describe('what candidates are compared by', () => {
  const sure = powered([
    [100, 300],
    [30, 12],
  ]);

  it('is their annual cost where there is a price', () => {
    const [ranked] = rankedBy([sure], { price: 0.25 }).ranking;
    expectClose(ranked?.rankedBy.low ?? 0, ranked?.annualCost ?? -1, { relative: 1e-12 });
    expectClose(ranked?.rankedBy.high ?? 0, ranked?.annualCost ?? -1, { relative: 1e-12 });
  });

  it('is their life-cycle cost where that is asked for; those without one are not compared with it', () => {
    const lifeCycle = {
      years: 10,
      discountRate: 0,
      inflation: 0,
      energyInflation: 0,
      labourRate: 0,
      minutesPerFailure: 0,
    };
    const priced = { ...powered([[100, 300]]), price: 500, expectedLifeYears: 10 };
    const { ranking, closeTo } = rankedBy([priced, sure], { price: 0.25, lifeCycle });
    const [ranked] = ranking;
    const setting = ranked?.duty.setting ?? 0;
    // 500 to buy, and ten years of 0.25 a kWh without interest.
    const costOf = (share: number) => 500 + 10 * 0.25 * yearOf(assumed(setting, share));
    expectClose(ranked?.lifeCycleCost ?? 0, costOf(0.08), { relative: 1e-9 });
    expectClose(ranked?.rankedBy.low ?? 0, costOf(0), { relative: 1e-9 });
    expectClose(ranked?.rankedBy.high ?? 0, costOf(0.2), { relative: 1e-9 });
    expect(ranking[1]?.lifeCycleCost).toBeNull();
    expect(closeTo).toEqual([]);
  });

  it('leaves equals together', () => {
    const { closeTo, measure } = rankedBy([sure, sure]);
    expect(closeTo.map(({ candidate }) => candidate)).toEqual([1]);
    expect(measure?.candidate).toBe(0);
  });
});
