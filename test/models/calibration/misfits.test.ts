/** Readings that fit no factors, and calibrations that may not be applied. */
import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { calibrated } from './known-loops.ts';
import { curveLoop, normals, pipedLoop, readings, trueDuty } from './synthetic.ts';

const TRUTH = { friction: 1.2, head: 1, power: 1 };
const SETTINGS = [50, 65, 80, 100];

const flows = (seed: number, { noise = 0.02, times = 2 } = {}): readonly Reading[] =>
  readings(
    { loop: curveLoop(), truth: TRUTH, settings: SETTINGS, times },
    { noise: { flow: noise, head: 0, power: 0.01 }, normal: normals(seed), kinds: ['flow', 'power'] },
  );

/** With the flow of some readings times a factor. */
const slipped = (all: readonly Reading[], places: readonly number[], factor: number): readonly Reading[] =>
  all.map((one, i) => (places.includes(i) ? { ...one, flow: (one.flow ?? 0) * factor } : one));

describe('a reading in another unit', () => {
  it('weighs nothing, is named with its mix-up, and moves no factor', () => {
    // A US gallon is 3.785 412 litres (NIST Special Publication 811, B.8).
    const found = calibrated({ loop: curveLoop() }, slipped(flows(1), [3], 1 / 3.785412));
    const without = calibrated({ loop: curveLoop() }, flows(1).toSpliced(3, 1));
    expect(found.misfits).toHaveLength(1);
    expect(found.misfits[0]).toMatchObject({ measure: 'flow', setting: 65, slip: 'gallons-and-litres' });
    expectClose(found.factors.friction, without.factors.friction, { relative: 0.03 });
    expect(found.refusal).toBeNull();
  });

  it('is refused where over a fifth of the readings are such', () => {
    const found = calibrated({ loop: curveLoop() }, slipped(flows(2), [2, 5], 3.785412));
    expect(found.misfits).toHaveLength(2);
    expect(found.refusal).toMatchObject({
      code: 'readings-do-not-fit',
      measure: 'flow',
      actual: 0.25,
      limit: 0.2,
    });
  });
});

describe('a calibration', () => {
  it('is refused where flows scatter by 15 %', () => {
    const found = calibrated({ loop: curveLoop() }, flows(3, { noise: 0.15, times: 6 }));
    expect(found.refusal).toMatchObject({ code: 'readings-scatter', measure: 'flow', limit: 0.08 });
  });

  it('is refused where the ratio is open by over 30 %', () => {
    // Of a meter that is 20 % off at one standard deviation.
    const meters = [{ measure: 'flow', accuracy: 0.2 }] as const;
    const found = calibrated({ loop: curveLoop(), meters }, flows(4));
    expect(found.refusal).toMatchObject({ code: 'ratio-too-uncertain', limit: 0.3 });
  });

  it('is refused where nothing is determined', () => {
    expect(calibrated({ loop: curveLoop() }, []).refusal).toEqual({ code: 'nothing-determined' });
  });

  it('is not refused where loop and readings agree, and has no misfits', () => {
    for (let seed = 10; seed < 40; seed += 1) {
      const found = calibrated({ loop: curveLoop() }, flows(seed));
      expect(found.refusal).toBeNull();
      expect(found.misfits).toEqual([]);
    }
  });
});

describe('an outlet that gives far less than the others say', () => {
  it('keeps the factors from use: the flows of outlets scatter then', () => {
    const normal = normals(1);
    const read = SETTINGS.flatMap((setting) => {
      const { flow, head, outletFlows } = trueDuty(pipedLoop(), { friction: 1, head: 1, power: 1 }, setting);
      const [far = Number.NaN, near = Number.NaN] = outletFlows;
      const noisy = (value: number) => value * (1 + 0.01 * normal());
      return Array.from({ length: 5 }, (_, time) => ({
        ...{ time, setting, flow: noisy(flow), head: noisy(head) },
        outletFlows: { far: noisy(far), near: noisy(0.6 * near) },
      }));
    });
    expect(calibrated({ loop: pipedLoop() }, read).refusal).toMatchObject({
      ...{ code: 'readings-scatter', measure: 'outletFlow' },
    });
  });
});
