/** How far single readings of a measure scatter about what they should show. */
import type { Measure } from './measured.ts';

/**
 * Relative standard deviation assumed of a meter before its readings say anything: common practice for a clamp-on or bucket
 * flow, a gauge, a plug-in power meter.
 */
const ASSUMED = {
  flow: 0.03,
  outletFlow: 0.03,
  head: 0.02,
  power: 0.02,
} as const satisfies Record<Measure, number>;

/** How many readings' worth the assumption counts for. */
export const ASSUMED_READINGS = 2;

export type Variances = Readonly<Record<Measure, number>>;

const forEach = (make: (measure: Measure) => number): Variances => ({
  flow: make('flow'),
  outletFlow: make('outletFlow'),
  head: make('head'),
  power: make('power'),
});

export const ASSUMED_VARIANCES: Variances = forEach((measure) => ASSUMED[measure] ** 2);

export interface Scatter {
  readonly measure: Measure;
  readonly count: number;
  /** Sum of squares within the row, and of its mean against what is predicted, both relative. */
  readonly spread: number;
  readonly residual: number;
  /** Parameters' worth that the row took up in the fit. */
  readonly leverage: number;
}

/**
 * Relative variance of one reading, by measure: (2 s0^2 + SSE)/(2 + n - leverage), s0 being the assumed deviation, SSE and n
 * those of the measure's readings: few readings leave it near the assumed, many settle it.
 */
export const variancesOf = (rows: readonly Scatter[]): Variances =>
  forEach((measure) => {
    const own = rows.filter((row) => row.measure === measure);
    const squares = total(own.map(({ count, spread, residual }) => spread + count * residual ** 2));
    const free = total(own.map(({ count, leverage }) => count - leverage));
    return (ASSUMED_READINGS * ASSUMED[measure] ** 2 + squares) / (ASSUMED_READINGS + free);
  });

/** The same by the scatter of repeats about their own mean, whatever a model says of the mean. */
export function repeatVariance(
  rows: readonly Pick<Scatter, 'measure' | 'count' | 'spread'>[],
  measure: Measure,
): number {
  const own = rows.filter((row) => row.measure === measure);
  const squares = total(own.map(({ spread }) => spread));
  const free = total(own.map(({ count }) => count - 1));
  return (ASSUMED_READINGS * ASSUMED[measure] ** 2 + squares) / (ASSUMED_READINGS + free);
}

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
