/** How surely rows determine factors, by hand. */
import { describe, expect, it } from 'vitest';
import { studentT95Both } from '../../../curves/student-t.ts';
import {
  type Accuracies,
  covarianceOf,
  errorsOf,
  type WeighedRow,
} from '../../../models/calibration/covariance.ts';
import { expectValue } from '../../curves/expect-value.ts';
import { expectClose } from '../../expect-close.ts';

const NONE: Accuracies = { flow: 0, outletFlow: 0, head: 0, power: 0, pressures: 0 };
const FACTORS = { friction: 2, head: 1, power: 1.5 };

const row = (change: Partial<WeighedRow>): WeighedRow => ({
  ...{ measure: 'power', setting: 80, outlet: null, shut: [], zeroFlow: false, meter: 'power' },
  ...{ weight: 1, squares: 1, scale: 0.02, slopes: { friction: 0, head: 0, power: 1 } },
  ...change,
});

describe('the covariance of factors', () => {
  it("is s2/n of one factor that n readings show, widened by Student's t", () => {
    const rows = [row({ weight: 6, squares: 6 })];
    const found = expectValue(covarianceOf(rows, { names: ['power'], factors: FACTORS, accuracies: NONE }));
    // Degrees: those of the assumed scatter, 4, and 6 readings less 1 factor.
    const expected = (1.5 * 0.02 * (studentT95Both(9) / 1.959964)) / Math.sqrt(6);
    expectClose(errorsOf(found)[0] ?? Number.NaN, expected, { relative: 1e-6 });
  });

  it('does not fall below the accuracy of the meter, as many readings as there may be', () => {
    const rows = [row({ weight: 1e6, squares: 1e6 })];
    const accuracies = { ...NONE, power: 0.02 };
    const found = expectValue(covarianceOf(rows, { names: ['power'], factors: FACTORS, accuracies }));
    expectClose(errorsOf(found)[0] ?? Number.NaN, 1.5 * 0.02, { relative: 1e-4 });
  });

  it('takes the readings of two meters as two errors, those of one as one', () => {
    const flow = { measure: 'flow', meter: 'flow', slopes: { friction: -0.4, head: 0, power: 0 } } as const;
    const outlet = { ...flow, measure: 'outletFlow', meter: 'outletFlow' } as const;
    const many = { weight: 1e6, squares: 1e6 };
    const accuracies = { ...NONE, flow: 0.02, outletFlow: 0.02 };
    const error = (rows: readonly WeighedRow[]) =>
      errorsOf(expectValue(covarianceOf(rows, { names: ['friction'], factors: FACTORS, accuracies })))[0] ??
      Number.NaN;
    const one = (2 * 0.02) / 0.4;
    expectClose(error([row({ ...flow, ...many }), row({ ...flow, ...many, setting: 60 })]), one, {
      relative: 1e-4,
    });
    expectClose(error([row({ ...flow, ...many }), row({ ...outlet, ...many })]), one / Math.SQRT2, {
      relative: 1e-4,
    });
  });

  it('is none where rows do not determine the factors', () => {
    const flows = row({ measure: 'flow', meter: 'flow', slopes: { friction: -0.4, head: 0.4, power: 0 } });
    const names = ['friction', 'head'] as const;
    const found = covarianceOf([flows, flows, flows], { names, factors: FACTORS, accuracies: NONE });
    expect(found.ok).toBe(false);
  });
});
