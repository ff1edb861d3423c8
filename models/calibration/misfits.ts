/** Finds the readings that do not fit the factors, and whether factors may be put to use at all. */
import { DEVIATE_95 } from '../../curves/theil-sen.ts';
import { type Slip, slipOf } from '../readings/slip.ts';
import { errorsOf } from './covariance.ts';
import type { Determined } from './determined.ts';
import { type FittedRow, scaleOf } from './robust-fit.ts';
import type { Gauge, Measure } from './row-collector.ts';

/** A reading off by more than both does not fit: such a share, so many scales. */
const MISFIT = { share: 0.15, scales: 5 } as const;
const LISTED_MOST = 8;
/** Beyond these factors are not applied: half-width of the ratio over itself, scatter of a measure, share of its readings that misfit. */
export const REFUSED = { halfWidth: 0.3, scatter: 0.08, misfits: 0.2 } as const;
/** Fewer readings of a measure show no scatter. */
const SCATTER_LEAST = 3;

export interface Misfit extends Gauge {
  readonly time: number;
  /** [m3/s, m or W] */
  readonly measured: number;
  readonly predicted: number;
  /** measured/predicted - 1. */
  readonly residual: number;
  readonly slip: Slip | null;
}

const misfitsIn = ({ fit }: Determined, { row, residuals, predicted }: FittedRow): readonly Misfit[] => {
  const { meter: _, values, times, ...gauge } = row;
  return residuals.flatMap((log, j) => {
    const residual = Math.exp(log) - 1;
    const isMisfit =
      Math.abs(residual) > MISFIT.share && Math.abs(log) > MISFIT.scales * scaleOf(fit.scales, row);
    if (!isMisfit) return [];
    const slip = slipOf(row.measure, 1 + residual)?.slip ?? null;
    return [{ ...gauge, time: times[j] ?? 0, measured: values[j] ?? 0, predicted, residual, slip }];
  });
};

/** The farthest first. */
export const misfitsOf = (determined: Determined): readonly Misfit[] =>
  determined.fit.rows
    .flatMap((row) => misfitsIn(determined, row))
    .toSorted((a, b) => Math.abs(Math.log1p(b.residual)) - Math.abs(Math.log1p(a.residual)))
    .slice(0, LISTED_MOST);

export type Refusal =
  | { readonly code: 'nothing-determined' }
  | { readonly code: 'ratio-too-uncertain'; readonly actual: number; readonly limit: number }
  | {
      readonly code: 'readings-scatter' | 'readings-do-not-fit';
      readonly measure: Measure;
      readonly actual: number;
      readonly limit: number;
    };

/** Why factors may not be applied; null where they may. */
export function refusalOf(determined: Determined): Refusal | null {
  const { fit, covariance } = determined;
  for (const [measure, { raw }] of fit.scales) {
    const own = fit.rows.filter(({ row }) => row.measure === measure);
    const count = own.reduce((sum, { row }) => sum + row.values.length, 0);
    if (count >= SCATTER_LEAST && raw > REFUSED.scatter) {
      return { code: 'readings-scatter', measure, actual: raw, limit: REFUSED.scatter };
    }
    const share = own.flatMap((row) => misfitsIn(determined, row)).length / count;
    if (share > REFUSED.misfits)
      return { code: 'readings-do-not-fit', measure, actual: share, limit: REFUSED.misfits };
  }
  const ratio = covariance.names.indexOf('frictionOverHead');
  const actual = (DEVIATE_95 * (errorsOf(covariance)[ratio] ?? 0)) / fit.factors.friction;
  return actual > REFUSED.halfWidth
    ? { code: 'ratio-too-uncertain', actual, limit: REFUSED.halfWidth }
    : null;
}
