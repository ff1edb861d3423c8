/** The valve that makes a pump feasible, loops that gravity serves, and pumps that move no water or move it backwards. */
import { describe, expect, it } from 'vitest';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { DEFAULT_LIMITS, type Limits } from '../../../models/loop/limits.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import { withMoreFriction } from '../../../models/network/more-friction.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { servedByGravity } from '../../../models/selection/gravity.ts';
import { select } from '../../../models/selection/select.ts';
import { expectClose } from '../../expect-close.ts';
import {
  LH,
  loopOf,
  pipe,
  pumpE,
  pumpW,
  SEA,
  STATED,
} from '../../reference/independent-complementarity/cases.ts';
import { modelOf, pumpModelOf } from '../example-loops.ts';

const running = { price: 0.2, hoursPerDay: 24, elevation: 0 };

/** From a suction of 1 m through a root to one outlet; bores in mm, lengths in m. */
const line = (
  suction: number,
  [bore, length]: readonly [number, number],
  requiredFlow: number,
): PipeworkLoop =>
  loopOf({
    suction: [pipe(suction, 1)],
    discharge: { run: [pipe(bore, length)], outlet: { name: 'end', requiredFlow: requiredFlow * LH } },
  });

function selectionFor(loop: PipeworkLoop, pump: Pump, limits: Partial<Limits> = {}, friction = 1) {
  const model = modelOf(loop);
  return select({
    sampled: sampleLoop(model),
    candidates: [{ pump: pumpModelOf(pump), count: 1 }],
    limits: { ...DEFAULT_LIMITS, ...limits },
    running,
    ...(friction === 1 ? {} : { worstCase: { sampled: sampleLoop(withMoreFriction(model, friction)) } }),
  });
}

const reasonsFor = (...question: Parameters<typeof selectionFor>) =>
  selectionFor(...question).rejected[0]?.outcome.failing.map(({ reason }) => reason);

const cubic = [
  { setting: 100, power: 300 },
  { setting: 50, power: 37.5 },
];

describe('a pump above its greatest flow at every setting', () => {
  const throttled = { ...pumpE, powerPoints: cubic, flowLimits: { max: 6000 * LH } };
  const loop = line(40, [32, 2], 3000);

  it('is throttled by a valve of known Kv (figures of a separate calculation, fresh water of 20 degC)', () => {
    const [rejected] = selectionFor(loop, throttled).rejected;
    expect(rejected?.outcome.failing.map(({ reason }) => reason)).toEqual(['pump-above-maximum']);
    const throttle = rejected?.throttle;
    expect(throttle?.duty.setting).toBe(50);
    expectClose(throttle?.head ?? 0, 0.801424, STATED);
    expectClose(throttle?.kv ?? 0, 10.7011, STATED);
    expectClose(throttle?.duty.power ?? 0, 37.5, STATED);
  });

  it('has the flow of its limit at the least setting that serves (figures of a separate calculation, seawater)', () => {
    const pump = { ...pumpW, flowLimits: { max: 9000 * LH } };
    const [rejected] = selectionFor({ ...line(45, [38, 3], 5000), water: SEA }, pump).rejected;
    const throttle = rejected?.throttle;
    expect(throttle?.duty.setting).toBe(56);
    expectClose((throttle?.duty.flow ?? 0) / LH, 5040, STATED);
    expectClose(throttle?.head ?? 0, 1.04243, STATED);
    expectClose(throttle?.kv ?? 0, 15.7633, STATED);
    expectClose(throttle?.cv ?? 0, 18.2239, STATED);
  });

  it('has no valve where another criterion fails with it, or its flow is not what it fails by', () => {
    const [tooMuch] = selectionFor(line(40, [32, 2], 7000), throttled).rejected;
    expect(tooMuch?.throttle).toBeNull();
    const [weak] = selectionFor({ ...loop, staticHead: 7 }, throttled).rejected;
    expect(weak?.throttle).toBeNull();
  });

  it('has a valve that serves in the worst case too where one is asked for', () => {
    const plain = selectionFor(loop, throttled).rejected[0]?.throttle;
    const assured = selectionFor(loop, throttled, {}, 3).rejected[0]?.throttle;
    // More friction takes flow, so that the valve is set where the requirement has room to spare.
    expect(assured?.duty.setting).toBeGreaterThan(plain?.duty.setting ?? 0);
  });
});

