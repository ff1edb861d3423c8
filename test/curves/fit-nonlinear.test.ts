/** Non-linear least squares against certified values, and the laws that it keeps. */
import { describe, expect, it } from 'vitest';
import { fitNonlinear } from '../../curves/fit-nonlinear.ts';
import { inverseInformation } from '../../curves/inverse-information.ts';
import { descend } from '../../curves/levenberg-marquardt.ts';
import { expectClose } from '../expect-close.ts';
import { NIST_NONLINEAR } from '../reference/nist-nonlinear.ts';
import { expectValue } from './expect-value.ts';

describe('non-linear least squares against certified values', () => {
  const cases = NIST_NONLINEAR.flatMap((set) =>
    set.starts.map((start, at) => ({ ...set, start, at: at + 1 })),
  );

  it.each(cases)('meets nine digits of $name from start $at', ({ model, start, x, y, ...set }) => {
    const residualsAt = (b: readonly number[]) => {
      const f = model(b);
      return x.map((at, row) => (y[row] ?? Number.NaN) - f(at));
    };
    const fit = expectValue(fitNonlinear({ residualsAt, start }));
    for (const [index, certified] of set.expected.entries()) {
      expectClose(fit.parameters[index] ?? Number.NaN, certified, { relative: set.tolerance });
    }
    expectClose(fit.sumOfSquares, set.sumOfSquares, { relative: 1e-9 });
    const variance = fit.sumOfSquares / (x.length - start.length);
    const { matrix } = expectValue(inverseInformation(fit.jacobian));
    for (const [index, deviation] of set.deviations.entries()) {
      const standardError = Math.sqrt(variance * (matrix[index]?.[index] ?? Number.NaN));
      // Six digits: those that central differences and the square of the condition number leave.
      expectClose(standardError, deviation, { relative: 1e-6 });
    }
  });
});

describe('non-linear least squares', () => {
  const line = (b: readonly number[]) => [1, 2, 3].map((x) => (b[0] ?? 0) * x + (b[1] ?? 0) - 2 * x);

  it('keeps to its bounds and says so', () => {
    const fit = expectValue(fitNonlinear({ residualsAt: line, start: [1, 1], low: [0, 0.5], high: [9, 9] }));
    expectClose(fit.parameters[1] ?? Number.NaN, 0.5, { absolute: 1e-12 });
    expect(fit.atBound).toBe(true);
  });

  it('is at no bound where it has none', () => {
    expect(expectValue(fitNonlinear({ residualsAt: line, start: [1, 1] })).atBound).toBe(false);
  });

  it('answers that two parameters which act alike are not settled', () => {
    const fit = fitNonlinear({
      residualsAt: ([a = 0, b = 0]) => [1, 2, 3].map((x) => (a / b) * x - 2 * x),
      start: [1, 1],
    });
    expect(fit).toMatchObject({ ok: false, failure: { code: 'singular' } });
  });

  it('answers that there are fewer rows than parameters', () => {
    const fit = fitNonlinear({ residualsAt: ([a = 0]) => [a - 1], start: [1, 1] });
    expect(fit).toEqual({
      ok: false,
      failure: { code: 'fewer-rows-than-parameters', rows: 1, parameters: 2 },
    });
  });

  it('answers that the steps come to no end where the least is nowhere', () => {
    const fit = fitNonlinear({ residualsAt: ([a = 0]) => [Math.exp(-a)], start: [1], isNear: true });
    expect(fit).toMatchObject({ ok: false, failure: { code: 'not-settled' } });
  });

  it('answers that there is nothing to start from', () => {
    const fit = fitNonlinear({ residualsAt: () => [Number.NaN], start: [1] });
    expect(fit).toEqual({ ok: false, failure: { code: 'not-finite' } });
  });
});

describe('damped steps', () => {
  it('never end worse than they began', () => {
    for (const { model, starts, x, y } of NIST_NONLINEAR) {
      for (const start of starts) {
        const residualsAt = (units: readonly number[]) => {
          const f = model(units.map((unit, index) => unit * (start[index] ?? 1)));
          return x.map((at, row) => (y[row] ?? Number.NaN) - f(at));
        };
        const units = start.map(() => 1);
        const bounds = { low: units.map(() => -1e3), high: units.map(() => 1e3) };
        const { sumOfSquares } = descend(residualsAt, { start: units, ...bounds, steps: 3 });
        const before = residualsAt(units).reduce((total, residual) => total + residual ** 2, 0);
        expect(sumOfSquares).toBeLessThanOrEqual(before);
      }
    }
  });
});

describe('the covariance that rows leave', () => {
  it('is the inverse of J transposed J', () => {
    // J'J = [[2, 1], [1, 2]], whose inverse is [[2, -1], [-1, 2]]/3.
    const { matrix, conditionNumber } = expectValue(
      inverseInformation([
        [1, 0],
        [0, 1],
        [1, 1],
      ]),
    );
    for (const [i, row] of [
      [2 / 3, -1 / 3],
      [-1 / 3, 2 / 3],
    ].entries()) {
      for (const [j, entry] of row.entries())
        expectClose(matrix[i]?.[j] ?? Number.NaN, entry, { absolute: 1e-12 });
    }
    // Columns of unit length meet at cos = 1/2: singular values sqrt(1 +- 1/2).
    expectClose(conditionNumber, Math.sqrt(3), { relative: 1e-12 });
  });

  it('does not depend on the units of a parameter', () => {
    const rows = [
      [1, 2e-6],
      [1, -1e-6],
      [0.5, 4e-6],
    ] as const;
    const plain = expectValue(inverseInformation(rows));
    const other = expectValue(inverseInformation(rows.map(([a, b]) => [a, 1e6 * b])));
    expectClose(other.conditionNumber, plain.conditionNumber, { relative: 1e-9 });
    expectClose(other.matrix[0]?.[0] ?? Number.NaN, plain.matrix[0]?.[0] ?? Number.NaN, { relative: 1e-9 });
  });

  it.each([
    { rows: [] },
    {
      rows: [
        [1, 1],
        [2, 2],
      ],
    },
    {
      rows: [
        [1, 0],
        [2, 0],
      ],
    },
  ])('is none for $rows', ({ rows }) => {
    expect(inverseInformation(rows)).toMatchObject({ ok: false, failure: { code: 'singular' } });
  });
});
