/** States the published losses of a tee of 90 degrees that divides a flow, for sides as wide as its leg and narrower ones. */

/**
 * Law of a side branch. With v_c in the combined leg, v_b in the side and q = side flow/combined flow, 1 at most:
 * loss = (1 + growth q^2)(v_c^2 + own v_b^2)/2g.
 */
export interface TeeSideLaw {
  /** [-] */
  readonly growth: number;
  /** [-] */
  readonly own: number;
}

/** Law of the straight run by the area ratio of its widest side: `narrow` up to 0.4, `wide` beyond. */
export type TeeRunLaw = 'narrow' | 'wide';

/** A side of this bore ratio is as wide as the leg. */
const EQUAL = 1 - 1e-9;

/** Share of v_b^2/2g that an equal tee's side loses, and that any side loses which runs back into the leg. */
export const SIDE_SHARE = 0.6;
/** The same of a narrower side whose bore ratio is above 2/3. */
const OWN_OF_WIDE_SIDE = 0.3;
const WIDEST_NARROW_SIDE = 2 / 3;
/** Up to this area ratio a side's loss does not grow with q^2. */
const AREA_WITHOUT_GROWTH = 2 / 3;
const GROWTH = 0.3;

const NARROW_RUN_AREA = 0.4;
const NARROW_RUN_FACTOR = 0.4;
/** Up to this share of side flow the straight run gains head, by a steeper line than beyond. */
const HALF = 0.5;
const GAIN_FACTOR = 2;
const LOSS_FACTOR = 0.3;

/**
 * The law of a side of bore ratio b = side's bore/leg's bore.
 *
 * b of 1 or more: K = 1 + 0.6 (v_b/v_c)^2 on v_c, within 5.4 % of the published equal tee (test/reference/tee.ts).
 * Below: K = G (1 + H (q/b^2)^2), G = 1 where b^2 <= 2/3 else 1 + 0.3 q^2, H = 1 where b <= 2/3 else 0.3.
 * @param boreRatio [-] above 0.
 * Source: Crane Technical Paper 410 (2009), diverging tee of 90 degrees, with the errata of 2012. The handbook gives H up to
 *   2/3 and at 1; between them that of 1 is taken. So the law jumps at 2/3, sqrt(2/3) and 1.
 */
export function teeSideLaw(boreRatio: number): TeeSideLaw {
  if (boreRatio >= EQUAL) return { growth: 0, own: SIDE_SHARE };
  return {
    growth: boreRatio ** 2 <= AREA_WITHOUT_GROWTH ? 0 : GROWTH,
    own: boreRatio <= WIDEST_NARROW_SIDE ? 1 : OWN_OF_WIDE_SIDE,
  };
}

/** The law of the straight run for the bore ratio [-] of the widest side; null: next to a side as wide as the leg it loses nothing. */
export function teeRunLaw(boreRatio: number): TeeRunLaw | null {
  if (boreRatio >= EQUAL) return null;
  return boreRatio ** 2 <= NARROW_RUN_AREA ? 'narrow' : 'wide';
}

/**
 * Loss coefficient of the straight run on v_c, K = M q^2, and its slope dK/dq.
 *
 * M = 0.4 of a `narrow` tee; of a `wide` one 2 (2q - 1) to q = 0.5 and 0.3 (2q - 1) beyond, negative where the run gains head.
 * @param share q [-], flow of all sides/combined flow, 0..1.
 * Source: as `teeSideLaw`.
 */
export function teeRunCoefficient(
  law: TeeRunLaw,
  share: number,
): { readonly value: number; readonly slope: number } {
  if (law === 'narrow')
    return { value: NARROW_RUN_FACTOR * share ** 2, slope: 2 * NARROW_RUN_FACTOR * share };
  const factor = share <= HALF ? GAIN_FACTOR : LOSS_FACTOR;
  return {
    value: factor * (2 * share - 1) * share ** 2,
    slope: factor * (6 * share - 2) * share,
  };
}
