import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../curves/least-squares.ts';
import { leaveOneOutMeanSquare } from '../../curves/leave-one-out.ts';
import { expectClose } from '../expect-close.ts';
import { expectValue } from './expect-value.ts';

const rowOf = (x: number): readonly number[] => [1, x, x ** 3];

describe('leave-one-out mean square', () => {
  it('equals refitting without each point in turn', () => {
    const heads = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 6, maxLength: 10 });
    fc.assert(
      fc.property(heads, (values) => {
        const rows = values.map((_, index) => rowOf(index / values.length));
        const errors = values.map((value, left) => {
          const others = <T>(list: readonly T[]): readonly T[] => list.filter((_, index) => index !== left);
          const { coefficients } = expectValue(leastSquares(others(rows), others(values)));
          return value - coefficients.reduce((total, c, index) => total + c * (rows[left]?.[index] ?? 0), 0);
        });
        const refitted = errors.reduce((total, error) => total + error ** 2, 0) / errors.length;
        const byFormula = leaveOneOutMeanSquare(expectValue(leastSquares(rows, values)));
        expectClose(byFormula ?? Number.NaN, refitted, { relative: 1e-8, absolute: 1e-18 });
      }),
      { seed: 1 },
    );
  });

  it('does not exist when a point decides a coefficient alone', () => {
    // The last row alone carries the second column.
    const fit = expectValue(
      leastSquares(
        [
          [1, 0],
          [1, 0],
          [1, 0],
          [1, 5],
        ],
        [1, 2, 3, 4],
      ),
    );
    expect(leaveOneOutMeanSquare(fit)).toBeNull();
  });
});
