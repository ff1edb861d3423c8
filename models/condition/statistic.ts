/** Decides whether a loop has changed: the generalised likelihood ratio over windows, causes and magnitudes. */
import {
  type Compared,
  DAYS_LEAST,
  meanOf,
  type Present,
  type Term,
  valuesIn,
  type Window,
} from './evidence.ts';
import type { Point, Signature } from './signatures.ts';

/** Of healthy loops looked at weekly at most 2 % a year exceed it, 5 % where errors last from day to day (test/rates). */
export const THRESHOLD = 16;
/** Smaller faults are not worth a visit, and water, seasons and meters make them. */
const LEAST_MAGNITUDE = 0.03;
/** What is gone again, or was one bad week, does not lie at least so far along the shift. */
const PERSISTENT = { days: 7, share: 0.5 } as const;

export interface Statistic {
  readonly value: number;
  readonly window: Window;
  /** The likeliest cause, and its magnitude. */
  readonly signature: Signature;
  readonly point: Point;
}

/**
 * L = greatest 2 (l(s) - l(0)), l(s) = -sum (nu+1)/2 ln(1 + (d - s)^2/(nu V)): Student's law leaves room for the few far values that meters
 * give. Null where no window holds enough.
 *
 * Sources: Willsky and Jones (1976), IEEE Transactions on Automatic Control 21, 108; Basseville and Nikiforov (1993), Detection
 *   of Abrupt Changes; of errors that last: Apley and Shi (1999), IIE Transactions 31, 1123; Lange, Little and Taylor (1989),
 *   Journal of the American Statistical Association 84, 881.
 */
export function statisticOf(windows: readonly Window[], signatures: readonly Signature[]): Statistic | null {
  let best: Statistic | null = null;
  for (const window of windows) {
    const none = logLikelihood(window.terms, []);
    for (const signature of signatures) {
      for (const point of signature.points) {
        const value = 2 * (logLikelihood(window.terms, point.shifts) - none);
        if (best === null || value > best.value) best = { value, window, signature, point };
      }
    }
  }
  return best;
}

const logLikelihood = (terms: readonly Term[], shifts: readonly number[]): number => {
  let sum = 0;
  for (const term of terms) sum += logStudent(term, shifts[term.place] ?? 0, term.variance);
  return sum;
};

export const logStudent = ({ difference, degrees }: Term, shift: number, variance: number): number =>
  (-(degrees + 1) / 2) * Math.log(1 + (difference - shift) ** 2 / (degrees * variance));

/** Whether a change is reported: beyond the threshold, still there, and large enough to matter where it has come to. */
export function isReported(
  { value, window, point }: Statistic,
  all: readonly Compared[],
  present: Present,
): boolean {
  const along = persistence(window.terms, point, { all, present });
  const isLarge = point.magnitude === 0 || Math.max(1, along) * point.magnitude >= LEAST_MAGNITUDE;
  return value > THRESHOLD && along >= PERSISTENT.share && isLarge;
}

/** How far along the shift the last days lie, each gauge by its weight: 1 all the way. */
function persistence(
  terms: readonly Term[],
  { shifts }: Point,
  { all, present }: { readonly all: readonly Compared[]; readonly present: Present },
): number {
  let [along, whole] = [0, 0];
  for (const { place, variance } of terms) {
    const [one, shift] = [all[place], shifts[place] ?? 0];
    if (one === undefined || one.baseline === null) continue;
    const week = valuesIn(one, present, PERSISTENT.days);
    const last = week.length < DAYS_LEAST ? valuesIn(one, present, present.now).slice(-DAYS_LEAST) : week;
    along += (shift * (meanOf(last, one.noise) - one.baseline.mean)) / variance;
    whole += shift ** 2 / variance;
  }
  return whole > 0 ? along / whole : 0;
}
