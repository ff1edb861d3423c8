/** Fits the power law of a fixed loss beside the cube of speed. */
import type { FittedLaw } from './exponent-law.ts';
import { findRoot } from './find-root.ts';
import { columnSpace } from './orthonormal-basis.ts';
import { type FittedTerms, fitTerms, type PowerFrame } from './power-frame.ts';
import type { PowerPoint } from './power-points.ts';

/** Shaft power goes with the cube of speed where head is all friction: common practice, and the affinity law. */
export const CUBE = 3;

/** Largest share u = F/c that is looked for: a pump whose fixed losses are ten times what it draws for its speed. */
const MOST_SHARE = 10;
/** Shares at which the slope of the sum of squares is looked at; they lie closer together near 0. */
const SCANNED = 256;

/**
 * P = standby + (F + c r^3) g(x), F = u c of 0 or more: ln(P - standby) - ln(u + r^3) fitted on [1, x, x^2], u where the
 * sum of squares is least on 0..10.
 *
 * `logPowers` are ln(P - standby), P in W, one a point, of two speeds or more. The slope of the sum of squares against u
 * is scanned for changes of sign, each is refined to 1e-12 of u, and the least of these and the ends wins.
 * `share`, where given, is taken as u.
 */
export function fixedLossLaw(
  points: readonly PowerPoint[],
  {
    frame,
    logPowers,
    share,
  }: { readonly frame: PowerFrame; readonly logPowers: readonly number[]; readonly share?: number },
): FittedLaw {
  const cubes = points.map(({ speedRatio }) => speedRatio ** CUBE);
  const valuesAt = (u: number) => logPowers.map((value, index) => value - Math.log(u + (cubes[index] ?? 0)));
  const fitAt = (u: number): FittedTerms => {
    const fit = fitTerms(points, { frame, values: valuesAt(u), columns: () => [1] });
    if (fit === null)
      throw new Error('a constant alone could not be fitted: a power or a speed is not finite');
    return fit;
  };
  const u = share ?? bestShare({ cubes, valuesAt, residualsOf: columnSpace(fitAt(0).rows).residualsOf });
  const fit = fitAt(u);
  const [constant = 0, ...flowTerms] = fit.coefficients;
  const coefficient = Math.exp(constant);
  // u was fitted too: while it is above 0, the column d ln(u + r^3)/du belongs to the fit.
  const columns = u > 0 ? fit.rows.map((row, index) => [...row, 1 / (u + (cubes[index] ?? 0))]) : fit.rows;
  return {
    law: { fixedPower: u * coefficient, coefficient, exponent: CUBE, flowTerms },
    residuals: fit.residuals,
    leverages: columnSpace(columns).leverages,
    parameters: fit.coefficients.length + (share === undefined ? 1 : 0),
  };
}

interface ShareSearch {
  /** r^3 of each point. */
  readonly cubes: readonly number[];
  readonly valuesAt: (share: number) => readonly number[];
  readonly residualsOf: (values: readonly number[]) => readonly number[];
}

function bestShare({ cubes, valuesAt, residualsOf }: ShareSearch): number {
  const squaresAt = (u: number) => residualsOf(valuesAt(u)).reduce((sum, residual) => sum + residual ** 2, 0);
  /** Half of d(sum of squares)/du: the residuals times d(values)/du, since residuals are orthogonal to the columns. */
  const slopeAt = (u: number) =>
    residualsOf(valuesAt(u)).reduce((sum, residual, index) => sum - residual / (u + (cubes[index] ?? 0)), 0);
  const shares = Array.from({ length: SCANNED + 1 }, (_, place) => MOST_SHARE * (place / SCANNED) ** 3);
  const slopes = shares.map(slopeAt);
  const minima = shares.slice(1).flatMap((high, index) => {
    const [lowValue = 0, highValue = 0] = [slopes[index], slopes[index + 1]];
    if (!(lowValue < 0 && highValue > 0)) return [];
    const evaluate = (u: number) => ({ value: slopeAt(u) });
    const root = findRoot({ evaluate, low: shares[index] ?? 0, high, lowValue, highValue });
    return root.ok ? [root.value.root] : [];
  });
  const candidates = [0, ...minima, MOST_SHARE].map((u) => ({ u, squares: squaresAt(u) }));
  return candidates.reduce((best, one) => (one.squares < best.squares ? one : best)).u;
}
