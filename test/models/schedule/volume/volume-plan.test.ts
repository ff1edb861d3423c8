/** The cheapest plan against every plan there is, on small random cases. */
import { describe, expect, it } from 'vitest';
import {
  type Choice,
  costOf,
  planVolume,
  type Slot,
  volumeOf,
} from '../../../../models/schedule/volume/volume-plan.ts';
import { planWholeSlots } from '../../../../models/schedule/volume/whole-slots.ts';
import { expectValue } from '../../../curves/expect-value.ts';
import { expectClose } from '../../../expect-close.ts';
import { drawing } from './draw.ts';

interface Case {
  readonly choices: readonly Choice[];
  readonly slots: readonly Slot[];
  readonly volume: number;
}

function smallCase(seed: number): Case {
  const draw = drawing(seed);
  const choices = Array.from({ length: 2 + Math.floor(draw() * 4) }, () => ({
    flow: 0.0005 + 0.003 * draw(),
    power: 5 + 240 * draw(),
  }));
  if (draw() < 0.5) choices.push({ flow: 0, power: 3 });
  const slots = Array.from({ length: 1 + Math.floor(draw() * 4) }, () => ({
    hours: 0.5 + draw(),
    price: -0.05 + 0.4 * draw(),
  }));
  const most = slots.reduce((sum, slot) => sum + Math.max(...choices.map((one) => volumeOf(one, slot))), 0);
  return { choices, slots, volume: most * (0.2 + 0.79 * draw()) };
}

interface Totals {
  readonly volume: number;
  readonly cost: number;
}

/** Every way to give each slot one choice. */
function wholePlans({ choices, slots }: Case): readonly Totals[] {
  let plans: readonly Totals[] = [{ volume: 0, cost: 0 }];
  for (const slot of slots) {
    plans = plans.flatMap((plan) =>
      choices.map((choice) => ({
        volume: plan.volume + volumeOf(choice, slot),
        cost: plan.cost + costOf(choice, slot),
      })),
    );
  }
  return plans;
}

/**
 * Least cost with time shared without limit, by another way: plans that share time are mixtures of whole plans, and the best
 * mixture under one demand needs two of them at most.
 */
function leastCostShared(one: Case): number {
  const plans = wholePlans(one);
  const enough = plans.filter(({ volume }) => volume >= one.volume * (1 - 1e-12));
  const short = plans.filter(({ volume }) => volume < one.volume);
  let least = Math.min(...enough.map(({ cost }) => cost));
  for (const low of short) {
    for (const high of enough) {
      const share = (one.volume - low.volume) / (high.volume - low.volume);
      least = Math.min(least, low.cost + share * (high.cost - low.cost));
    }
  }
  return least;
}

const SEEDS = Array.from({ length: 200 }, (_, index) => index + 1);

describe('the cheapest plan of a volume, in 200 small cases', () => {
  it('with split hours is as cheap as any plan, and meets the bound of the hull', () => {
    for (const seed of SEEDS) {
      const one = smallCase(seed);
      const plan = expectValue(planVolume(one, one.volume));
      expectClose(plan.cost, leastCostShared(one), { relative: 1e-9, absolute: 1e-12 });
      expect(plan.cost).toBe(plan.bound);
      expect(plan.volume).toBeGreaterThanOrEqual(one.volume * (1 - 1e-9));
    }
  });

  it('splits one hour at most, and its parts add up to what it tells', () => {
    for (const seed of SEEDS) {
      const one = smallCase(seed);
      const plan = expectValue(planVolume(one, one.volume));
      expect(plan.slots.filter((parts) => parts.length > 1).length).toBeLessThanOrEqual(1);
      let [volume, cost] = [0, 0];
      for (const [place, slot] of one.slots.entries()) {
        const parts = plan.slots[place] ?? [];
        expectClose(
          parts.reduce((sum, { share }) => sum + share, 0),
          1,
          { relative: 1e-12 },
        );
        for (const { choice, share } of parts) {
          const what = one.choices[choice] ?? { flow: Number.NaN, power: Number.NaN };
          volume += share * volumeOf(what, slot);
          cost += share * costOf(what, slot);
        }
      }
      expectClose(volume, plan.volume, { relative: 1e-9 });
      expectClose(cost, plan.cost, { relative: 1e-9, absolute: 1e-12 });
    }
  });

  it('with whole hours is between the bound and the bound with the gap that it tells', () => {
    let exact = 0;
    for (const seed of SEEDS) {
      const one = smallCase(seed);
      const plan = expectValue(planWholeSlots(one, one.volume));
      const least = Math.min(
        ...wholePlans(one)
          .filter(({ volume }) => volume >= one.volume * (1 - 1e-12))
          .map(({ cost }) => cost),
      );
      expect(plan.volume).toBeGreaterThanOrEqual(one.volume * (1 - 1e-9));
      expect(plan.bound).toBeLessThanOrEqual(least + 1e-12);
      expect(plan.cost).toBeGreaterThanOrEqual(least - 1e-12);
      if (Math.abs(plan.cost - least) < 1e-9) exact += 1;
    }
    expect(exact).toBeGreaterThan(150);
  });
});

describe('a volume', () => {
  const choices = [
    { flow: 0.001, power: 20 },
    { flow: 0.002, power: 80 },
  ];
  const slots = [
    { hours: 1, price: 0.1 },
    { hours: 1, price: 0.4 },
  ];

  it('that no setting can move is a stated failure with the most that can', () => {
    const failure = planVolume({ choices, slots }, 20);
    expect(failure).toMatchObject({ ok: false, failure: { code: 'volume-out-of-reach' } });
    expectClose(failure.ok ? 0 : failure.failure.most, 14.4, { relative: 1e-12 });
  });

  it('by hand: 9 m3 in two hours takes the cheap hour up to half', () => {
    // 3.6 m3 an hour at 20 W, 7.2 at 80 W: 7.2 are moved for 0.002 + 0.008; 1.8 more of the 3.6 that the step of the cheap
    // hour gives, at (0.008 - 0.002)/3.6 a m3.
    const plan = expectValue(planVolume({ choices, slots }, 9));
    expectClose(plan.cost, 0.01 + 0.003, { relative: 1e-12 });
    expect(plan.slots.map((parts) => parts.length)).toEqual([2, 1]);
  });

  it('moves more where a negative price pays for it', () => {
    const plan = expectValue(planVolume({ choices, slots: [{ hours: 1, price: -0.1 }] }, 1));
    expectClose(plan.volume, 7.2, { relative: 1e-12 });
  });
});
