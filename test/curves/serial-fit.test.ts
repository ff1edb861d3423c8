/** Generalised least squares against certified values and against the dense equations. */
import { describe, expect, it } from 'vitest';
import { meanVariance, serialFit } from '../../curves/serial-fit.ts';
import { expectClose } from '../expect-close.ts';
import { drawsFrom, mulberry32 } from '../random/draw.ts';
import { NIST_LINEAR } from '../reference/nist-linear.ts';

/** By Gauss with exchange of rows: another way than the one under test. */
function solved(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  for (const column of rows.keys()) {
    const pivot = rows
      .map((row, i) => ({ i, size: i < column ? -1 : Math.abs(row[column] ?? 0) }))
      .reduce((a, b) => (b.size > a.size ? b : a)).i;
    const [upper, lower] = [rows[pivot] ?? [], rows[column] ?? []];
    [rows[column], rows[pivot]] = [upper, lower];
    for (let i = column + 1; i < rows.length; i += 1) {
      const factor = (rows[i]?.[column] ?? 0) / (upper[column] ?? 0);
      rows[i] = (rows[i] ?? []).map((entry, j) => entry - factor * (upper[j] ?? 0));
    }
  }
  const found: number[] = [];
  for (let i = rows.length - 1; i >= 0; i -= 1) {
    const row = rows[i] ?? [];
    const known = found.reduce((sum, one, j) => sum + one * (row[i + 1 + j] ?? 0), 0);
    found.unshift(((row.at(-1) ?? 0) - known) / (row[i] ?? 0));
  }
  return found;
}

const correlations = (times: readonly number[], phi: number) =>
  times.map((a) => times.map((b) => phi ** Math.abs(a - b)));

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, one, i) => sum + one * (b[i] ?? 0), 0);

describe('a serial fit', () => {
  const norris = NIST_LINEAR.find(({ name }) => name === 'Norris');

  it('meets the certified line of Norris where errors do not last (NIST/ITL StRD)', () => {
    if (norris === undefined) throw new Error('no data');
    const times = norris.values.map((_, i) => i);
    const columns = [0, 1].map((j) => norris.rows.map((row) => row[j] ?? 0));
    const fit = serialFit({ times, columns, values: norris.values }, 0);
    for (const [i, certified] of norris.expected.entries()) {
      expectClose(fit?.coefficients[i] ?? Number.NaN, certified, { relative: 1e-7 });
    }
    // Certified residual standard deviation, of 36 points and 2 parameters.
    expectClose(Math.sqrt((fit?.squares ?? 0) / 34), norris.standardError, { relative: 1e-6 });
  });

  const { between } = drawsFrom(mulberry32(5));
  const times = Array.from({ length: 9 }, (_, i) => i * 3 + between(0, 2));
  const values = times.map(() => between(-1, 1));
  const columns = [times.map(() => 1), times.map((time) => Math.max(0, time - 7))];

  it.each([0.3, 0.8, 0.96])("solves X'R^-1 X b = X'R^-1 y as the dense equations do at phi %d", (phi) => {
    const R = correlations(times, phi);
    const weighed = columns.map((column) => solved(R, column));
    const normal = weighed.map((left) => columns.map((column) => dot(left, column)));
    const expected = solved(
      normal,
      weighed.map((left) => dot(left, values)),
    );
    const left = values.map(
      (value, i) =>
        value -
        dot(
          expected,
          columns.map((column) => column[i] ?? 0),
        ),
    );
    const fit = serialFit({ times, columns, values }, phi);
    for (const [i, b] of expected.entries())
      expectClose(fit?.coefficients[i] ?? Number.NaN, b, { relative: 1e-9 });
    expectClose(fit?.squares ?? Number.NaN, dot(left, solved(R, left)), { relative: 1e-9 });
    const [[a = 0, b = 0] = [], [, d = 0] = []] = normal;
    expectClose(fit?.inverse[0]?.[0] ?? Number.NaN, d / (a * d - b * b), { relative: 1e-9 });
    expectClose(fit?.inverse[0]?.[1] ?? Number.NaN, -b / (a * d - b * b), { relative: 1e-9 });
  });

  it('takes the determinants of two values and their level by hand', () => {
    // R = [[1, r], [r, 1]], det 1 - r^2; 1'R^-1 1 = 2/(1 + r).
    const r = 0.6 ** 2;
    const fit = serialFit({ times: [0, 2], columns: [[1, 1]], values: [1, 3] }, 0.6);
    expectClose(fit?.logDeterminant ?? Number.NaN, Math.log(1 - r * r) + Math.log(2 / (1 + r)), {
      relative: 1e-12,
    });
  });

  it('has none where columns are one the other', () => {
    expect(
      serialFit(
        {
          times: [0, 1, 2],
          columns: [
            [1, 1, 1],
            [2, 2, 2],
          ],
          values: [1, 2, 3],
        },
        0.5,
      ),
    ).toBeNull();
  });
});

describe('the variance of a mean', () => {
  it.each([0, 0.5, 0.9])('is n^-2 sum phi^|ti - tj| at phi %d', (phi) => {
    const times = [0, 1, 4, 4.5, 9];
    const all = correlations(times, phi).flat();
    const expected = all.reduce((sum, one) => sum + one, 0) / times.length ** 2;
    expectClose(meanVariance(times, phi), expected, { relative: 1e-12 });
  });
});
