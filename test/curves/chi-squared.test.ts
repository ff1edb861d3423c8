/** Tails of the normal and the chi-squared distribution against their published tables. */
import { describe, it } from 'vitest';
import { chiSquaredTail, normalTail } from '../../curves/chi-squared.ts';
import { expectClose } from '../expect-close.ts';

/** Upper critical values; NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4. */
const PUBLISHED = [
  { degrees: 1, at05: 3.841, at001: 10.828 },
  { degrees: 2, at05: 5.991, at001: 13.816 },
  { degrees: 3, at05: 7.815, at001: 16.266 },
  { degrees: 4, at05: 9.488, at001: 18.467 },
  { degrees: 5, at05: 11.07, at001: 20.515 },
  { degrees: 10, at05: 18.307, at001: 29.588 },
  { degrees: 30, at05: 43.773, at001: 59.703 },
] as const;

describe('the tail of chi-squared', () => {
  it.each(PUBLISHED)(
    'is 0.05 and 0.001 at the published values of $degrees degrees',
    ({ degrees, ...at }) => {
      // What the approximation is stated to keep.
      const relative = degrees === 1 ? 0.2 : 0.1;
      expectClose(chiSquaredTail(at.at05, degrees), 0.05, { relative });
      expectClose(chiSquaredTail(at.at001, degrees), 0.001, { relative });
    },
  );

  it('is exp(-x/2) at two degrees', () => {
    for (const x of [1, 4, 9, 18]) expectClose(chiSquaredTail(x, 2), Math.exp(-x / 2), { relative: 1e-12 });
  });

  it('is 1 at 0', () => {
    for (const degrees of [1, 2, 3, 4]) expectClose(chiSquaredTail(0, degrees), 1, { relative: 1e-12 });
  });
});

describe('the tail of the normal distribution', () => {
  // Two-sided 95, 99 and 99.9 %.
  it.each([
    { x: 1.959964, tail: 0.025 },
    { x: 2.575829, tail: 0.005 },
    { x: 3.290527, tail: 0.0005 },
  ])('is $tail beyond $x, and the rest below -$x', ({ x, tail }) => {
    expectClose(normalTail(x), tail, { absolute: 1e-7 });
    expectClose(normalTail(-x), 1 - tail, { absolute: 1e-7 });
  });
});
