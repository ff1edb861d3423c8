/** Scales the flow and head of a pump with its speed by the affinity laws. */

interface PumpPoint {
  readonly flow: number;
  readonly head: number;
}

/**
 * The point that a pump at full speed shares with the given one at reduced speed, by the affinity laws:
 * Q1 = Q/r, H1 = H/r^2.
 *
 * @param point flow Q [m3/s]; head H [m]; speedRatio r [-] above 0.
 * @returns flow [m3/s] and head [m] at full speed.
 * Accuracy: exact for a pump whose efficiency does not move with speed; friction inside small pumps makes it drift at
 *   low r.
 * Source: any pump handbook; checked against Crane TP-410 (2009), Example 7-33 (test/curves/affinity.test.ts).
 */
export const toFullSpeed = ({
  flow,
  head,
  speedRatio,
}: PumpPoint & { readonly speedRatio: number }): PumpPoint => ({
  flow: flow / speedRatio,
  head: head / speedRatio ** 2,
});

/**
 * The point that a pump at a speed ratio r shares with the given one at full speed, by the affinity laws: Q = r Q1, H
 * = r^2 H1.
 * The inverse of `toFullSpeed`.
 *
 * @param point flow Q1 [m3/s]; head H1 [m]; speedRatio r [-] of 0 or more.
 * @returns flow [m3/s] and head [m] at that speed, both 0 at r = 0.
 */
export const atSpeed = ({
  flow,
  head,
  speedRatio,
}: PumpPoint & { readonly speedRatio: number }): PumpPoint => ({
  flow: flow * speedRatio,
  head: head * speedRatio ** 2,
});
