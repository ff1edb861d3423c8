/** Ranks the causes that could explain a change, with their probabilities. */
import { chiSquaredTail } from '../../curves/chi-squared.ts';
import { interpolate } from '../../curves/interpolate.ts';
import type { Term } from './evidence.ts';
import type { Point, Signature } from './signatures.ts';
import { logStudent } from './statistic.ts';

/** Causes are named until this probability is reached together; one that reaches the other alone is the verdict. */
export const NAMED = { together: 0.9, alone: 0.8 } as const;
/** Errors of the entries, as a share of a shift: of what a fault is computed to move, friction and curves leave so much open. */
const ENTRIES = 0.15;
/** Chance of a misfit as large, below which no single cause is taken to explain what was read. */
const UNEXPLAINED = 0.001;
/** Pairs that are listed; of the causes that explain most alone so many are paired, at every third magnitude. */
const PAIRS = { most: 5, causes: 20, step: 3 } as const;
const QUANTILES = [0.025, 0.5, 0.975] as const;

export interface RankedCause {
  readonly signature: Signature;
  readonly probability: number;
  /** Median of its posterior, and the interval of 95 %. */
  readonly magnitude: number;
  readonly interval: { readonly low: number; readonly high: number };
  /** The likeliest. */
  readonly point: Point;
}

/** What is laid on the terms: a cause at a magnitude. */
export interface Explained {
  readonly signature: Signature;
  readonly point: Point;
}

/** The shift of a term, and its variance widened by (0.15 s)^2 of what was computed: a meter's own shift is as it is. */
function widenedBy(term: Term, all: readonly Explained[]) {
  let [shift, variance] = [0, term.variance];
  for (const { signature, point } of all) {
    const one = point.shifts[term.place] ?? 0;
    shift += one;
    if (signature.gauge === undefined) variance += (ENTRIES * one) ** 2;
  }
  return { shift, variance };
}

const logDensity = (terms: readonly Term[], all: readonly Explained[]): number =>
  terms.reduce((sum, term) => {
    const { shift, variance } = widenedBy(term, all);
    return sum + logStudent(term, shift, variance) - Math.log(variance / term.variance) / 2;
  }, 0);

/** Sum (nu+1) ln(1 + (d - s)^2/(nu V)): near a chi-squared of as many degrees as terms. */
const misfit = (terms: readonly Term[], all: readonly Explained[]): number =>
  terms.reduce((sum, term) => {
    const { shift, variance } = widenedBy(term, all);
    return sum - 2 * logStudent(term, shift, variance);
  }, 0);

/**
 * Probability = prior x mean over magnitudes of exp l, V widened, normalised: the most probable first.
 *
 * Source: Kass and Raftery (1995), Journal of the American Statistical Association 90, 773.
 */
export function rankedCauses(
  terms: readonly Term[],
  signatures: readonly Signature[],
): readonly RankedCause[] {
  const weighed = signatures.map((signature) => {
    const logs = signature.points.map((point) => logDensity(terms, [{ signature, point }]));
    const most = Math.max(...logs);
    const weights = logs.map((one) => Math.exp(one - most));
    const mean = weights.reduce((sum, one) => sum + one, 0) / weights.length;
    return { signature, weights, evidence: most + Math.log(signature.prior * mean) };
  });
  const most = Math.max(...weighed.map(({ evidence }) => evidence));
  const whole = weighed.reduce((sum, { evidence }) => sum + Math.exp(evidence - most), 0);
  return weighed
    .map(({ signature, weights, evidence }) => ({
      ...{ signature, probability: Math.exp(evidence - most) / whole },
      ...magnitudeOf(signature, weights),
    }))
    .toSorted((a, b) => b.probability - a.probability);
}

/** Of the posterior of the magnitude; of a meter both directions together. */
function magnitudeOf({ points }: Signature, weights: readonly number[]) {
  const placed = points
    .map((point, i) => ({ point, weight: weights[i] ?? 0 }))
    .toSorted((a, b) => a.point.magnitude - b.point.magnitude);
  let passed = 0;
  // Half of a magnitude's weight lies below it.
  const shares = placed.map(({ weight }) => {
    passed += weight;
    return passed - weight / 2;
  });
  const magnitudes = placed.map(({ point }) => point.magnitude);
  const [low = 0, magnitude = 0, high = 0] = QUANTILES.map((share) =>
    interpolate(shares, magnitudes, share * passed),
  );
  const { point } = placed.reduce((a, b) => (b.weight > a.weight ? b : a));
  return { magnitude, interval: { low, high }, point };
}

/** The fewest whose probabilities reach 0.9 together. */
export function namedCauses(ranked: readonly RankedCause[]): readonly RankedCause[] {
  let together = 0;
  return ranked.filter(({ probability }) => {
    const isNeeded = together < NAMED.together;
    together += probability;
    return isNeeded;
  });
}

export type CausePair = readonly [Explained, Explained];

const explained = (signature: Signature, step = 1): readonly Explained[] =>
  signature.points.filter((_, i) => i % step === 0).map((point) => ({ signature, point }));

/** Pairs of causes that explain the terms together, the likeliest first; null where a single one does. */
export function explainingPairs(
  terms: readonly Term[],
  signatures: readonly Signature[],
): readonly CausePair[] | null {
  const single = signatures
    .map((signature) => ({
      signature,
      off: Math.min(...explained(signature).map((one) => misfit(terms, [one]))),
    }))
    .toSorted((a, b) => a.off - b.off);
  const [least] = single;
  const isExplained = least === undefined || chiSquaredTail(least.off, terms.length - 1) >= UNEXPLAINED;
  if (terms.length < 2 || isExplained) return null;
  const degrees = Math.max(1, terms.length - 2);
  const paired = single
    .slice(0, PAIRS.causes)
    .map(({ signature }) => signature)
    .toSorted((a, b) => b.prior - a.prior);
  const found = paired.flatMap((a, i) =>
    paired.slice(i + 1).flatMap((b) => {
      const { pair, off } = bestOf(terms, explained(a, PAIRS.step), explained(b, PAIRS.step));
      const isEnough = chiSquaredTail(off, degrees) >= UNEXPLAINED;
      return isEnough ? [{ pair, rank: off - 2 * Math.log(a.prior * b.prior) }] : [];
    }),
  );
  return found
    .toSorted((a, b) => a.rank - b.rank)
    .slice(0, PAIRS.most)
    .map(({ pair }) => pair);
}

function bestOf(terms: readonly Term[], first: readonly Explained[], second: readonly Explained[]) {
  const pairs = first.flatMap((a) => second.map((b): CausePair => [a, b]));
  const offs = pairs.map((pair) => misfit(terms, pair));
  const off = Math.min(...offs);
  const pair = pairs[offs.indexOf(off)];
  if (pair === undefined) throw new Error('invariant: a cause has points');
  return { off, pair };
}
