/** Ranking, rejection and their reasons. */
import { describe, expect, it } from 'vitest';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { DEFAULT_LIMITS, type Limits } from '../../../models/loop/limits.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import type { CriterionReason } from '../../../models/selection/criterion.ts';
import { type Candidate, select } from '../../../models/selection/select.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;
const jet = (requiredFlow: number, facts = {}) => outlet('jet', { requiredFlow, ...facts }, [pipe(0.04, 2)]);
const running = { price: 0.2, hoursPerDay: 24, elevation: 0 };

function selectFor(
  loop: PipeworkLoop,
  candidates: readonly Candidate[],
  { limits, price = running.price }: { limits?: Partial<Limits>; price?: number | null } = {},
) {
  return select({
    sampled: sampleLoop(modelOf(loop)),
    candidates,
    limits: { ...DEFAULT_LIMITS, ...limits },
    running: { ...running, price },
  });
}

const one = (facts: Partial<Pump> = {}): Candidate => ({
  pump: pumpModelOf({ ...canister, ...facts }),
  count: 1,
});

function reasonsOf(loop: PipeworkLoop, pump: Partial<Pump> = {}, limits: Partial<Limits> = {}) {
  const [rejected] = selectFor(loop, [one(pump)], { limits }).rejected;
  return rejected?.outcome.failing.map(({ reason }) => reason);
}

const screen = { shape: 'flat', width: 0.1, length: 0.05, openFraction: 0.4, count: 1 } as const;
/** Settings from a high one on, so that a limit on the flow is broken at each. */
const fast = { min: 90, max: 100, step: 1 };
const npshPoints = [{ flow: 0, head: 30 }];

/** A pump of a twelfth of the flow on a loop that hardly resists it. */
const small = { headPoints: canister.headPoints.map((point) => ({ ...point, flow: point.flow / 12 })) };
const wide = outlet('wide', { requiredFlow: 200 * L, nozzleDiameter: 0.04 }, [pipe(0.04, 2)]);

/** Each row breaks its own criterion at every setting, and no other. */
const ALONE: readonly [CriterionReason, PipeworkLoop, Partial<Pump>, Partial<Limits>][] = [
  [
    'efficiency-impossible',
    loopOf(jet(1000 * L)),
    { powerPoints: [{ setting: 100, power: 1 }], standbyPower: 0 },
    {},
  ],
  ['not-enough-head', loopOf(jet(20000 * L)), {}, {}],
  ['outside-data', loopOf(wide), small, {}],
  ['outlet-above-maximum', loopOf(jet(1000 * L, { maximumFlow: 1500 * L })), {}, {}],
  ['screen-velocity', loopOf(jet(1000 * L), { intake: { lossCoefficient: 0.5, screen } }), {}, {}],
  ['pump-below-minimum', loopOf(jet(1000 * L)), { flowLimits: { min: 30000 * L } }, {}],
  ['pump-above-maximum', loopOf(jet(1000 * L)), { flowLimits: { max: 500 * L } }, {}],
  ['npsh', loopOf(jet(1000 * L)), { npshPoints }, { enforceNpsh: true }],
];

describe('a rejection', () => {
  it.each(ALONE)('gives %s alone', (reason, loop, pump, limits) => {
    expect(reasonsOf(loop, pump, limits)).toEqual([reason]);
  });

  it('gives every reason that holds nowhere, in the order of the catalogue', () => {
    const loop = loopOf(jet(20000 * L, { maximumFlow: 100 * L }), {
      intake: { lossCoefficient: 0.5, screen },
    });
    const powerPoints = [{ setting: 100, power: 1 }];
    const pump = { powerPoints, standbyPower: 0, flowLimits: { max: 500 * L }, npshPoints };
    expect(reasonsOf(loop, pump, { enforceNpsh: true })).toEqual([
      'efficiency-impossible',
      'not-enough-head',
      'outlet-above-maximum',
      'screen-velocity',
      'pump-above-maximum',
      'npsh',
    ]);
  });

  it('accepts data far outside when told to', () => {
    const { ranking } = selectFor(loopOf(wide), [one(small)], { limits: { allowExtrapolation: true } });
    expect(ranking).toHaveLength(1);
  });

  it('names two that clash where each criterion holds somewhere', () => {
    const loop = loopOf({
      run: [pipe(0.04, 1)],
      branches: [
        outlet('needs', { requiredFlow: 4000 * L }, [pipe(0.04, 5)]),
        outlet('spares', { maximumFlow: 3000 * L }),
      ],
    });
    const [rejected] = selectFor(loop, [one()]).rejected;
    expect(rejected?.outcome.failing).toEqual([]);
    expect(rejected?.outcome.clash?.map(({ reason }) => reason)).toEqual([
      'not-enough-head',
      'outlet-above-maximum',
    ]);
  });

  it('of a loop that is shut says that no water moves', () => {
    const loop = loopOf(outlet('jet', { requiredFlow: 1000 * L }, [{ valve: 'ball', opening: 0 }]));
    expect(reasonsOf(loop)).toEqual(['dead-head', 'not-enough-head']);
  });
});

