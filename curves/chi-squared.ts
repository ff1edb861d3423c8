/** How often chance exceeds a sum of squares. */

/**
 * Probability that a chi-squared variable of k degrees, a whole number from 1 on, exceeds x [-], 0 or more.
 *
 * k even: exp(-x/2) (1 + sum_1^(k-2)/2 x^r/(2 4 .. 2r)); k odd: 2 Q(sqrt x) + sqrt(2/pi) exp(-x/2) sum_1^(k-1)/2
 * x^(r-1/2)/(1 3 .. (2r-1)), Q the normal tail. Accuracy: 2e-7.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.4.4 and 26.4.5 (from memory).
 */
export function chiSquaredTail(x: number, degrees: number): number {
  if (x <= 0) return 1;
  const isOdd = degrees % 2 === 1;
  const root = Math.sqrt(x);
  let term = isOdd ? Math.sqrt(2 / Math.PI) / root : 1;
  let sum = isOdd ? 0 : term;
  for (let divisor = isOdd ? 1 : 2; divisor <= degrees - 2; divisor += 2) {
    term *= x / divisor;
    sum += term;
  }
  const tail = Math.exp(-x / 2) * sum;
  return isOdd ? 2 * normalTail(root) + tail : tail;
}

/** Coefficients of the polynomial of t = 1/(1 + 0.2316419 x). */
const TAIL = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429] as const;

/**
 * Probability [-] that a standard normal variable exceeds x [-], to 7.5e-8.
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.2.17 (from memory).
 */
export function normalTail(x: number): number {
  if (x < 0) return 1 - normalTail(-x);
  const t = 1 / (1 + 0.2316419 * x);
  const sum = TAIL.reduceRight((total, coefficient) => t * (coefficient + total), 0);
  return (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)) * sum;
}
