/** Finds the root of a function of one variable inside a bracket. */
import { failed, type Result, success } from './result.ts';

/** A root that was found, in the units of the function [unit of x] and [unit of f]. */
export interface Root {
  /** Where the function is 0 [unit of x]. */
  readonly root: number;
  /** Evaluations after those at the ends of the bracket [-]. */
  readonly iterations: number;
  /** The value of the function at the root [unit of f]. */
  readonly residual: number;
}

/** Why no root was found; values [unit of f], x [unit of x], limit [-] of iterations. */
export type RootFailure =
  | { readonly code: 'not-bracketed'; readonly lowValue: number; readonly highValue: number }
  | { readonly code: 'no-value'; readonly x: number }
  | { readonly code: 'iterations'; readonly limit: number };

/** A function of x [unit of x] with values [unit of f], and a bracket of its root. */
export interface RootQuestion {
  readonly evaluate: (x: number) => { readonly value: number; readonly slope?: number | undefined };
  readonly low: number;
  readonly high: number;
  /** The values at the ends, where they are known already. */
  readonly lowValue?: number | undefined;
  readonly highValue?: number | undefined;
  /** Where to look first [unit of x]. */
  readonly guess?: number | undefined;
}

interface Evaluation {
  readonly x: number;
  readonly value: number;
  readonly slope?: number | undefined;
}

export const ROOT_ITERATIONS = 200;
const RELATIVE_TOLERANCE = 1e-12;
/** A function solved for by iteration has noise: Newton steps this small that no longer shrink are made of it. */
const NOISE = 1e-8;
const STEPS_BEFORE_NOISE = 2;

/**
 * A root of `evaluate` between `low` and `high`, whose values must differ in sign, to 1e-12 of itself or 2.2e-16 of the
 * bracket, whichever is larger.
 *
 * With slopes, Newton's method: a step is taken when it stays inside the bracket and is under half of the step before
 * last, else the bracket is halved. The root is where the step falls below the tolerance, so a slope must be of the
 * right order near it, or where steps under 1e-8 of it stop shrinking, the noise of the function. Without
 * slopes, or where one is not a finite number, inverse quadratic interpolation by Chandrupatla's rule, until the bracket
 * itself is that small.
 *
 * Errors: `not-bracketed` when the ends have one sign or no value; `no-value` where the function is not a number inside
 * the bracket; `iterations` past ROOT_ITERATIONS.
 *
 * Source: Press et al. (2007), Numerical Recipes, 9.4 (kept Newton); Chandrupatla (1997), Adv. Eng. Software 28.
 */
export function findRoot(question: RootQuestion): Result<Root, RootFailure> {
  const { evaluate, low, high } = question;
  const at = (x: number): Evaluation => ({ x, ...evaluate(x) });
  const lowEnd = question.lowValue === undefined ? at(low) : { x: low, value: question.lowValue };
  const highEnd = question.highValue === undefined ? at(high) : { x: high, value: question.highValue };
  for (const end of [lowEnd, highEnd]) if (end.value === 0) return found(end, 0);
  if (!differInSign(lowEnd, highEnd)) {
    return failed({ code: 'not-bracketed', lowValue: lowEnd.value, highValue: highEnd.value });
  }

  let newest = at(firstPlace(question, { lowEnd, highEnd }));
  let [opposite, previous] = differInSign(lowEnd, newest) ? [lowEnd, highEnd] : [highEnd, lowEnd];
  let lastSteps = [high - low, high - low] as const;
  let keptSteps = 0;
  for (let iterations = 1; iterations <= ROOT_ITERATIONS; iterations += 1) {
    const tolerance = RELATIVE_TOLERANCE * Math.abs(newest.x) + Number.EPSILON * (high - low);
    if (Number.isNaN(newest.value)) return failed({ code: 'no-value', x: newest.x });
    if (newest.value === 0) return found(newest, iterations);
    if (Math.abs(opposite.x - newest.x) <= tolerance) return found(nearer(newest, opposite), iterations);

    const newton = newtonStep(newest);
    if (newton !== undefined && Math.abs(newton) <= tolerance) return found(newest, iterations);
    const converging = keptSteps >= STEPS_BEFORE_NOISE;
    if (newton !== undefined && converging && isNoise(newton, { newest, beforeLast: lastSteps[0] })) {
      return found([previous, opposite].reduce(nearer, newest), iterations);
    }
    const step =
      newton === undefined
        ? interpolatedStep({ newest, opposite, previous, tolerance })
        : keptStep(newton, { span: opposite.x - newest.x, beforeLast: lastSteps[0] });
    keptSteps = step === newton ? keptSteps + 1 : 0;
    lastSteps = [lastSteps[1], Math.abs(step)];

    const next = at(newest.x + step);
    if (differInSign(next, newest)) [previous, opposite] = [opposite, newest];
    else previous = newest;
    newest = next;
  }
  return failed({ code: 'iterations', limit: ROOT_ITERATIONS });
}

