/** What counts as long work. */
import { describe, expect, it } from 'vitest';
import { isLongDutyPoint } from '../../../api/features/duty-point/job.ts';
import { isLongSelection } from '../../../api/features/recommendation/job.ts';
import { isLongPlan } from '../../../api/features/schedule/job.ts';
import { isLongSystemCurve } from '../../../api/features/system-curve/job.ts';
import type { Branch } from '../../../models/loop/loop.ts';
import { compileLoop } from '../../../models/network/compiled-loop.ts';
import { fitPump } from '../../../models/pump/pump-model.ts';
import { expectValue } from '../../curves/expect-value.ts';
import { canister250, kelpFlume } from '../../reference/independent/kelp-flume.ts';

const flume = expectValue(compileLoop(kelpFlume));
const pump = { entered: canister250, fit: expectValue(fitPump(canister250)) };
const pumps = (count: number, step = 1) => {
  const settings = { min: 1, max: 100, step };
  return Array.from({ length: count }, () => ({ ...pump, entered: { ...canister250, settings } }));
};

const outlets = (count: number) => {
  const branches = Array.from({ length: count }, (_, i): Branch => {
    return { run: [], outlet: { name: `o${i}`, requiredFlow: 1e-6 } };
  });
  const discharge = { run: [{ pipe: 'sch40 2', length: 1 }], branches };
  return expectValue(compileLoop({ ...kelpFlume, discharge }));
};

describe('a selection', () => {
  it('of a few pumps on a flume is short', () => {
    expect(isLongSelection(flume, pumps(4))).toBe(false);
    expect(isLongSelection(flume, [])).toBe(false);
  });

  it('is long with many candidates, with many settings, or on a large loop', () => {
    expect(isLongSelection(flume, pumps(1000))).toBe(true);
    expect(isLongSelection(flume, pumps(50, 0.01))).toBe(true);
    expect(isLongSelection(outlets(1000), pumps(1))).toBe(true);
  });

  it('grows with each of them', () => {
    const settings = [1, 0.1, 0.01].map((step) => isLongSelection(flume, pumps(20, step)));
    expect(settings).toEqual(settings.toSorted((a, b) => Number(a) - Number(b)));
  });
});

it('duty points and system curves are long on large loops alone', () => {
  expect([isLongDutyPoint(flume), isLongDutyPoint(outlets(2000))]).toEqual([false, true]);
  expect([isLongSystemCurve(flume, 21), isLongSystemCurve(outlets(100), 500)]).toEqual([false, true]);
});

describe('a plan', () => {
  const night = { name: 'night', from: '22:00', factor: 0.6 };
  const phases = (count: number, facts = {}) =>
    Array.from({ length: count }, (_, i) => ({ ...night, name: `phase ${i}`, ...facts }));

  it('of a day on a flume is short, with ramps and volumes too', () => {
    const volume = { perDay: 50, mayStop: true, splits: true };
    for (const day of [phases(4), phases(4, { rampMinutes: 30 }), phases(2, { factor: undefined, volume })]) {
      expect(isLongPlan(flume, { phases: day }, canister250)).toBe(false);
    }
  });

  it('is long on a large loop, with many phases, or with many sets of shut outlets', () => {
    expect(isLongPlan(outlets(400), { phases: phases(1) }, canister250)).toBe(true);
    expect(isLongPlan(outlets(40), { phases: phases(2) }, canister250)).toBe(false);
    expect(isLongPlan(outlets(40), { phases: phases(24) }, canister250)).toBe(true);
    const openings = Array.from({ length: 8 }, (_, i) => ({ ...night, openings: { [`o${i}`]: 0 as const } }));
    expect(isLongPlan(outlets(40), { phases: openings }, canister250)).toBe(true);
  });
});
