/** Poisson probabilities and exact intervals against sums, closed forms and published tables. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { poissonAtMost, poissonMeanInterval } from '../../curves/poisson.ts';
import { expectClose } from '../expect-close.ts';

/** Every term by its own product, no logarithm in it. */
function summed(count: number, mean: number): number {
  let term = Math.exp(-mean);
  let sum = term;
  for (let n = 1; n <= count; n += 1) {
    term *= mean / n;
    sum += term;
  }
  return sum;
}

describe('the probability of at most so many events', () => {
  // Cumulative Poisson table of textbooks (Montgomery and Runger, Applied Statistics, appendix; from memory).
  it.each([
    { mean: 0.5, count: 1, expected: 0.9098 },
    { mean: 1, count: 0, expected: 0.3679 },
    { mean: 1, count: 3, expected: 0.981 },
    { mean: 2, count: 4, expected: 0.9473 },
    { mean: 5, count: 5, expected: 0.616 },
    { mean: 10, count: 14, expected: 0.9165 },
  ])('is $expected for $count where $mean are expected', ({ mean, count, expected }) => {
    expectClose(poissonAtMost({ count, mean }), expected, { absolute: 0.5e-4 });
  });

  it('is the sum of its terms', () => {
    const many = fc.record({
      count: fc.integer({ min: 0, max: 300 }),
      mean: fc.double({ min: 1e-6, max: 200, noNaN: true }),
    });
    fc.assert(
      fc.property(many, ({ count, mean }) => {
        expectClose(poissonAtMost({ count, mean }), summed(count, mean), { absolute: 1e-10 });
      }),
      { seed: 1 },
    );
  });

  it('is certain where nothing is expected', () => {
    expect(poissonAtMost({ count: 0, mean: 0 })).toBe(1);
  });

  it('is about a half at a large mean, off by 1/(3 sqrt(2 pi m)) and half a term', () => {
    // Edgeworth: P(X <= m) = 1/2 + (2/3) / sqrt(2 pi m) + O(1/m^1.5).
    const mean = 1e6;
    expectClose(poissonAtMost({ count: mean, mean }), 0.5 + 2 / 3 / Math.sqrt(2 * Math.PI * mean), {
      absolute: 1e-8,
    });
  });
});

describe('the interval of the mean behind a count', () => {
  // Exact 95 % limits as biometric tables print them (Pearson and Hartley, Biometrika Tables, table 40; from memory).
  it.each([
    { count: 0, low: 0, high: 3.689 },
    { count: 1, low: 0.0253, high: 5.572 },
    { count: 2, low: 0.2422, high: 7.225 },
    { count: 3, low: 0.6187, high: 8.767 },
    { count: 5, low: 1.623, high: 11.668 },
    { count: 10, low: 4.795, high: 18.39 },
    { count: 20, low: 12.217, high: 30.888 },
  ])('of $count runs from $low to $high', ({ count, low, high }) => {
    const interval = poissonMeanInterval(count);
    expectClose(interval.low, low, { absolute: 0.6e-3 });
    expectClose(interval.high, high, { absolute: 0.6e-3 });
  });

  it('of no event ends at ln 40, where exp(-m) is 2.5 %', () => {
    expectClose(poissonMeanInterval(0).high, Math.log(40), { relative: 1e-9 });
  });

  it('of many events is that of the normal distribution about them', () => {
    const count = 1_000_000;
    const { low, high } = poissonMeanInterval(count);
    expectClose(high - count, 1.959964 * 1000, { relative: 2e-3 });
    expectClose(count - low, 1.959964 * 1000, { relative: 2e-3 });
  });
});
