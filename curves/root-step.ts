/** The next step towards a root, from what is known of a function so far. */

export interface Evaluation {
  readonly x: number;
  readonly value: number;
  readonly slope?: number | undefined;
}

/** Newton's step -f/f'; undefined without a slope that is finite and not 0. */
export function newtonStep({ value, slope }: Evaluation): number | undefined {
  const step = slope === undefined ? Number.NaN : -value / slope;
  return Number.isFinite(step) && slope !== 0 ? step : undefined;
}

/**
 * The step from `newest` towards `opposite`, which lies across the root: inverse quadratic interpolation through these
 * and `previous` where Chandrupatla's test trusts it, else half of the bracket; at least `tolerance` from either end.
 *
 * Source: Chandrupatla (1997), A new hybrid quadratic/bisection algorithm, Adv. Eng. Software 28, 145-149.
 */
export function interpolatedStep({
  newest,
  opposite,
  previous,
  tolerance,
}: {
  readonly newest: Evaluation;
  readonly opposite: Evaluation;
  readonly previous: Evaluation;
  readonly tolerance: number;
}): number {
  const [a, b, c] = [newest, opposite, previous];
  const span = b.x - a.x;
  const xi = (a.x - b.x) / (c.x - b.x);
  const phi = (a.value - b.value) / (c.value - b.value);
  if (!(phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi)) return span / 2;
  const share =
    (a.value / (b.value - a.value)) * (c.value / (b.value - c.value)) +
    ((c.x - a.x) / span) * (a.value / (c.value - a.value)) * (b.value / (c.value - b.value));
  if (!Number.isFinite(share)) return span / 2;
  const least = Math.min(0.5, tolerance / Math.abs(span));
  return span * Math.min(1 - least, Math.max(least, share));
}
