/** The bad end of a calibrated interval. */
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../models/calibration/assess.ts';
import { ASSUMED_VARIANCES } from '../../../models/calibration/noise.ts';
import { badEndOf } from '../../../models/calibration/worst-case.ts';
import { expectClose } from '../../expect-close.ts';

const assessment = (change: Partial<Assessment>): Assessment => ({
  names: ['friction', 'head'],
  covariance: [
    [0.01, 0],
    [0, 0.0004],
  ],
  standardErrors: [0.1, 0.02],
  conditionNumber: 3,
  variances: ASSUMED_VARIANCES,
  quantiles: [2, 2],
  t: 2,
  ...change,
});

const FACTORS = { friction: 1.3, head: 0.95, power: 1 };
const slopes = { friction: -0.2, head: 0.5, power: 0 };

describe('the bad end of a calibrated interval', () => {
  it('has more friction and less head, together at t standard errors of the margin', () => {
    const bad = badEndOf(FACTORS, assessment({}), { rows: [], slopes });
    expect(bad.friction).toBeGreaterThan(1.3);
    expect(bad.head).toBeLessThan(0.95);
    const margin = slopes.friction * (bad.friction - 1.3) + slopes.head * (bad.head - 0.95);
    expectClose(margin, -2 * Math.hypot(0.2 * 0.1, 0.5 * 0.02), { relative: 1e-12 });
  });

  it('moves friction alone, by t of its standard errors, where it alone moves the margin', () => {
    const bad = badEndOf(FACTORS, assessment({}), { rows: [], slopes: { ...slopes, head: 0 } });
    expectClose(bad.friction, 1.5, { relative: 1e-12 });
    expectClose(bad.head, 0.95, { relative: 1e-12 });
  });

  it('leaves what was not fitted as it is', () => {
    const powerAlone = assessment({ names: ['power'], covariance: [[0.01]], standardErrors: [0.1] });
    expect(badEndOf(FACTORS, powerAlone, { rows: [], slopes })).toEqual({ friction: 1.3, head: 0.95 });
  });

  it('weakens no pump to nothing', () => {
    const vague = assessment({
      covariance: [
        [1e-4, 0],
        [0, 4],
      ],
    });
    expect(badEndOf(FACTORS, vague, { rows: [], slopes }).head).toBe(0.05);
  });
});
