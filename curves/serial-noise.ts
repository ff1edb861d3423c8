/** Learns how far values scatter about a line, and how long their errors last. */
import { meanVariance, type SerialData, type SerialFit, serialFit } from './serial-fit.ts';

/** Correlations over a unit of time that are weighed; errors that last longer are not told from a level. */
const CORRELATIONS: readonly number[] = Array.from({ length: 25 }, (_, i) => 0.04 * i);
/** Prior 1 - 0.9 phi: most meters have no memory, and some have a long one. */
const priorOf = (phi: number): number => 1 - 0.9 * phi;
/** Correlations less probable than this change no variance by a digit that is used. */
const LEAST_WEIGHT = 1e-5;
/** Normal efficiency lost by medians and winsorised means. */
const ROBUST_LOSS = 1.08;

interface Weighed {
  /** [-] */
  readonly phi: number;
  /** [-] */
  readonly weight: number;
  /** s2 at that phi [values^2]. */
  readonly variance: number;
}

export interface SerialNoise {
  readonly posterior: readonly Weighed[];
  /** Of one value [unit of the values]. */
  readonly deviation: number;
  /** Mean of phi's posterior [-]. */
  readonly correlation: number;
  /** nu = m + (n - k)(1 - phi)/(1 + phi) [-], of the variance. */
  readonly degrees: number;
  /** At the likeliest phi, with its s2 [values^2]. */
  readonly likeliest: { readonly fit: SerialFit; readonly variance: number };
}

/**
 * phi by restricted maximum likelihood; s2 = (m s0^2 + Q)/(m + n - k), s0 the deviation that is assumed [unit of the values], worth m values. The
 * columns of the data must be independent.
 *
 * Source: Harville (1977), Journal of the American Statistical Association 72, 320.
 */
export function serialNoise(
  data: SerialData,
  assumed: { readonly deviation: number; readonly values: number },
): SerialNoise {
  const seen = Math.max(0, data.times.length - data.columns.length);
  const free = assumed.values + seen;
  const fits = CORRELATIONS.flatMap((phi) => {
    const fit = serialFit(data, phi);
    if (fit === null) return [];
    const squares = assumed.values * assumed.deviation ** 2 + fit.squares;
    const likelihood = Math.log(priorOf(phi)) - (fit.logDeterminant + free * Math.log(squares)) / 2;
    return [{ phi, fit, likelihood, variance: squares / free }];
  });
  const [first, ...others] = fits;
  if (first === undefined) throw new Error('invariant: the columns of a series are independent');
  const likeliest = others.reduce((a, b) => (b.likelihood > a.likelihood ? b : a), first);
  const weights = fits.map(({ likelihood }) => Math.exp(likelihood - likeliest.likelihood));
  const whole = weights.reduce((sum, one) => sum + one, 0);
  const posterior = fits
    .map(({ phi, variance }, i) => ({ phi, variance, weight: (weights[i] ?? 0) / whole }))
    .filter(({ weight }) => weight > LEAST_WEIGHT);
  const mean = (pick: (one: Weighed) => number) =>
    posterior.reduce((sum, one) => sum + one.weight * pick(one), 0);
  const correlation = mean(({ phi }) => phi);
  return {
    ...{ posterior, correlation, likeliest },
    deviation: Math.sqrt(mean(({ variance }) => variance)),
    degrees: assumed.values + (seen * (1 - correlation)) / (1 + correlation),
  };
}

/** Variance [values^2] of a winsorised mean of values at these times, averaged over phi: inflated for what errors have in common. */
export const varianceOfMean = ({ posterior }: SerialNoise, times: readonly number[]): number =>
  ROBUST_LOSS *
  posterior.reduce((sum, { phi, weight, variance }) => sum + weight * variance * meanVariance(times, phi), 0);

/** A step takes so much of the squares, and at least so many values lie before and behind it. */
const STEP = { share: 0.5, values: 3 } as const;

/** The instant [unit of the times] of the step that takes most of the squares about a line, of those at `instants`; null where none takes half. */
export function stepOf(
  { times, values, ramp }: Pick<SerialData, 'times' | 'values'> & { readonly ramp: readonly number[] },
  instants: readonly number[],
): number | null {
  const fit = serialFit({ times, values, columns: [times.map(() => 1), ramp] }, 0);
  if (fit === null) return null;
  const [level = 0, slope = 0] = fit.coefficients;
  const [[a = 0, b = 0] = [], [, c = 0] = []] = fit.inverse;
  // Of the values from an instant on: their number, ramps and residuals.
  let [count, ramps, residuals, place] = [0, 0, 0, times.length - 1];
  let [best, most]: [number | null, number] = [null, STEP.share * fit.squares];
  for (const instant of instants.toReversed()) {
    for (; place >= 0 && (times[place] ?? 0) >= instant; place -= 1) {
      count += 1;
      ramps += ramp[place] ?? 0;
      residuals += (values[place] ?? 0) - level - slope * (ramp[place] ?? 0);
    }
    const own = count - (a * count ** 2 + 2 * b * count * ramps + c * ramps ** 2);
    const isInside = count >= STEP.values && times.length - count >= STEP.values;
    const taken = isInside && own > 0 ? residuals ** 2 / own : 0;
    if (taken > most) [best, most] = [instant, taken];
  }
  return best;
}
