/** Finds how often a year a failure costs what it can. */

/** One way to fail. */
export interface FailureMode {
  /** [1/year] */
  readonly rate: number;
  /** Part of its required flow that the limiting outlet still receives meanwhile [-], 0..1. */
  readonly servedShare: number;
}

/** What a failure does to the animals. */
export interface RiskTerms {
  /** That they survive it [h]. */
  readonly survivalHours: number;
  /** That a repair takes in the mean [h]. */
  readonly meanRestoreHours: number;
  /** Of its required flow that an outlet must keep [-], 0..1. */
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
