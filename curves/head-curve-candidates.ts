/** Lists the sets of powers that a head curve is chosen from. */

const SINGLE_POWERS = [1, 2, 3, 4, 5, 6] as const;

/** One power of 1..6; two of them; the cubic. Each has a constant as well. */
export const HEAD_CURVE_CANDIDATES: readonly (readonly number[])[] = [
  ...SINGLE_POWERS.map((power) => [power]),
  ...SINGLE_POWERS.flatMap((low) => SINGLE_POWERS.filter((high) => high > low).map((high) => [low, high])),
  [1, 2, 3],
];
