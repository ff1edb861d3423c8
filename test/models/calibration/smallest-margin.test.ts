/** The worst case of a calibrated region. */
import { describe, expect, it } from 'vitest';
import type { Covariance } from '../../../models/calibration/covariance.ts';
import {
  type SmallestMargin,
  uncertaintyOf,
  worstCaseOf,
} from '../../../models/calibration/smallest-margin.ts';
import { expectClose } from '../../expect-close.ts';

const FACTORS = { friction: 1.3, head: 0.95, power: 1 };
const COVARIANCE: Covariance = {
  names: ['friction', 'head'],
  matrix: [
    [0.01, 0],
    [0, 0.0004],
  ],
  conditionNumber: 3,
};
const margin = (gradient: Partial<SmallestMargin['gradient']> = {}): SmallestMargin => ({
  ...{ outlet: 'far', setting: 80, margin: 0.1 },
  gradient: { friction: -0.2, head: 0.5, power: 0, ...gradient },
});
/** Two-sided 95 % of the normal distribution. */
const Z = 1.959964;

describe('the worst case of a calibration', () => {
  it('has more friction and less head, together at 1.96 standard errors of the margin', () => {
    const worst = worstCaseOf(FACTORS, COVARIANCE, margin());
    expect(worst.friction).toBeGreaterThan(1.3);
    expect(worst.head).toBeLessThan(0.95);
    const moved = -0.2 * (worst.friction - 1.3) + 0.5 * (worst.head - 0.95);
    expectClose(moved, -Z * Math.hypot(0.2 * 0.1, 0.5 * 0.02), { relative: 1e-9 });
  });

  it('moves friction alone, by 1.96 of its standard errors, where it alone moves the margin', () => {
    const worst = worstCaseOf(FACTORS, COVARIANCE, margin({ head: 0 }));
    expectClose(worst.friction, 1.3 + Z * 0.1, { relative: 1e-9 });
    expectClose(worst.head, 0.95, { relative: 1e-12 });
  });

  it('leaves what was not determined as it is', () => {
    const powerAlone: Covariance = { names: ['power'], matrix: [[0.01]], conditionNumber: 1 };
    expect(worstCaseOf(FACTORS, powerAlone, margin())).toEqual({ friction: 1.3, head: 0.95 });
    expect(uncertaintyOf(margin(), powerAlone)).toBeNull();
  });

  it('weakens no pump to nothing', () => {
    const vague = {
      ...COVARIANCE,
      matrix: [
        [1e-4, 0],
        [0, 4],
      ],
    };
    expect(worstCaseOf(FACTORS, vague, margin()).head).toBe(0.05);
  });
});

describe('the uncertainty of a margin', () => {
  it("is sqrt(g'Cg), and 1.96 of it either way", () => {
    const found = uncertaintyOf(margin(), COVARIANCE);
    const error = Math.hypot(0.2 * 0.1, 0.5 * 0.02);
    expectClose(found?.standardError ?? Number.NaN, error, { relative: 1e-12 });
    expectClose(found?.interval?.low ?? Number.NaN, 0.1 - Z * error, { relative: 1e-9 });
    expectClose(found?.interval?.high ?? Number.NaN, 0.1 + Z * error, { relative: 1e-9 });
  });
});
