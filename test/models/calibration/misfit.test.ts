/** Readings that no factors bring together. */
import { describe, expect, it } from 'vitest';
import { isFarOff } from '../../../models/calibration/misfit.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { calibrated, curveLoop, normals, pipedLoop, readings, trueDuty } from './synthetic.ts';

const TRUTH = { friction: 1, head: 1, power: 1 };
const NOISE = { flow: 0.01, head: 0.01, power: 0.01 };
const SETTINGS = [50, 60, 80, 100];

/** Flows of all outlets at settings, those of `near` as a share of what they should be. */
function withOutlets(near: number, seed: number): readonly Reading[] {
  const normal = normals(seed);
  return SETTINGS.flatMap((setting) => {
    const { flow, head, outletFlows } = trueDuty(pipedLoop(), TRUTH, setting);
    const [far = Number.NaN, full = Number.NaN] = outletFlows;
    return Array.from({ length: 15 }, (_, time) => ({
      ...{ time, setting, flow: flow * (1 + 0.01 * normal()), head: head * (1 + 0.01 * normal()) },
      outletFlows: { far: far * (1 + 0.01 * normal()), near: near * full * (1 + 0.01 * normal()) },
    }));
  });
}

describe('readings that do not fit', () => {
  it('are the outlet that gives far less than the others say, which keeps the factors from use', () => {
    const { misfits } = calibrated({ loop: pipedLoop() }, withOutlets(0.6, 1));
    expect(misfits[0]).toMatchObject({ measure: 'outletFlow', outlet: 'near' });
    expect(misfits[0]?.off).toBeLessThan(-0.25);
    expect(isFarOff(misfits)).toBe(true);
  });

  it('are hardly ever found where loop and readings agree', () => {
    const seeds = Array.from({ length: 40 }, (_, i) => i + 1);
    const found = seeds.filter(
      (seed) => calibrated({ loop: pipedLoop() }, withOutlets(1, seed)).misfits.length > 0,
    );
    expect(found).toEqual([]);
  });

  it('are settings of which the speed is not what it is entered as, where water is lifted', () => {
    const loop = curveLoop(1.5);
    const normal = normals(3);
    // A controller that runs faster than it says below the full speed.
    const told = SETTINGS.flatMap((setting) =>
      readings(
        { loop, truth: TRUTH, settings: [Math.min(100, setting + 12)], times: 15 },
        { noise: NOISE, normal, kinds: ['flow', 'head'] },
      ).map((one) => ({ ...one, setting })),
    );
    expect(isFarOff(calibrated({ loop }, told).misfits)).toBe(true);
  });

  it('widen the intervals of the factors, as many readings as there may be', () => {
    const halfWidth = (near: number) => {
      const [first] = calibrated({ loop: pipedLoop() }, withOutlets(near, 2)).parameters;
      return (first?.interval.high ?? Number.NaN) - (first?.value ?? Number.NaN);
    };
    expect(halfWidth(0.8)).toBeGreaterThan(5 * halfWidth(1));
  });
});
