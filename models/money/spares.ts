/** Finds how many spares of a device to keep. */
import { POISSON_COUNT_MAX, poissonAtMost } from '../../curves/poisson.ts';
import { failed, type Result, success } from '../../curves/result.ts';

/** Spares counted at most, of which 95 % are far above what any shelf holds. */
export const SPARES_MAX = 100_000;

/** Spares that are kept. */
export interface Shelf {
  /** [-] */
  readonly spares: number;
  /** That the failures while a new device is under way are no more than the spares [-]. */
  readonly probability: number;
}

/** More spares than are counted: limit [-], and mean demand [-] in one lead time. */
export type SparesFailure = {
  readonly code: 'too-many-spares';
  readonly limit: number;
  readonly meanDemand: number;
};

/**
 * The smallest number of spares that lasts through one lead time with at least `confidence`: least s with
 * P(X <= s) >= confidence, X Poisson with the mean `meanDemand` = failures a device and year x devices x lead time.
 *
 * @param demand meanDemand [-] of 0 or more; confidence [-] in 0..1 without its ends.
 * Errors: `too-many-spares` above SPARES_MAX.
 * Source: Poisson demand during the lead time, the usual rule for spares of long-lived devices (common practice).
 */
export function sparesFor({
  meanDemand,
  confidence,
}: {
  readonly meanDemand: number;
  readonly confidence: number;
}): Result<Shelf, SparesFailure> {
  const probabilityOf = (count: number): number => poissonAtMost({ count, mean: meanDemand });
  let short = -1;
  let enough = Math.min(Math.ceil(meanDemand + 10 * Math.sqrt(meanDemand + 1)) + 10, POISSON_COUNT_MAX);
  if (enough > SPARES_MAX || probabilityOf(enough) < confidence) {
    return failed({ code: 'too-many-spares', limit: SPARES_MAX, meanDemand });
  }
  while (enough - short > 1) {
    const middle = Math.floor((short + enough) / 2);
    if (probabilityOf(middle) >= confidence) enough = middle;
    else short = middle;
  }
  return success({ spares: enough, probability: probabilityOf(enough) });
}
