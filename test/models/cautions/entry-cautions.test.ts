/** Entries that look like a slip of unit or of scale: of pumps, of loops, of readings. */
import { describe, expect, it } from 'vitest';
import { loopEntryCautions } from '../../../models/cautions/loop-entry.ts';
import { pumpEntryCautions } from '../../../models/cautions/pump-entry.ts';
import { readingEntryCautions } from '../../../models/cautions/reading-entry.ts';
import type { Loop, RunElement } from '../../../models/loop/loop.ts';
import { enteredEfficiencies } from '../../../models/pump/entered-efficiency.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { LH, pipe, pumpE, SEA_DENSITY } from '../../reference/independent-complementarity/cases.ts';
import { loopOf, modelOf, outlet, pumpModelOf } from '../example-loops.ts';

const codesOf = (pump: Pump) => pumpEntryCautions(pumpModelOf(pump)).map(({ code }) => code);

/** E with its power points in W, at flows in L/h where they are noted. */
const powered = (...points: readonly { setting: number; power: number; flow?: number }[]): Pump => ({
  ...pumpE,
  powerPoints: points.map(({ flow, ...point }) =>
    flow === undefined ? point : { ...point, flow: flow * LH },
  ),
});

/** rho g Q H/P of seawater of 25 degC and 35 g/kg, Q in L/h. */
const efficiency = (flow: number, head: number, power: number): number =>
  (SEA_DENSITY * 9.80665 * flow * LH * head) / power;

describe('the efficiency of entered power points', () => {
  it('without flow is the best over the head points, figures of a separate calculation', () => {
    const small: Pump = {
      ...pumpE,
      headPoints: [0, 30, 60, 90, 120, 150, 180].map((flow) => ({
        ...{ flow: flow * LH, head: 8 * (1 - (flow / 200) ** 2), setting: 100 },
      })),
      powerPoints: [{ setting: 100, power: 400 }],
    };
    // 120 L/h at 5.12 m, and 6000 L/h at 3.84 m.
    expectClose(enteredEfficiencies(pumpModelOf(small))[0] ?? 0, 0.00428, { relative: 2e-3 });
    expectClose(enteredEfficiencies(pumpModelOf(powered({ setting: 100, power: 300 })))[0] ?? 0, 0.214, {
      relative: 2e-3,
    });
    expect(pumpEntryCautions(pumpModelOf(small))).toMatchObject([
      { code: 'efficiency-implausible', severity: 'warning', pointer: '/powerPoints/0', limit: 0.01 },
    ]);
    expect(codesOf(powered({ setting: 100, power: 300 }))).toEqual([]);
  });

  it('is carried to its speed: the same head points give r^3 of the power of water', () => {
    const model = pumpModelOf(powered({ setting: 100, power: 300 }, { setting: 50, power: 37.5 }));
    const [full, half] = enteredEfficiencies(model);
    expectClose(half ?? 0, full ?? 0, { relative: 1e-9 });
  });

  it('with flow takes the head of the curve there, and is left out below a tenth of the largest flow', () => {
    const model = pumpModelOf(
      powered(
        { setting: 100, power: 280, flow: 5000 },
        { setting: 100, power: 240, flow: 890 },
        { setting: 50, power: 40, flow: 2500 },
      ),
    );
    const [first, second, third] = enteredEfficiencies(model);
    // E gives 6 m (1 - 0.25) at 5000 L/h, and a quarter of that at half speed and half flow.
    expectClose(first ?? 0, efficiency(5000, 4.5, 280), { relative: 1e-6 });
    expect(second).toBeNull();
    expectClose(third ?? 0, efficiency(2500, 1.125, 40), { relative: 1e-6 });
  });

  it.each([
    [110, 'below 250 W', 0.55, true],
    [120, 'below 250 W', 0.55, false],
  ])('of %d W %s is held against %d: %s', (power, _, limit, isGiven) => {
    // 64.2 W of water at best: 0.584 of 110 W, 0.535 of 120 W.
    const found = pumpEntryCautions(pumpModelOf(powered({ setting: 100, power })));
    expect(found.length > 0).toBe(isGiven);
    if (isGiven) expect(found[0]?.limit).toBe(limit);
  });

  it.each([
    [10, 900, 0.7, true],
    [10, 930, 0.7, false],
    [100, 7500, 0.85, true],
    [100, 7600, 0.85, false],
  ])('of a pump %d times as large with %d W is held against %d: %s', (times, power, limit, isGiven) => {
    // 642.3 W and 6423 W of water at best.
    const pump = powered({ setting: 100, power });
    const headPoints = pump.headPoints.map((point) => ({ ...point, head: times * point.head }));
    const found = pumpEntryCautions(pumpModelOf({ ...pump, headPoints }));
    expect(found.length > 0).toBe(isGiven);
    if (isGiven) expect(found[0]?.limit).toBe(limit);
  });
});

