/** Finds how often a year a failure costs what it can. */

/** One way to fail: its rate a year, and what part of its need the worst-served outlet still gets meanwhile, 0..1. */
export interface FailureMode {
  readonly rate: number;
  readonly servedShare: number;
}

/** How long the animals bear it, and how long a repair takes in the mean [h]. */
export interface RiskTerms {
  readonly survivalHours: number;
  readonly meanRestoreHours: number;
  /** The share of its required flow that an outlet must keep, 0..1. */
  readonly neededShare: number;
}

const EQUAL = 1e-9;

/**
 * Losses a year, in units of the value at risk: the sum over the failure modes of rate x [served share below need] x
 * exp(-survivalHours/meanRestoreHours).
 *
 * The time to restore is taken as exponential about its mean, so that the last factor is the probability that the repair takes
 * longer than the animals bear (test/models/money/decisions.test.ts against a simulation). A mean of 0 restores at once.
 */
export function lossesPerYear(
  modes: readonly FailureMode[],
  { survivalHours, meanRestoreHours, neededShare }: RiskTerms,
): number {
  const tooLate = meanRestoreHours === 0 ? 0 : Math.exp(-survivalHours / meanRestoreHours);
  return modes.reduce(
    (sum, { rate, servedShare }) => sum + (servedShare < neededShare - EQUAL ? rate * tooLate : 0),
    0,
  );
}