describe('a loop that falls to its outlet', () => {
  it.each([
    [-1, 10_249.4],
    [-0.5, 7077.83],
  ])('by %d m runs at %d L/h without a pump (figures of a separate calculation)', (staticHead, expected) => {
    const sampled = sampleLoop(modelOf({ ...line(40, [40, 4], 3000), staticHead }));
    const gravity = servedByGravity(sampled);
    expectClose((gravity?.flow ?? 0) / LH, expected, STATED);
    expectClose((gravity?.required ?? 0) / LH, 3000, { relative: 1e-12 });
  });

  it('rejects every pump where that is asked for', () => {
    const loop = { ...line(40, [40, 4], 3000), staticHead: -0.2 };
    expect(selectionFor(loop, pumpE).ranking).toHaveLength(1);
    expect(reasonsFor(loop, pumpE, { gravity: 'reject' })).toEqual(['gravity-suffices']);
  });

  it.each<[string, PipeworkLoop]>([
    ['that requires more', { ...line(40, [40, 4], 11_000), staticHead: -1 }],
    ['of no fall', line(40, [40, 4], 3000)],
    [
      'whose outlet has a lower maximum',
      {
        ...line(40, [40, 4], 3000),
        staticHead: -1,
        discharge: {
          run: [pipe(40, 4)],
          outlet: { name: 'end', requiredFlow: 3000 * LH, maximumFlow: 9000 * LH },
        },
      },
    ],
  ])('is none %s', (_, loop) => {
    expect(servedByGravity(sampleLoop(modelOf(loop)))).toBeNull();
    expect(reasonsFor(loop, pumpE, { gravity: 'reject' }) ?? []).not.toContain('gravity-suffices');
  });
});

describe('a pump that moves no water', () => {
  it('is rejected for it, and for the water that it does not give (7 m of lift against 6 m)', () => {
    const loop: PipeworkLoop = {
      ...line(40, [40, 2], 100),
      ...{ staticHead: 7, suction: [] },
    };
    expect(reasonsFor(loop, pumpE)).toEqual(['dead-head', 'not-enough-head']);
  });

  it('is never chosen, even where outlets that feed each other have all that they require', () => {
    // At rest water runs from the higher outlet to the lower one, which has its flow before the pump starts.
    const loop = loopOf({
      staticHead: 2,
      suction: [pipe(40, 1)],
      discharge: {
        run: [pipe(40, 2)],
        branches: [
          { run: [pipe(25, 4)], outlet: { name: 'low', staticHead: -1, requiredFlow: 500 * LH } },
          { run: [pipe(20, 3)], outlet: { name: 'high' } },
        ],
      },
    });
    const [best] = selectionFor(loop, pumpE, { allowReverseFlow: true }).ranking;
    expect(best?.duty.deadHead).toBe(false);
    expect(best?.duty.flow).toBeGreaterThan(0);
  });
});

describe('an outlet that runs backwards', () => {
  const loop = loopOf({
    staticHead: 2,
    suction: [pipe(40, 1)],
    discharge: {
      run: [pipe(40, 2)],
      branches: [
        { run: [pipe(25, 4)], outlet: { name: 'a', staticHead: -1, requiredFlow: 1500 * LH } },
        { run: [pipe(20, 3)], outlet: { name: 'c' } },
      ],
    },
  });
  const pump = { ...pumpE, settings: { min: 50, max: 58, step: 1 } };

  it('rejects the pump, unless that is allowed', () => {
    expect(reasonsFor(loop, pump)).toEqual(['reverse-flow']);
    const [best] = selectionFor(loop, pump, { allowReverseFlow: true }).ranking;
    expect(best?.duty.setting).toBe(50);
  });

  it('does not hide a setting from which on it runs forwards', () => {
    const [best] = selectionFor(loop, pumpE).ranking;
    expect(Math.min(...(best?.duty.outletFlows ?? [-1]))).toBeGreaterThanOrEqual(0);
  });
});
