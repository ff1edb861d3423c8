/** Fits the system curve of a loop that is known only by points of flow and head. */
import { countDistinct } from './distinct.ts';
import { leastSquares } from './least-squares.ts';
import { failed, type Result, success } from './result.ts';

/** H = staticHead + coefficient Q^2, with H [m], Q [m3/s]. */
export interface SystemCurve {
  readonly staticHead: number;
  readonly coefficient: number;
}

/** Why points make no system curve; coefficient k [s2/m5] as fitted. */
export type SystemCurveFailure =
  | { readonly code: 'no-positive-flow' }
  | { readonly code: 'system-curve-not-rising'; readonly coefficient: number };

interface Point {
  readonly flow: number;
  readonly head: number;
}

/** A rise over the whole curve below this share of the largest head is rounding. */
const ROUNDING = 1e-9;

/**
 * The system curve H = Hs + k Q^2 by least squares through points of flow Q and head H.
 *
 * With a static head Hs: k = sum (H - Hs) Q^2/sum Q^4. Without: both where there are two or more distinct flows, Hs
 * held at 0 or above; else Hs = 0.
 * @param points flow [m3/s] of 0 or more, head [m].
 * @param staticHead [m]; undefined: fitted.
 * Errors: `no-positive-flow`; `system-curve-not-rising` where k is not positive.
 */
export function fitSystemCurve(
  points: readonly Point[],
  staticHead?: number | undefined,
): Result<SystemCurve, SystemCurveFailure> {
  const largestFlow = Math.max(0, ...points.map((point) => point.flow));
  if (largestFlow === 0) return failed({ code: 'no-positive-flow' });

  const scaled = points.map(({ flow, head }) => ({ square: (flow / largestFlow) ** 2, head }));
  const given = staticHead ?? fittedStaticHead(points, scaled);
  const numerator = scaled.reduce((total, { square, head }) => total + (head - given) * square, 0);
  const rise = numerator / scaled.reduce((total, { square }) => total + square ** 2, 0);
  const coefficient = rise / largestFlow ** 2;
  const largestHead = Math.max(...points.map((point) => Math.abs(point.head)));
  return rise > ROUNDING * largestHead
    ? success({ staticHead: given, coefficient })
    : failed({ code: 'system-curve-not-rising', coefficient });
}

/** At the fitted static head the formula for a given one yields the fitted k, because least squares holds for each. */
function fittedStaticHead(
  points: readonly Point[],
  scaled: readonly { readonly square: number; readonly head: number }[],
): number {
  if (countDistinct(points.map((point) => point.flow)) < 2) return 0;
  const fit = leastSquares(
    scaled.map(({ square }) => [1, square]),
    scaled.map(({ head }) => head),
  );
  return fit.ok ? Math.max(0, fit.value.coefficients[0] ?? 0) : 0;
}

/** The head that a system needs [m] and its slope dH/dQ [m/(m3/s)] at a flow [m3/s]; friction turns with reverse flow. */
export const systemHeadAt = (
  { staticHead, coefficient }: SystemCurve,
  flow: number,
): { readonly head: number; readonly slope: number } => ({
  head: staticHead + coefficient * flow * Math.abs(flow),
  slope: 2 * coefficient * Math.abs(flow),
});
