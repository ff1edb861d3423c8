/** Carries a reached limit out of the middle of a root search. */
import type { IntersectionsFailure } from '../../curves/intersections.ts';
import { failed, type Result, success } from '../../curves/result.ts';
import type { UnsolvedNetwork } from './solve-network.ts';

export type Unsolved = UnsolvedNetwork | IntersectionsFailure;

/** Thrown inside a computation, caught by `solving` at its entry, so that it never travels further. */
export class SolveFailure extends Error {
  readonly failure: Unsolved;

  constructor(failure: Unsolved) {
    super(failure.code);
    this.failure = failure;
  }
}

/** What the computation returns, or the failure that ended it. */
export function solving<T>(compute: () => T): Result<T, Unsolved> {
  try {
    return success(compute());
  } catch (error) {
    if (error instanceof SolveFailure) return failed(error.failure);
    throw error;
  }
}
