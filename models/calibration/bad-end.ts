/** The end of a calibrated interval that is against the user: where the limiting outlet gets least. */
import { type Assessment, covarianceBehindRatio, type LinearRow, quadraticForm } from './assess.ts';
import { type Factors, factorOf } from './factors.ts';
import type { LimitingMargin } from './limiting-margin.ts';

/** No pump is taken to give less of its head, nor a loop less of its friction. */
const LEAST = { friction: 0.02, head: 0.05 } as const;

/**
 * Friction and head where the limiting margin is at the low end of its interval of 95 %, on the ellipse of both:
 * (f, h) - t C g/sqrt(g'Cg), g the slopes of the margin, C the covariance,
 * with what a ratio leaves open of the two. What was not fitted stays.
 */
export function badEndOf(
  factors: Factors,
  assessment: Assessment,
  { rows, slopes }: Pick<LimitingMargin, 'slopes'> & { readonly rows: readonly LinearRow[] },
): Pick<Factors, 'friction' | 'head'> {
  const { t } = assessment;
  const { names, covariance } = covarianceBehindRatio(rows, assessment) ?? assessment;
  const gradient = names.map((name) => slopes[factorOf(name)]);
  const deviation = Math.sqrt(quadraticForm(covariance, gradient));
  const moved = (wanted: 'friction' | 'head'): number => {
    const row = covariance[names.findIndex((name) => factorOf(name) === wanted)];
    if (row === undefined || !(deviation > 0)) return factors[wanted];
    const along = row.reduce((sum, entry, j) => sum + entry * (gradient[j] ?? 0), 0);
    return Math.max(LEAST[wanted], factors[wanted] - (t * along) / deviation);
  };
  return { friction: moved('friction'), head: moved('head') };
}
