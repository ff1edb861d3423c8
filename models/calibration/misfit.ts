/** What was measured against the factors that were found: which rows do not fit together with the others. */
import type { Factors } from '../pump/factors.ts';
import type { Gauge, Measured } from './measured-rows.ts';
import { repeatVariance } from './noise.ts';
import type { Prediction } from './prediction.ts';

export interface Misfit extends Gauge {
  /** Mean of the readings, and what the factors give [m3/s, m or W]. */
  readonly measured: number;
  readonly predicted: number;
  /** measured/predicted - 1. */
  readonly off: number;
}

/** A row does not fit from this share on, where its readings scatter so little that so many errors of their mean are less. */
const TOLD = { share: 0.03, errors: 4 } as const;
const TOLD_MOST = 8;
/** A flow that is off by this share: what is computed of the loop is not its measured self. */
export const MISFIT_MOST = 0.15;

/** The farthest first, eight at most. */
export function misfitsOf(
  rows: readonly Measured[],
  factors: Factors,
  predict: Prediction,
): readonly Misfit[] {
  const found = rows.flatMap((row): readonly Misfit[] => {
    const { mean, count, spread, course, ...gauge } = row;
    const predicted = predict(gauge, factors);
    if (!(predicted > 0)) return [];
    const off = mean / predicted - 1;
    const error = Math.sqrt(repeatVariance(rows, row.measure) / count);
    const isTold = Math.abs(off) > Math.max(TOLD.share, TOLD.errors * error);
    return isTold ? [{ ...gauge, measured: mean, predicted, off }] : [];
  });
  return found.toSorted((a, b) => Math.abs(b.off) - Math.abs(a.off)).slice(0, TOLD_MOST);
}

/** Whether factors may not be put to use: a flow that was measured is far from the one that they give. */
export const isFarOff = (misfits: readonly Misfit[]): boolean =>
  misfits.some(
    ({ measure, off }) => (measure === 'flow' || measure === 'outletFlow') && Math.abs(off) > MISFIT_MOST,
  );
