import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEAD_CURVE_CANDIDATES } from '../../curves/head-curve-candidates.ts';
import {
  greatestSlope,
  sumOfPowersAt,
  sumOfPowersSlopeAt,
  turningPoints,
} from '../../curves/sum-of-powers.ts';
import { expectClose } from '../expect-close.ts';

const GRID = Array.from({ length: 2001 }, (_, index) => index / 2000);

const shapes = fc
  .tuple(
    fc.constantFrom(...HEAD_CURVE_CANDIDATES),
    fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 4, maxLength: 4 }),
  )
  .map(([powers, numbers]) => ({
    powers: [0, ...powers],
    coefficients: numbers.slice(0, powers.length + 1).map((number) => number / 100),
  }));

describe('a sum of powers', () => {
  it('has the value and slope of 12 - 7x - 4.3x^2', () => {
    const sum = { powers: [0, 1, 2], coefficients: [12, -7, -4.3] };
    expectClose(sumOfPowersAt(sum, 0.5), 7.425, { relative: 1e-14 });
    expectClose(sumOfPowersSlopeAt(sum, 0.5), -11.3, { relative: 1e-14 });
    expect(sumOfPowersAt(sum, 0)).toBe(12);
    expect(sumOfPowersSlopeAt(sum, 0)).toBe(-7);
  });

  it('has a slope that agrees with central differences', () => {
    fc.assert(
      fc.property(shapes, fc.double({ min: 0.01, max: 1, noNaN: true }), (sum, x) => {
        const step = 1e-5;
        const difference = (sumOfPowersAt(sum, x + step) - sumOfPowersAt(sum, x - step)) / (2 * step);
        expectClose(sumOfPowersSlopeAt(sum, x), difference, { relative: 1e-6, absolute: 1e-6 });
      }),
      { seed: 1 },
    );
  });

  it('has no slope on a fine grid above its greatest slope, and comes as near to it', () => {
    fc.assert(
      fc.property(shapes, (sum) => {
        const sampled = Math.max(...GRID.map((x) => sumOfPowersSlopeAt(sum, x)));
        const greatest = greatestSlope(sum);
        expect(greatest).toBeGreaterThanOrEqual(sampled - 1e-12);
        expectClose(greatest, sampled, { absolute: 1e-4 });
      }),
      { seed: 1 },
    );
  });

  it('turns where a fine grid sees its slope change sign', () => {
    fc.assert(
      fc.property(shapes, (sum) => {
        const slopes = GRID.slice(1, -1)
          .map((x) => sumOfPowersSlopeAt(sum, x))
          .filter((slope) => Math.abs(slope) > 1e-12);
        const changes = slopes.filter(
          (slope, index) => index > 0 && slope * (slopes[index - 1] ?? 0) < 0,
        ).length;
        const turns = turningPoints(sum).filter((x) => x > 1 / 2000 && x < 1999 / 2000);
        expect((turns.length - changes) % 2).toBe(0);
        expect(turns.length).toBeGreaterThanOrEqual(changes);
        for (const x of turns) {
          expect(
            sumOfPowersSlopeAt(sum, x * (1 - 1e-7)) * sumOfPowersSlopeAt(sum, x * (1 + 1e-7)),
          ).toBeLessThanOrEqual(0);
        }
      }),
      { seed: 1 },
    );
  });

  it('turns at 1/3 and 1/2 for x - 5x^2/2 + 2x^3, whose slope is (1 - 2x)(1 - 3x)', () => {
    const [first = 0, second = 0] = turningPoints({ powers: [0, 1, 2, 3], coefficients: [0, 1, -2.5, 2] });
    expectClose(first, 1 / 3, { relative: 1e-14 });
    expectClose(second, 1 / 2, { relative: 1e-14 });
  });

  it('does not turn at an inflection, where the slope only touches zero', () => {
    // Slope -(1 - 2x)^2.
    expect(turningPoints({ powers: [0, 1, 2, 3], coefficients: [5, -1, 2, -4 / 3] })).toEqual([]);
  });
});
