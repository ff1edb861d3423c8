/** Finds the loss of a rounded entrance. */

/**
 * K [-] of an entrance flush with the wall of a tank, rounded to a radius r, on the velocity in the bore d:
 * K = 0.0696 (1 - 0.569 r/d) L^2 + (L - 1)^2, L = 1 + 0.622 (1 - 0.30 sqrt(r/d) - 0.70 r/d)^4.
 *
 * @param ratio r/d [-], 0 to 1; at 0 it gives 0.57, above the 0.5 that most handbooks round a sharp edge to.
 * Source: Rennels and Hudson, Pipe Flow (2012), rounded entrance flush with a wall.
 */
export function roundedEntranceLoss(ratio: number): number {
  const contraction = 1 + 0.622 * (1 - 0.3 * Math.sqrt(ratio) - 0.7 * ratio) ** 4;
  return 0.0696 * (1 - 0.569 * ratio) * contraction ** 2 + (contraction - 1) ** 2;
}
