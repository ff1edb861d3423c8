import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitQuality } from '../../curves/fit-quality.ts';
import { leastSquares } from '../../curves/least-squares.ts';
import { expectClose } from '../expect-close.ts';
import { NIST_LINEAR } from '../reference/nist-linear.ts';
import { expectValue } from './expect-value.ts';

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

describe('least squares against certified values', () => {
  for (const { name, rows, values, expected, standardError, r2, tolerance, source } of NIST_LINEAR) {
    it(`meets ${name} (${source})`, () => {
      const fit = expectValue(leastSquares(rows, values));
      for (const [index, certified] of expected.entries()) {
        expectClose(fit.coefficients[index] ?? Number.NaN, certified, { relative: tolerance });
      }
      const quality = fitQuality({ values, residuals: fit.residuals, parameters: expected.length });
      expectClose(quality.standardError ?? Number.NaN, standardError, { relative: 1e-9 });
      expectClose(quality.r2 ?? Number.NaN, r2, { relative: 1e-12 });
    });
  }
});

describe('least squares', () => {
  const table = fc.array(
    fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: -9, max: 9, noNaN: true })),
    {
      minLength: 5,
      maxLength: 12,
    },
  );

  it('leaves residuals at right angles to every column', () => {
    fc.assert(
      fc.property(table, (points) => {
        const rows = points.map(([x]) => [1, x, x ** 3]);
        const fit = leastSquares(
          rows,
          points.map(([, y]) => y),
        );
        if (!fit.ok) return;
        for (const column of [0, 1, 2]) {
          const product = sum(
            rows.map((row, index) => (row[column] ?? 0) * (fit.value.residuals[index] ?? 0)),
          );
          expectClose(product, 0, { absolute: 1e-9 });
        }
      }),
      { seed: 1 },
    );
  });

  it('gives leverages between 0 and 1 that add up to the number of columns', () => {
    fc.assert(
      fc.property(table, (points) => {
        const fit = leastSquares(
          points.map(([x]) => [1, x, x ** 2]),
          points.map(([, y]) => y),
        );
        if (!fit.ok) return;
        for (const leverage of fit.value.leverages) {
          expect(leverage).toBeGreaterThanOrEqual(-1e-12);
          expect(leverage).toBeLessThanOrEqual(1 + 1e-12);
        }
        expectClose(sum(fit.value.leverages), 3, { absolute: 1e-9 });
      }),
      { seed: 1 },
    );
  });

  it('gives a straight line the leverages 1/n + (x - mean)^2/Sxx of the textbooks', () => {
    // Weisberg (1985), Applied Linear Regression, on the hat matrix of simple regression.
    const xs = [0, 1, 2, 7];
    const fit = expectValue(
      leastSquares(
        xs.map((x) => [1, x]),
        [3, 1, 4, 1],
      ),
    );
    const spread = sum(xs.map((x) => (x - 2.5) ** 2));
    for (const [index, x] of xs.entries()) {
      expectClose(fit.leverages[index] ?? Number.NaN, 1 / 4 + (x - 2.5) ** 2 / spread, { relative: 1e-12 });
    }
  });

  it('measures the condition number of the columns as given', () => {
    // Orthogonal columns: the singular values are their lengths, sqrt 2 x 3 and sqrt 2.
    const fit = expectValue(
      leastSquares(
        [
          [3, 1],
          [3, -1],
        ],
        [1, 2],
      ),
    );
    expectClose(fit.conditionNumber, 3, { relative: 1e-12 });
  });

  it('refuses what is not a finite number', () => {
    expect(leastSquares([[1], [Number.NaN]], [1, 2])).toEqual({ ok: false, failure: { code: 'not-finite' } });
    expect(leastSquares([[1], [1]], [1, Infinity])).toEqual({ ok: false, failure: { code: 'not-finite' } });
  });

  it.each([
    [
      'equal columns',
      [
        [1, 1],
        [1, 1],
        [1, 1],
      ],
    ],
    [
      'dependent columns',
      [
        [1, 2, 3],
        [2, 5, 7],
        [3, 1, 4],
        [4, 4, 8],
      ],
    ],
    [
      'an empty column',
      [
        [1, 0],
        [1, 0],
      ],
    ],
    ['fewer rows than columns', [[1, 2]]],
    ['no columns', [[], []]],
    ['no rows', []],
  ])('refuses %s as singular', (_, rows) => {
    const fit = leastSquares(
      rows,
      rows.map((_row, index) => index),
    );
    expect(!fit.ok && fit.failure.code).toBe('singular');
  });
});
