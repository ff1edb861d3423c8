/** Finds quantiles of Student's t distribution: 95 % on one side, 95 % on both. */
import { findRoot } from './find-root.ts';

/** Probability between -t and t that leaves 5 % on one side. */
const ONE_SIDED = 0.9;
/** Of a two-sided interval. */
const TWO_SIDED = 0.95;

/**
 * The t that a Student variable stays below with a probability of 95 %, for 1 or more degrees of freedom n, a whole
 * number.
 *
 * Root of A(t|n) = 0.9, with theta = arctan(t/sqrt n):
 * n odd: A = (2/pi) (theta + sin theta (cos + 2/3 cos^3 + .. + 2 4 .. (n-3)/(3 5 .. (n-2)) cos^(n-2)));
 * n even: A = sin theta (1 + 1/2 cos^2 + .. + 1 3 .. (n-3)/(2 4 .. (n-2)) cos^(n-2)).
 * Accuracy: 1e-10; the published table is met to its three decimals (test/curves/student-t.test.ts).
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.7.3 and 26.7.4 (from memory).
 */
export const studentT95 = (degreesOfFreedom: number): number => quantile(ONE_SIDED, degreesOfFreedom);

/** The t between whose negative and which a Student variable lies with a probability of 95 %; likewise. */
export const studentT95Both = (degreesOfFreedom: number): number => quantile(TWO_SIDED, degreesOfFreedom);

function quantile(probability: number, degreesOfFreedom: number): number {
  const root = findRoot({
    evaluate: (theta) => ({ value: centralProbability(theta, degreesOfFreedom) - probability }),
    low: 0,
    high: Math.PI / 2,
    lowValue: -probability,
    highValue: 1 - probability,
  });
  if (!root.ok) throw new Error(`no quantile for ${degreesOfFreedom} degrees of freedom`);
  return Math.sqrt(degreesOfFreedom) * Math.tan(root.value.root);
}

function centralProbability(theta: number, degreesOfFreedom: number): number {
  const squaredCosine = Math.cos(theta) ** 2;
  const isOdd = degreesOfFreedom % 2 === 1;
  let term = isOdd ? Math.cos(theta) : 1;
  let sum = degreesOfFreedom === 1 ? 0 : term;
  for (let power = isOdd ? 3 : 2; power <= degreesOfFreedom - 2; power += 2) {
    term *= squaredCosine * ((power - 1) / power);
    sum += term;
  }
  return isOdd ? (2 / Math.PI) * (theta + Math.sin(theta) * sum) : Math.sin(theta) * sum;
}
