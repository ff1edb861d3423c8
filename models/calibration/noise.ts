/** How far single readings of a measure scatter about what they should show. */
import type { Measure } from './measured-rows.ts';

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
const ASSUMED_READINGS = 2;

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

/** Degrees of freedom of the variance of each measure, above 0. */
export type Degrees = Readonly<Record<Measure, number>>;

export const ASSUMED_DEGREES: Degrees = forEach(() => ASSUMED_READINGS);

export interface Noise {
  readonly variances: Variances;
  readonly degrees: Degrees;
}

/** Mean square of the departures of means over that of single readings, from which on the fit is taken to be lacking. */
const LACKING = 3;
/** Of a row, less leaves no departure to go by. */
const FREE_LEAST = 0.5;

/**
 * Relative variance of one reading, by measure: (2 s0^2 + SSE)/(2 + n - leverage), s0 being the assumed deviation, SSE and n
 * those of the measure's readings: few readings leave it near the assumed, many settle it.
 *
 * Where the means of rows depart from the fit by more than such readings scatter, the model is what is off: the mean square of
 * that lack of fit, sum n r^2 over the rows beyond the parameters, then stands for the variance, and many readings do not
 * make the factors surer. Source: Draper and Smith (1998), Applied Regression Analysis, pure error and lack of fit; Birge (1932).
 */
export function noiseOf(rows: readonly Scatter[]): Noise {
  const degrees: Record<Measure, number> = { ...ASSUMED_DEGREES };
  const variances = forEach((measure) => {
    const own = rows.filter((row) => row.measure === measure);
    const lack = total(own.map(({ count, residual }) => count * residual ** 2));
    const squares = total(own.map(({ spread }) => spread)) + lack;
    const free = total(own.map(({ count, leverage }) => count - leverage));
    const single = (ASSUMED_READINGS * ASSUMED[measure] ** 2 + squares) / (ASSUMED_READINGS + free);
    const beyond = total(own.map(({ leverage }) => 1 - leverage));
    const isLacking = beyond >= FREE_LEAST && lack / beyond >= LACKING * single;
    degrees[measure] = isLacking ? beyond : ASSUMED_READINGS + Math.max(0, free);
    return isLacking ? lack / beyond : single;
  });
  return { variances, degrees };
}

/** Standard deviations assumed, of which repeats of one row may scatter by so many. */
const SCATTERED = 4;

/** Whether repeats of any row scatter by more than a meter that works does. */
export const isScattered = (rows: readonly Pick<Scatter, 'measure' | 'count' | 'spread'>[]): boolean =>
  rows.some(
    ({ measure, count, spread }) => count > 1 && spread / (count - 1) > (SCATTERED * ASSUMED[measure]) ** 2,
  );

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
