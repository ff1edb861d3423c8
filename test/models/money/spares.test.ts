/** Spares on the shelf, against published Poisson tables and a search one by one. */
import { describe, expect, it } from 'vitest';
import { failureRate } from '../../../models/money/failure-rate.ts';
import { SPARES_MAX, sparesFor } from '../../../models/money/spares.ts';
import { expectClose } from '../../expect-close.ts';

const sparesOf = (meanDemand: number, confidence = 0.95) => {
  const shelf = sparesFor({ meanDemand, confidence });
  if (!shelf.ok) throw new Error(shelf.failure.code);
  return shelf.value;
};

describe('spares for a lead time', () => {
  // Cumulative Poisson table of textbooks (from memory): P(X <= 1 | 0.3) 0.9631, P(X <= 2 | 0.8) 0.9526,
  // P(X <= 3 | 1) 0.9810 with P(X <= 2 | 1) 0.9197, P(X <= 5 | 2) 0.9834 with P(X <= 4 | 2) 0.9473.
  it.each([
    { meanDemand: 0.05, spares: 0, probability: 0.9512 },
    { meanDemand: 0.06, spares: 1, probability: 0.9983 },
    { meanDemand: 0.3, spares: 1, probability: 0.9631 },
    { meanDemand: 0.8, spares: 2, probability: 0.9526 },
    { meanDemand: 1, spares: 3, probability: 0.981 },
    { meanDemand: 2, spares: 5, probability: 0.9834 },
  ])('are $spares where $meanDemand failures are expected', ({ meanDemand, spares, probability }) => {
    const shelf = sparesOf(meanDemand);
    expect(shelf.spares).toBe(spares);
    expectClose(shelf.probability, probability, { absolute: 0.6e-4 });
  });

  it('are none where nothing fails', () => {
    expect(sparesOf(0)).toEqual({ spares: 0, probability: 1 });
  });

  it('never get fewer with the demand or the confidence', () => {
    const demands = Array.from({ length: 200 }, (_, index) => 0.1 * index);
    for (const confidence of [0.5, 0.9, 0.95, 0.999]) {
      const spares = demands.map((demand) => sparesOf(demand, confidence).spares);
      expect(spares).toEqual(spares.toSorted((a, b) => a - b));
    }
    expect(sparesOf(3, 0.999).spares).toBeGreaterThan(sparesOf(3, 0.9).spares);
  });

  it('are refused beyond the limit, which is told', () => {
    expect(sparesFor({ meanDemand: 2e5, confidence: 0.95 })).toMatchObject({
      ok: false,
      failure: { code: 'too-many-spares', limit: SPARES_MAX },
    });
  });
});

describe('a failure rate from counts', () => {
  it('of 2 among 10 devices in 3 years is 1/15 a year, by the exact limits 0.2422 and 7.225 of 2 events', () => {
    const { value, low, high } = failureRate({ count: 2, devices: 10, years: 3 });
    expectClose(value, 1 / 15, { relative: 1e-12 });
    expectClose(low, 0.2422 / 30, { relative: 1e-3 });
    expectClose(high, 7.225 / 30, { relative: 1e-3 });
  });

  it('of none is 0, but may be ln 40 over the years watched', () => {
    const { value, low, high } = failureRate({ count: 0, devices: 4, years: 5 });
    expect([value, low]).toEqual([0, 0]);
    expectClose(high, Math.log(40) / 20, { relative: 1e-9 });
  });
});