describe('the order of candidates', () => {
  const loop = loopOf(jet(3000 * L));
  const order = (candidates: readonly Candidate[], price: number | null = 0.2) =>
    selectFor(loop, candidates, { price }).ranking.map(({ candidate }) => candidate);
  const drawing = (power: number, facts: Partial<Pump> = {}) =>
    one({ powerPoints: [{ setting: 100, power }], ...facts });

  it('is by cost, whatever the place', () => {
    expect(order([drawing(300), drawing(200), drawing(250)])).toEqual([1, 2, 0]);
  });

  it('is by energy without a price', () => {
    const { ranking } = selectFor(loop, [drawing(300), drawing(200)], { price: null });
    expect(ranking.map(({ candidate, annualCost }) => [candidate, annualCost])).toEqual([
      [1, null],
      [0, null],
    ]);
  });

  it('is by energy where energy costs nothing', () => {
    expect(order([drawing(300), drawing(200)], 0)).toEqual([1, 0]);
  });

  it('prefers the most energy where the price is negative', () => {
    expect(order([drawing(300), drawing(200)], -0.1)).toEqual([0, 1]);
  });

  it('is by place where all else is one', () => {
    expect(order([drawing(200), drawing(200), drawing(200)])).toEqual([0, 1, 2]);
  });

  it('is by setting where cost, energy and power are one', () => {
    // The same pump, whose controller counts twice as far: equal speeds at unequal settings.
    const half = drawing(200, {
      settings: { min: 60, max: 200, step: 2 },
      headPoints: canister.headPoints.map((point) => ({ ...point, setting: 200 })),
      powerPoints: [{ setting: 200, power: 200 }],
      speedMap: [
        { setting: 60, speed: 30 },
        { setting: 200, speed: 100 },
      ],
    });
    const { ranking } = selectFor(loop, [half, drawing(200)]);
    const [first, second] = ranking;
    expect(first?.duty.speedRatio).toBe(second?.duty.speedRatio);
    expect(ranking.map(({ candidate }) => candidate)).toEqual([1, 0]);
  });
});

describe('pumps side by side', () => {
  it('are one candidate with totals of power and standby', () => {
    const loop = loopOf(jet(3000 * L));
    const two = { ...one(), count: 2 };
    const { ranking } = selectFor(loop, [two], { price: 1 });
    const [best] = ranking;
    expect(best?.duty.count).toBe(2);
    expect(best?.annualCost).toBe(best?.annualEnergy);
  });
});

describe('a grid of odd steps', () => {
  it.each([0.5, 7, 33])('by %d %% gives a setting of its own', (step) => {
    const settings = { min: 30, max: 100, step };
    const [best] = selectFor(loopOf(jet(3000 * L)), [one({ settings })]).ranking;
    const steps = ((best?.duty.setting ?? Number.NaN) - 30) / step;
    expect(Number.isInteger(steps) || best?.duty.setting === 100).toBe(true);
  });

  it('that starts above what is needed gives its first', () => {
    const [best] = selectFor(loopOf(jet(1000 * L)), [one({ settings: fast })]).ranking;
    expect(best?.duty.setting).toBe(90);
  });
});
