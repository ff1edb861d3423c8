/** The cautions about what a pump bears at a duty, with their figures: motor, least flow, efficiency, entered powers. */
import { describe, expect, it } from 'vitest';
import { dutyCautions } from '../../../models/cautions/duty-cautions.ts';
import { efficiencyCautions } from '../../../models/cautions/efficiency.ts';
import { powerRangeCautions } from '../../../models/cautions/entered-range.ts';
import { gravityCautions } from '../../../models/cautions/gravity.ts';
import { motorCautions } from '../../../models/cautions/motor.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../expect-close.ts';
import { LH, pumpE } from '../../reference/independent-complementarity/cases.ts';
import { modelOf, pumpModelOf } from '../example-loops.ts';

/** A system known by one point of its curve [L/h, m]. */
const curve = (flow: number, head: number, staticHead = 0): Loop => ({
  ...{ name: 'curve', water: { temperature: 25, salinity: 35 }, pumpElevation: 0, frictionMultiplier: 1 },
  systemCurve: { staticHead, points: [{ flow: flow * LH, head }] },
  outlets: [{ name: 'end', share: 1 }],
});

function cautionsOf(pump: Pump, loop: Loop, { setting = 100, count = 1 } = {}) {
  const model = modelOf(loop);
  const fitted = pumpModelOf(pump);
  const duty = dutyPoint(model, pumpAtSetting(fitted, { setting, count }));
  return dutyCautions({ loop: model, pump: fitted, limits: DEFAULT_LIMITS, elevation: 0 }, duty);
}

describe('a motor', () => {
  it.each([
    [300, 1, 299, true],
    [300, 1, 300, false],
    [500, 2, 240, true],
    [500, 2, 250, false],
    [500, 1, undefined, false],
  ])('of %d W over %d pumps, rated %s W, is overloaded: %s', (power, count, ratedPower, isGiven) => {
    const found = motorCautions({ ratedPower }, { power, count });
    expect(found).toHaveLength(isGiven ? 1 : 0);
    if (!isGiven) return;
    expect(found[0]).toMatchObject({
      ...{ code: 'motor-overload', severity: 'warning', pointer: '/ratedPower', quantity: 'power' },
      ...{ value: power / count, limit: ratedPower },
    });
  });

  it('is judged at a duty, on a system curve too', () => {
    const pump = { ...pumpE, ratedPower: 250 };
    expect(cautionsOf(pump, curve(6000, 3.84)).map(({ code }) => code)).toContain('motor-overload');
  });
});

describe('hardly any flow', () => {
  // Without a best-efficiency point (one power, without flow) below a tenth of the largest entered flow, 9000 L/h.
  it.each([
    [890, true],
    [910, false],
  ])('of %d L/h at full speed is a warning: %s', (flow, isGiven) => {
    const head = 6 * (1 - (flow / 10_000) ** 2);
    const found = cautionsOf(pumpE, curve(flow, head)).find(({ code }) => code === 'low-flow');
    expect(found !== undefined).toBe(isGiven);
    if (found === undefined) return;
    expect(found).toMatchObject({ severity: 'warning', quantity: 'flow' });
    expectClose((found.value ?? 0) / LH, flow, { relative: 1e-6 });
    expectClose((found.limit ?? 0) / LH, 900, { relative: 1e-9 });
  });

  // Power that rises by a straight line in ln P: the best of Q (1 - (Q/10 000)^2) e^(-b Q) lies at the root of
  // 1/Q - 2 Q/(1e8 - Q^2) = b; b = ln(1.5)/8000 L/h gives Q = 5188.8 L/h, a fifth of which is 1037.8 L/h.
  it('is a fifth of the best-efficiency flow where that is known', () => {
    const powerPoints = [0, 4000, 8000].map((flow) => ({
      ...{ setting: 100, flow: flow * LH, power: 200 * 1.5 ** (flow / 8000) },
    }));
    const at = (flow: number) =>
      cautionsOf({ ...pumpE, powerPoints }, curve(flow, 6 * (1 - (flow / 10_000) ** 2))).find(
        ({ code }) => code === 'low-flow',
      );
    expectClose((at(1000)?.limit ?? 0) / LH, 0.2 * bestFlow(Math.log(1.5) / 8000), { relative: 1e-4 });
    expect(at(1100)).toBeUndefined();
  });

  it('is none where no water moves', () => {
    expect(cautionsOf(pumpE, curve(6000, 9, 8)).map(({ code }) => code)).not.toContain('low-flow');
  });
});

