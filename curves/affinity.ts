/** Speed scaling of flow and head by the affinity laws. */

interface PumpPoint {
  readonly flow: number;
  readonly head: number;
}

/**
 * The point that a pump at full speed shares with the given one at reduced speed, by the affinity laws:
 * Q1 = Q / r, H1 = H / r^2.
 *
 * `flow` [m3/s], `head` [m], `speedRatio` r [-] above 0; the answer in the same units. Exact for a pump whose efficiency
 * does not move with speed; friction inside small pumps makes it drift at low r.
 *
 * Source: any pump handbook; checked against Crane TP-410 (2009), Example 7-33.
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
 * The point that a pump at `speedRatio` r shares with the given one at full speed, by the affinity laws:
 * Q = r Q1, H = r^2 H1. Inverse of `toFullSpeed`; at r = 0 flow and head are 0.
 */
export const atSpeed = ({
  flow,
  head,
  speedRatio,
}: PumpPoint & { readonly speedRatio: number }): PumpPoint => ({
  flow: flow * speedRatio,
  head: head * speedRatio ** 2,
});
