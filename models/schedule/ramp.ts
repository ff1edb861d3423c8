/** Finds what a pump draws while its setting runs straight from one to another. */

/** What a pump does, averaged over time. */
export interface MeanDuty {
  /** [m3/s] */
  readonly flow: number;
  /** [W] */
  readonly power: number;
}

/** Equal pieces of a ramp, each averaged by Simpson's rule. */
export const RAMP_PIECES = 8;

/**
 * Time means of flow and power over the pieces of a ramp, in order.
 *
 * Simpson's rule on each piece: (f(a) + 4 f((a + b)/2) + f(b))/6, exact for powers up to the cube of the setting, as
 * the affinity laws give on a loop of friction alone. The mean of P is above P at the mean setting: P rises faster
 * than its setting.
 * @param ends settings [% of full].
 * @param at flow [m3/s] and power [W] at a setting [% of full].
 */
export function rampMeans(
  { from, to }: { readonly from: number; readonly to: number },
  at: (setting: number) => MeanDuty,
): readonly MeanDuty[] {
  const width = (to - from) / RAMP_PIECES;
  return Array.from({ length: RAMP_PIECES }, (_, piece) => {
    const start = from + piece * width;
    const [a, middle, b] = [at(start), at(start + width / 2), at(start + width)];
    return {
      flow: (a.flow + 4 * middle.flow + b.flow) / 6,
      power: (a.power + 4 * middle.power + b.power) / 6,
    };
  });
}