describe('settings', () => {
  it.each([
    [1, true],
    [2, false],
  ])('that end at %d %% look like fractions: %s', (max, isGiven) => {
    const pump: Pump = {
      ...pumpE,
      settings: { min: 0.3, max, step: 0.1 },
      powerPoints: [{ setting: 1, power: 300 }],
      headPoints: pumpE.headPoints.map((point) => ({ ...point, setting: 1 })),
      speedMap: [
        { setting: 0.3, speed: 30 },
        { setting: max, speed: 100 },
      ],
    };
    const found = pumpEntryCautions(pumpModelOf(pump)).filter(({ code }) => code === 'settings-range');
    expect(found).toHaveLength(isGiven ? 1 : 0);
    if (isGiven) {
      expect(found[0]).toMatchObject({
        ...{ severity: 'warning', pointer: '/settings/max', value: 1, limit: 1, quantity: 'setting' },
      });
    }
  });
});

describe('openings', () => {
  const valve = (opening: number): RunElement => ({ valve: 'ball', opening });

  it('between 0 and 1 % look like fractions, wherever they are', () => {
    const loop: Loop = loopOf(
      { run: [valve(100), valve(0.5)], branches: [outlet('a', {}, [pipe(25, 1), valve(0.25)]), outlet('b')] },
      { suction: [valve(0.9)] },
    );
    const found = loopEntryCautions(loop);
    expect(
      found.map(({ code, severity, pointer, value, limit }) => [code, severity, pointer, value, limit]),
    ).toEqual([
      ['opening-range', 'warning', '/discharge/branches/0/run/1', 0.25, 1],
      ['opening-range', 'warning', '/discharge/run/1', 0.5, 1],
      ['opening-range', 'warning', '/suction/0', 0.9, 1],
    ]);
  });

  it('of 0, of 1 % and of no number are what they are', () => {
    const loop = loopOf(outlet('a', {}, [valve(0), valve(1), { valve: 'ball' }, pipe(25, 1)]));
    expect(loopEntryCautions(loop)).toEqual([]);
  });
});

describe('readings', () => {
  /** A system of 3.84 m at 6000 L/h, which is where E at full speed arrives; one outlet has a quarter. */
  const loop = modelOf({
    ...{ name: 'curve', water: { temperature: 25, salinity: 35 }, pumpElevation: 0, frictionMultiplier: 1 },
    systemCurve: { points: [{ flow: 6000 * LH, head: 3.84 }] },
    outlets: [
      { name: 'near/far', share: 0.25 },
      { name: 'rest', share: 0.75 },
    ],
  });
  const station = { loop, pump: pumpModelOf(powered({ setting: 100, power: 300 })), count: 1 };
  const reading = (facts: Partial<Reading>): Reading => ({ time: 0, setting: 100, ...facts });
  const found = (...readings: readonly Reading[]) => readingEntryCautions(station, readings);

  it.each([
    [60, true],
    [400, false],
    [0, false],
    [119_000, false],
    [121_000, true],
  ])('of %d L/h where 6000 are predicted are far off: %s', (flow, isGiven) => {
    const cautions = found(reading({ flow: flow * LH }));
    expect(cautions.map(({ code }) => code)).toEqual(isGiven ? ['reading-far-off'] : []);
    for (const { value = 0, limit = 0, ...caution } of cautions) {
      expect(caution).toMatchObject({ severity: 'warning', pointer: '/readings/0/flow', quantity: 'flow' });
      expectClose(value / LH, flow, { relative: 1e-12 });
      expectClose(limit / LH, 6000, { relative: 1e-6 });
    }
  });

  it('name the outlet that is far off, the worst first and five at most', () => {
    const flows = [50, 40, 30, 20, 10, 5, 2000];
    const cautions = found(...flows.map((flow) => reading({ outletFlows: { 'near/far': flow * LH } })));
    expect(cautions.map(({ pointer }) => pointer)).toEqual(
      [5, 4, 3, 2, 1].map((index) => `/readings/${index}/outletFlows/near~1far`),
    );
    expectClose((cautions[0]?.limit ?? 0) / LH, 1500, { relative: 1e-6 });
  });

  it('of a pump that is stopped, or that moves no water, are not judged', () => {
    expect(found(reading({ setting: 0, flow: 60 * LH }))).toEqual([]);
    const lifted = modelOf({
      ...{ name: 'lift', water: { temperature: 25, salinity: 35 }, pumpElevation: 0, frictionMultiplier: 1 },
      systemCurve: { staticHead: 8, points: [{ flow: 6000 * LH, head: 9 }] },
      outlets: [{ name: 'end', share: 1 }],
    });
    expect(readingEntryCautions({ ...station, loop: lifted }, [reading({ flow: 60 * LH })])).toEqual([]);
  });
});
