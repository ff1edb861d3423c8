/** What the invented cases are like. */
import { describe, expect, it } from 'vitest';
import type { Branch, Outlet } from '../models/loop/loop.ts';
import { mulberry32 } from './random/draw.ts';
import { randomCase } from './random-loop.ts';

const outletsOf = (branch: Branch): readonly Outlet[] =>
  branch.outlet === undefined ? (branch.branches ?? []).flatMap(outletsOf) : [branch.outlet];
const depthOf = (branch: Branch): number => 1 + Math.max(-1, ...(branch.branches ?? []).map(depthOf));

describe('the generator', () => {
  it('gives even numbers below one', () => {
    const random = mulberry32(1);
    const numbers = Array.from({ length: 10_000 }, random);
    expect(numbers.every((number) => number >= 0 && number < 1)).toBe(true);
    // The mean of n uniform numbers lies within 4 / sqrt(12 n) of one half almost always.
    expect(Math.abs(numbers.reduce((sum, number) => sum + number, 0) / 10_000 - 0.5)).toBeLessThan(0.012);
  });

  it('gives the same case for the same seed', () => {
    expect(randomCase({ seed: 5, everyOutlet: false })).toEqual(randomCase({ seed: 5, everyOutlet: false }));
  });

  it.each([false, true])('stays within its sizes, a requirement on every outlet: %s', (everyOutlet) => {
    for (let seed = 1; seed <= 10; seed += 1) {
      const { loop, pump } = randomCase({ seed, everyOutlet });
      const outlets = outletsOf(loop.discharge);
      expect(outlets.length).toBeGreaterThanOrEqual(2);
      expect(outlets.length).toBeLessThanOrEqual(12);
      expect(new Set(outlets.map((outlet) => outlet.name)).size).toBe(outlets.length);
      expect(depthOf(loop.discharge)).toBeLessThanOrEqual(4);
      expect(outlets.some((outlet) => (outlet.requiredFlow ?? 0) > 0)).toBe(true);
      if (everyOutlet) expect(outlets.every((outlet) => outlet.requiredFlow !== undefined)).toBe(true);
      const heads = pump.headPoints.map((point) => point.head);
      expect(pump.headPoints.every((point) => point.flow >= 0)).toBe(true);
      expect(pump.powerPoints.every((point) => point.power > pump.standbyPower)).toBe(true);
      expect(Math.min(...heads)).toBeGreaterThan(0);
    }
  });
});