/** The guess if it is inside, else where the chord between the ends crosses zero, else the middle. */
function firstPlace(
  { guess, low, high }: RootQuestion,
  { lowEnd, highEnd }: { readonly lowEnd: Evaluation; readonly highEnd: Evaluation },
): number {
  const inside = (x: number | undefined): x is number => x !== undefined && x > low && x < high;
  if (inside(guess)) return guess;
  const chord = low + ((high - low) * lowEnd.value) / (lowEnd.value - highEnd.value);
  return inside(chord) ? chord : low + (high - low) / 2;
}

/** Newton's step -f/f'; undefined without a slope that is finite and not 0. */
function newtonStep({ value, slope }: Evaluation): number | undefined {
  const step = slope === undefined ? Number.NaN : -value / slope;
  return Number.isFinite(step) && slope !== 0 ? step : undefined;
}

/**
 * The step from `newest` towards `opposite`, which lies across the root: inverse quadratic interpolation through these
 * and `previous` where Chandrupatla's test trusts it, else half of the bracket; at least `tolerance` from either end.
 *
 * Source: Chandrupatla (1997), A new hybrid quadratic/bisection algorithm, Adv. Eng. Software 28, 145-149.
 */
function interpolatedStep({
  newest,
  opposite,
  previous,
  tolerance,
}: {
  readonly newest: Evaluation;
  readonly opposite: Evaluation;
  readonly previous: Evaluation;
  readonly tolerance: number;
}): number {
  const [a, b, c] = [newest, opposite, previous];
  const span = b.x - a.x;
  const xi = (a.x - b.x) / (c.x - b.x);
  const phi = (a.value - b.value) / (c.value - b.value);
  if (!(phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi)) return span / 2;
  const share =
    (a.value / (b.value - a.value)) * (c.value / (b.value - c.value)) +
    ((c.x - a.x) / span) * (a.value / (c.value - a.value)) * (b.value / (c.value - b.value));
  if (!Number.isFinite(share)) return span / 2;
  const least = Math.min(0.5, tolerance / Math.abs(span));
  return span * Math.min(1 - least, Math.max(least, share));
}

/** The step itself when it lands inside the bracket and converges, else half of the bracket. */
function keptStep(
  step: number,
  { span, beforeLast }: { readonly span: number; readonly beforeLast: number },
): number {
  const inside = step / span > 0 && step / span < 1;
  return inside && Math.abs(step) < beforeLast / 2 ? step : span / 2;
}

const isNoise = (
  step: number,
  { newest, beforeLast }: { readonly newest: Evaluation; readonly beforeLast: number },
): boolean => Math.abs(step) <= NOISE * Math.abs(newest.x) && Math.abs(step) >= beforeLast / 2;

const differInSign = (a: Evaluation, b: Evaluation): boolean =>
  (a.value < 0 && b.value > 0) || (a.value > 0 && b.value < 0);

const nearer = (a: Evaluation, b: Evaluation): Evaluation => (Math.abs(a.value) <= Math.abs(b.value) ? a : b);

const found = ({ x, value }: Evaluation, iterations: number) =>
  success({ root: x, iterations, residual: value });
