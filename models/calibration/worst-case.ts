/** The end of a calibrated interval that is against the user: where the limiting outlet gets least. */

import { type Factors, factorOf } from '../pump/factors.ts';
import { type Assessment, covarianceBehindRatio, type LinearRow, quadraticForm } from './assess.ts';
import type { LimitingMargin } from './limiting-margin.ts';

/** No pump is taken to give less of its head, and no loop to be as good as without friction, or as good as shut. */
const WITHIN = { friction: { low: 0.02, high: 1e3 }, head: { low: 0.05, high: 10 } } as const;

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
    const { low, high } = WITHIN[wanted];
    return Math.min(high, Math.max(low, factors[wanted] - (t * along) / deviation));
  };
  return { friction: moved('friction'), head: moved('head') };
}
