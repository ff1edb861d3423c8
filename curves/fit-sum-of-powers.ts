/** Fits a sum of powers to the head points of a pump. */
import { chooseCandidate } from './choose-candidate.ts';
import { fitQuality } from './fit-quality.ts';
import type { SumOfPowers } from './head-curve.ts';
import { HEAD_CURVE_CANDIDATES } from './head-curve-candidates.ts';
import type { HeadPoints } from './head-points.ts';
import { leastSquares } from './least-squares.ts';
import { leaveOneOutMeanSquare } from './leave-one-out.ts';
import { greatestSlope, powerSumSlopeAt } from './power-sum.ts';

interface Trial {
  readonly powers: readonly number[];
  readonly coefficients: readonly number[];
  readonly residuals: readonly number[];
  readonly meanSquare: number;
}

/**
 * H = a + sum b_p x^p, x = Q/(largest reduced flow): ordinary least squares on each candidate set of powers, then the
 * simplest of those whose leave-one-out error is within 1.05 of the least.
 *
 * A candidate with m powers needs m + 2 distinct flows. One that rises anywhere in 0 <= x <= 1 is dropped unless the
 * points themselves droop; one whose tangent at x = 1 does not fall is always dropped, because the curve goes on along
 * it. Undefined where none is left.
 */
export function sumOfPowers(entered: HeadPoints): SumOfPowers | undefined {
  const { points, flowScale, rounding, drooping, distinct } = entered;
  const trials = HEAD_CURVE_CANDIDATES.filter((powers) => distinct >= powers.length + 2)
    .flatMap((powers) => tryPowers(powers, entered))
    .filter(
      (trial) => powerSumSlopeAt(trial, 1) < -rounding && (drooping || greatestSlope(trial) <= rounding),
    );
  const chosen = chooseCandidate(trials, rounding ** 2);
  if (chosen === undefined) return undefined;
  return {
    shape: 'sum-of-powers',
    powers: chosen.powers,
    coefficients: chosen.coefficients,
    flowScale,
    range: { min: Math.min(...points.map(({ flow }) => flow)), max: flowScale },
    ...fitQuality({
      values: points.map((point) => point.head),
      residuals: chosen.residuals,
      parameters: chosen.powers.length,
    }),
    residuals: chosen.residuals,
    leaveOneOut: Math.sqrt(chosen.meanSquare),
    drooping,
  };
}

/** The fit on one set of powers beside a constant: a list of one, or of none where the points do not settle it. */
function tryPowers(candidate: readonly number[], { points, flowScale }: HeadPoints): readonly Trial[] {
  const powers = [0, ...candidate];
  const fit = leastSquares(
    points.map((point) => powers.map((power) => (point.flow / flowScale) ** power)),
    points.map((point) => point.head),
  );
  if (!fit.ok) return [];
  const { coefficients, residuals } = fit.value;
  const meanSquare = leaveOneOutMeanSquare(fit.value);
  return meanSquare === null ? [] : [{ powers, coefficients, residuals, meanSquare }];
}
