/** Finds how probable few events are, and the mean that a count points to, by the Poisson distribution. */
import { findRoot } from './find-root.ts';

const HALF_OUTSIDE = 0.025;
/** Terms this small beside their sum change nothing that is kept of it. */
const NEGLIGIBLE = 1e-18;
export const POISSON_COUNT_MAX = 1_000_000;

const TABLED = 20;
const LOG_FACTORIALS = Array.from({ length: TABLED }, (_, n) => {
  let sum = 0;
  for (let factor = 2; factor <= n; factor += 1) sum += Math.log(factor);
  return sum;
});

/** ln n!, by the series of Stirling from TABLED on (Abramowitz and Stegun 1964, 6.1.41; to 1e-12 there). */
function logFactorial(n: number): number {
  const tabled = LOG_FACTORIALS[n];
  if (tabled !== undefined) return tabled;
  const x = n + 1;
  const series = 1 / (12 * x) - 1 / (360 * x ** 3) + 1 / (1260 * x ** 5);
  return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + series;
}

const probabilityOf = (count: number, mean: number): number =>
  Math.exp(count * Math.log(mean) - mean - logFactorial(count));

/** P(X <= count) where count is below the mean: terms fall from the first on. */
function lowerTail(count: number, mean: number): number {
  let term = probabilityOf(count, mean);
  let sum = term;
  for (let n = count; n > 0 && term > NEGLIGIBLE * sum; n -= 1) {
    term *= n / mean;
    sum += term;
  }
  return sum;
}

/** P(X > count) where count is at or above the mean. */
function upperTail(count: number, mean: number): number {
  let term = probabilityOf(count + 1, mean);
  let sum = term;
  for (let n = count + 2; term > NEGLIGIBLE * sum; n += 1) {
    term *= mean / n;
    sum += term;
  }
  return sum;
}

/**
 * The probability that at most `count` events happen where `mean` are expected: P = sum of exp(-m) m^n/n!, n = 0..count.
 *
 * `count` a whole number 0..POISSON_COUNT_MAX, `mean` at or above 0, finite. Accuracy: 1e-10, against sums of exact terms and
 * the published table (test/curves/poisson.test.ts).
 */
export function poissonAtMost({ count, mean }: { readonly count: number; readonly mean: number }): number {
  if (mean === 0) return 1;
  return count < mean ? lowerTail(count, mean) : 1 - upperTail(count, mean);
}

export interface MeanInterval {
  readonly low: number;
  readonly high: number;
}

/** A bracket that no end of an interval leaves: ten standard deviations about the count, and then some. */
const farAbove = (count: number): number => count + 10 * Math.sqrt(count + 1) + 10;

/**
 * The exact central 95 % interval of the mean of a Poisson variable of which `count` events were seen: below `low`, so many
 * events or more have a probability of 2.5 % at most, above `high` so few or fewer; `low` is 0 for no event.
 *
 * `count` a whole number 0..POISSON_COUNT_MAX. Source: Garwood (1936), Fiducial limits for the Poisson distribution,
 * Biometrika 28, 437-442.
 */
export function poissonMeanInterval(count: number): MeanInterval {
  const meanAt = (probability: (mean: number) => number): number => {
    const root = findRoot({
      evaluate: (mean) => ({ value: probability(mean) - HALF_OUTSIDE }),
      low: 0,
      high: farAbove(count),
    });
    if (!root.ok) throw new Error(`invariant: no interval for ${count} events`);
    return root.value.root;
  };
  return {
    low: count === 0 ? 0 : meanAt((mean) => 1 - poissonAtMost({ count: count - 1, mean })),
    high: meanAt((mean) => poissonAtMost({ count, mean })),
  };
}
