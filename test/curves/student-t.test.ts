/** The quantile of Student's t against its published table and closed forms. */
import { describe, expect, it } from 'vitest';
import { studentT95, studentT95Both } from '../../curves/student-t.ts';
import { expectClose } from '../expect-close.ts';

/** Degrees of freedom 1, 2, .. 30; NIST/SEMATECH e-Handbook of Statistical Methods, upper critical values, 0.05. */
const PUBLISHED = [
  6.314, 2.92, 2.353, 2.132, 2.015, 1.943, 1.895, 1.86, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753,
  1.746, 1.74, 1.734, 1.729, 1.725, 1.721, 1.717, 1.714, 1.711, 1.708, 1.706, 1.703, 1.701, 1.699, 1.697,
] as const;

describe('the one-sided 95 % quantile of Student t', () => {
  it.each(PUBLISHED.map((t, index) => ({ degrees: index + 1, t })))(
    'is $t at $degrees degrees of freedom',
    ({ degrees, t }) => {
      expectClose(studentT95(degrees), t, { absolute: 0.00051 });
    },
  );

  // The same table further down.
  it.each([
    { degrees: 40, t: 1.684 },
    { degrees: 60, t: 1.671 },
    { degrees: 100, t: 1.66 },
  ])('is $t at $degrees degrees of freedom', ({ degrees, t }) => {
    expectClose(studentT95(degrees), t, { absolute: 0.00051 });
  });

  it('is tan(0.45 pi) at one degree of freedom, the quantile of a Cauchy variable', () => {
    expectClose(studentT95(1), Math.tan(0.45 * Math.PI), { relative: 1e-10 });
  });

  it('is 0.9 sqrt(2/(1 - 0.81)) at two, from A = t/sqrt(2 + t^2)', () => {
    expectClose(studentT95(2), 0.9 * Math.sqrt(2 / (1 - 0.9 ** 2)), { relative: 1e-10 });
  });

  it('falls towards the normal quantile 1.644854 as 1/n', () => {
    // Cornish-Fisher: t = z + (z^3 + z)/(4 n) + O(1/n^2).
    const z = 1.6448536269514722;
    for (const degrees of [500, 501, 2000, 10_000]) {
      expectClose(studentT95(degrees), z + (z ** 3 + z) / (4 * degrees), { absolute: 3 / degrees ** 2 });
    }
  });

  it('never rises with the degrees of freedom', () => {
    const values = Array.from({ length: 200 }, (_, index) => studentT95(index + 1));
    expect(values).toEqual(values.toSorted((a, b) => b - a));
  });
});

/** NIST/SEMATECH e-Handbook of Statistical Methods, upper critical values, 0.025. */
describe('the two-sided 95 % quantile of Student t', () => {
  it.each([
    { degrees: 1, t: 12.706 },
    { degrees: 2, t: 4.303 },
    { degrees: 3, t: 3.182 },
    { degrees: 5, t: 2.571 },
    { degrees: 10, t: 2.228 },
    { degrees: 30, t: 2.042 },
    { degrees: 100, t: 1.984 },
  ])('is $t at $degrees degrees of freedom', ({ degrees, t }) => {
    expectClose(studentT95Both(degrees), t, { absolute: 0.00051 });
  });
});
