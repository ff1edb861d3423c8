/** Chooses among fitted candidates the simplest of those that predict about as well as the best. */

interface Candidate {
  readonly powers: readonly number[];
  /** Leave-one-out mean square. */
  readonly meanSquare: number;
}

/** Errors within this factor of the least are as good as the least. */
const AS_GOOD = 1.05;

/**
 * The simplest of the candidates that predict about as well as the best.
 *
 * Of those whose mean square is within 1.05 of the least: the fewest powers, then the least mean square, then the
 * lowest powers.
 * @param candidates powers of x [-], ascending, and the leave-one-out mean square [square of the unit fitted].
 * @param floor [square of the unit fitted]: a mean square below it counts as it, so that rounding never decides
 *   between exact fits.
 * @returns undefined where there is no candidate.
 */
export function chooseCandidate<T extends Candidate>(candidates: readonly T[], floor: number): T | undefined {
  const error = (candidate: T): number => Math.max(candidate.meanSquare, floor);
  const limit = AS_GOOD * Math.min(...candidates.map(error));
  return candidates
    .filter((candidate) => error(candidate) <= limit)
    .toSorted(
      (a, b) =>
        a.powers.length - b.powers.length || error(a) - error(b) || firstDifference(a.powers, b.powers),
    )[0];
}

const firstDifference = (a: readonly number[], b: readonly number[]): number =>
  a.map((power, index) => power - (b[index] ?? 0)).find((difference) => difference !== 0) ?? 0;
