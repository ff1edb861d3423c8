import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEVIATE_95, median, TREND_POINTS_MAX, type TrendPoint, theilSen } from '../../curves/theil-sen.ts';
import { expectClose } from '../expect-close.ts';
import { mulberry32 } from '../random/draw.ts';
import { SEN } from '../reference/trend.ts';

const trendOf = (points: readonly TrendPoint[], deviate = DEVIATE_95) => {
  const trend = theilSen(points, deviate);
  if (trend === null) throw new Error('no trend');
  return trend;
};

describe('the Theil-Sen trend', () => {
  it.each(SEN)('meets $source', ({ points, deviate, expected, tolerance }) => {
    const { slope, interval, intercept } = trendOf(points, deviate);
    expectClose(slope, expected.slope, { relative: tolerance });
    expectClose(interval.low, expected.low, { relative: tolerance });
    expectClose(interval.high, expected.high, { relative: tolerance });
    expectClose(intercept, expected.intercept, { relative: tolerance });
  });

  it('is the line itself where points lie on one, in any order', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 30 }),
        fc.integer({ min: -9, max: 9 }),
        fc.integer({ min: -50, max: 50 }),
        (xs, slope, intercept) => {
          const trend = trendOf(xs.map((x) => ({ x, y: intercept + slope * x })));
          expectClose(trend.slope, slope, { absolute: 1e-12 });
          expectClose(trend.intercept, intercept, { absolute: 1e-9 });
        },
      ),
      { seed: 1 },
    );
  });

  it('goes with shifts and scales of both axes', () => {
    const { points } = SEN[0];
    const base = trendOf(points);
    const moved = trendOf(points.map(({ x, y }) => ({ x: 5 + 2 * x, y: 1 - 3 * y })));
    expectClose(moved.slope, (-3 / 2) * base.slope, { relative: 1e-12 });
    expectClose(moved.interval.low, (-3 / 2) * base.interval.high, { relative: 1e-12 });
    expectClose(moved.interval.high, (-3 / 2) * base.interval.low, { relative: 1e-12 });
  });

  it('takes no notice of what lies between blocks, and goes through the last one', () => {
    const line = (block: number, shift: number) =>
      [0, 1, 2, 3].map((x) => ({ x: 4 * block + x, y: shift + 3 * x, block }));
    const { slope, intercept } = trendOf([...line(0, 50), ...line(1, -7), ...line(2, 1)]);
    expectClose(slope, 3, { absolute: 1e-12 });
    expectClose(intercept, 1 - 3 * 8, { absolute: 1e-12 });
    expect(theilSen([0, 1, 2].map((x) => ({ x, y: x, block: x })))).toBeNull();
  });

  it('is moved by less than 5 % by wild points, one in ten', () => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const random = mulberry32(seed);
      const clean = Array.from({ length: 365 }, (_, day) => ({
        x: day / 365,
        y: -0.12 * (day / 365) + 0.01 * (random() + random() + random() - 1.5),
      }));
      const wild = clean.map((point) => (random() < 0.1 ? { ...point, y: 5 * random() } : point));
      expect(wild.filter((point, i) => point !== clean[i]).length).toBeGreaterThan(20);
      const [before, after] = [trendOf(clean), trendOf(wild)];
      expect(Math.abs(after.slope / before.slope - 1)).toBeLessThan(0.05);
    }
  });

  it('has the true slope within its interval in 95 % of seeded runs, give or take', () => {
    let inside = 0;
    const runs = 400;
    for (let seed = 1; seed <= runs; seed += 1) {
      const random = mulberry32(seed);
      const points = Array.from({ length: 30 }, (_, x) => ({ x, y: 2 * x + random() + random() - 1 }));
      const { low, high } = trendOf(points).interval;
      if (low <= 2 && 2 <= high) inside += 1;
    }
    expect(inside / runs).toBeGreaterThan(0.92);
    expect(inside / runs).toBeLessThan(0.99);
  });

  it('leaves everything possible where points are few', () => {
    const { interval } = trendOf([
      { x: 0, y: 0 },
      { x: 1, y: 1 },
    ]);
    expect(interval).toEqual({ low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY });
  });

  it('is none at one place, and refuses more points than it can pair', () => {
    expect(
      theilSen([
        { x: 1, y: 1 },
        { x: 1, y: 2 },
      ]),
    ).toBeNull();
    expect(theilSen([])).toBeNull();
    const many = Array.from({ length: TREND_POINTS_MAX + 1 }, (_, x) => ({ x, y: x }));
    expect(() => theilSen(many)).toThrow('points');
  });
});

describe('the median', () => {
  it('is the middle, or half way between the two in the middle', () => {
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 3, 2])).toBe(2.5);
    expect(median([])).toBeNaN();
  });
});