/** Root of 1/Q - 2 Q/(1e8 - Q^2) = b by halving [L/h]. */
function bestFlow(b: number): number {
  let [low, high] = [1000, 9000];
  for (let step = 0; step < 60; step += 1) {
    const flow = (low + high) / 2;
    if (1 / flow - (2 * flow) / (1e8 - flow ** 2) > b) low = flow;
    else high = flow;
  }
  return low;
}

describe('an efficiency', () => {
  it.each([
    [0.56, 200, 1, 0.55],
    [0.54, 200, 1, null],
    [0.71, 1900, 1, 0.7],
    [0.69, 1900, 1, null],
    [0.6, 400, 2, 0.55],
    [0.84, 2000, 1, null],
  ])('of %d with %d W over %d pumps is held against %s', (efficiency, power, count, limit) => {
    const found = efficiencyCautions({ efficiency, power, count });
    expect(found).toHaveLength(limit === null ? 0 : 1);
    if (limit === null) return;
    expect(found[0]).toMatchObject({ code: 'efficiency-implausible', severity: 'warning' });
    expect([found[0]?.value, found[0]?.limit]).toEqual([efficiency, limit]);
  });
});

describe('a power beyond the entered ones', () => {
  const pump: Pump = {
    ...pumpE,
    powerPoints: [
      ...[2000, 6000, 9000].map((flow, i) => ({ setting: 100, flow: flow * LH, power: 200 + 40 * i })),
      { setting: 50, power: 40 },
    ],
  };
  const at = (speedRatio: number, flow: number, facts: Partial<Pump> = {}) =>
    powerRangeCautions(pumpModelOf({ ...pump, ...facts }), { speedRatio, flowAtFullSpeed: flow * LH });

  it('states the speed, or the flow at full speed, and the end that it lies beyond', () => {
    expect(at(0.4, 6000)).toMatchObject([
      { code: 'power-extrapolated', severity: 'warning', quantity: 'speed', value: 40, limit: 50 },
    ]);
    const [low] = at(0.7, 1500);
    expect(low).toMatchObject({ quantity: 'flow', pointer: '/powerPoints' });
    expectClose((low?.value ?? 0) / LH, 1500, { relative: 1e-12 });
    expectClose((low?.limit ?? 0) / LH, 2000, { relative: 1e-12 });
    const [high] = at(0.7, 9500);
    expectClose((high?.limit ?? 0) / LH, 9000, { relative: 1e-12 });
    expect(at(0.4, 9500)).toHaveLength(2);
  });

  it('is none between them, at one speed, or where power is entered without flows that enter the fit', () => {
    expect(at(0.5, 2000)).toEqual([]);
    expect(at(1, 9000)).toEqual([]);
    expect(at(0.4, 6000, { powerPoints: [{ setting: 100, power: 300 }] })).toEqual([]);
    // One flow, so that power is the same at every flow.
    const powerPoints = [
      { setting: 100, power: 300, flow: 6000 * LH },
      { setting: 50, power: 40 },
    ];
    expect(at(0.7, 9500, { powerPoints })).toEqual([]);
  });
});

describe('gravity that suffices', () => {
  it('is a note with the flow that runs and the flow that is required', () => {
    expect(gravityCautions({ flow: 2e-3, required: 1e-3 })).toMatchObject([
      { code: 'gravity-suffices', severity: 'note', value: 2e-3, limit: 1e-3, quantity: 'flow' },
    ]);
    expect(gravityCautions(null)).toEqual([]);
  });
});
