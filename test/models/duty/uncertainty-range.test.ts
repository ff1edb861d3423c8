/** What a duty may be off by: bounds that hold the duty, and the pumps that set them. */
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { uncertaintyRange } from '../../../models/duty/uncertainty-range.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import type { Grade } from '../../../models/pump/tolerance-grades.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, LITRE_PER_HOUR, modelOf, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;
/** Three points: a curve of two coefficients meets them with one degree of freedom, here without any scatter. */
const pump = pumpModelOf(canister);
const fitOnly = { ...pump, fit: { ...pump.fit, headCurve: { ...pump.fit.headCurve, standardError: null } } };
/** H = k Q^2 through 8000 L/h at 3 m. */
const loop = modelOf({
  ...{ name: 'curve', water: { temperature: 25, salinity: 35 }, pumpElevation: 0, frictionMultiplier: 1 },
  systemCurve: { points: [{ flow: 8000 * L, head: 3 }] },
  outlets: [{ name: 'all', share: 1, requiredFlow: 6000 * L }],
});
const duty = dutyPoint(loop, pumpAtSetting(pump, { setting: 100, count: 1 }));
const rangeAt = (grade: Grade | null, of = pump) =>
  uncertaintyRange({ pump: of, grade, duty, land: (at) => dutyPoint(loop, at) });

describe('the uncertainty of a duty', () => {
  it('is where the low and the high curve meet the loop', () => {
    // Crossings by hand, in thousands of L/h: 3 (q/8)^2 = 6 - 4 (q/(12 s))^2 with s = 0.92, 1 and 1.08 of grade 2B, or
    // with 0.95 and 1.05 times the head.
    const crossing = (head: number, flow: number) =>
      Math.sqrt((6 * head) / (3 / 64 + (4 * head) / (12 * flow) ** 2)) * 1000 * L;
    const range = rangeAt('2B', fitOnly);
    expectClose(range.flow.low, Math.min(crossing(0.95, 1), crossing(1, 0.92)), { relative: 1e-8 });
    expectClose(range.flow.high, Math.max(crossing(1.05, 1), crossing(1, 1.08)), { relative: 1e-8 });
  });

  it('has (1 + tP) times the power at its top, and the power as entered at its bottom', () => {
    // The canister has one power point, so that its power does not move with flow.
    const range = rangeAt('2B');
    expectClose(range.power.low, 250, { relative: 1e-9 });
    expectClose(range.power.high, 1.08 * 250, { relative: 1e-9 });
  });

  it('holds the duty, and widens with the grade', () => {
    const ranges = ([null, '1B', '2B', '3B'] as const).map((grade) => rangeAt(grade));
    const lows = ranges.map((range) => range.flow.low);
    const highs = ranges.map((range) => range.flow.high);
    expect(lows).toEqual(lows.toSorted((a, b) => b - a));
    expect(highs).toEqual(highs.toSorted((a, b) => a - b));
    expect(lows[0]).toBeLessThanOrEqual(duty.flow);
    expect(highs[0]).toBeGreaterThanOrEqual(duty.flow);
  });

  it('never lowers the flow of a grade that only gives more', () => {
    expectClose(rangeAt('1U', fitOnly).flow.low, duty.flow, { relative: 1e-9 });
  });

  it('holds other duties too', () => {
    const others = [{ flow: duty.flow / 2 }];
    const range = uncertaintyRange({ pump, grade: '2B', duty, land: (at) => dutyPoint(loop, at), others });
    expect(range.flow.low).toBe(duty.flow / 2);
  });

  it('has equal ends without grade and error of fit, within the entered speeds and flows', () => {
    const { grade, flow, power, lawsPower } = rangeAt(null, fitOnly);
    expect(grade).toBeNull();
    expect(flow).toEqual({ low: duty.flow, high: duty.flow });
    expect(power).toEqual({ low: duty.power, high: duty.power });
    expect(lawsPower).toEqual(power);
  });
});

describe('the uncertainty of a pump that two head points make', () => {
  /** 6 m at no flow, 2.4 m at 7000 L/h. */
  const assumed = pumpModelOf({
    ...canister,
    headPoints: [
      { flow: 0, head: 6, setting: 100 },
      { flow: 7000 * L, head: 2.4, setting: 100 },
    ],
  });

  it.each([
    { at: 5000, head: 3, flow: 5568.9, low: 5245.77, high: 5765.33 },
    // Beyond the larger flow each shape goes on along its own tangent.
    { at: 9000, head: 1.2, flow: 8333.15, low: 7948.85, high: 9218.61 },
  ])('includes a straight line and a cube: system of $head m at $at L/h (a separate calculation)', (row) => {
    const system = modelOf({
      ...loop.entered,
      systemCurve: { points: [{ flow: row.at * L, head: row.head }] },
      outlets: [{ name: 'all', share: 1 }],
    });
    const landed = dutyPoint(system, pumpAtSetting(assumed, { setting: 100, count: 1 }));
    const range = uncertaintyRange({
      ...{ pump: assumed, grade: null, duty: landed, land: (at) => dutyPoint(system, at) },
    });
    expectClose(landed.flow / L, row.flow, { relative: 1e-5 });
    expectClose(range.flow.low / L, row.low, { relative: 1e-5 });
    expectClose(range.flow.high / L, row.high, { relative: 1e-5 });
  });

  it('widens with a grade', () => {
    const landed = dutyPoint(loop, pumpAtSetting(assumed, { setting: 100, count: 1 }));
    const ends = (grade: Grade | null) =>
      uncertaintyRange({ pump: assumed, grade, duty: landed, land: (at) => dutyPoint(loop, at) }).flow;
    expect(ends('2B').low).toBeLessThan(ends(null).low);
    expect(ends('2B').high).toBeGreaterThan(ends(null).high);
  });
});

describe('the power of a pump outside its entered speeds', () => {
  it('lies between what both laws give, whatever the flow', () => {
    const run = pumpModelOf({ ...canister, powerPoints: [{ setting: 100, power: 245 }], standbyPower: 3 });
    const slow = dutyPoint(loop, pumpAtSetting(run, { setting: 40, count: 2 }));
    const range = uncertaintyRange({ pump: run, grade: '2B', duty: slow, land: (at) => dutyPoint(loop, at) });
    // 3 + 242 (s + (1 - s) 0.4^3) W a pump, s = 0 and 0.2.
    expectClose(slow.power, 2 * 36.609, { relative: 1e-5 });
    expectClose(range.lawsPower.low, 2 * 18.488, { relative: 1e-5 });
    expectClose(range.lawsPower.high, 2 * 63.7904, { relative: 1e-5 });
    expectClose(range.power.low, 2 * 18.488, { relative: 1e-5 });
    expectClose(range.power.high, 1.08 * 2 * 63.7904, { relative: 1e-5 });
  });
});
