/** Finds the parameters at which a sum of squares is least, by non-linear least squares. */
import { centralDifferences } from './central-differences.ts';
import { leastSquares } from './least-squares.ts';
import { descend } from './levenberg-marquardt.ts';
import { failed, type Result, success } from './result.ts';

/** What to fit: parameters [any] in units of their own. */
export interface NonlinearQuestion {
  /** What is to be small, by parameters; as many as there are rows, whatever the parameters. */
  readonly residualsAt: (parameters: readonly number[]) => readonly number[];
  readonly start: readonly number[];
  /** Bounds of each parameter; unbounded where left out. */
  readonly low?: readonly number[] | undefined;
  readonly high?: readonly number[] | undefined;
  /** Whether the start is known to be near the least: then no damped steps are taken first. */
  readonly isNear?: boolean | undefined;
}

/** What was fitted: parameters [any] and residuals [any] in the units of the question. */
export interface NonlinearFit {
  readonly parameters: readonly number[];
  readonly residuals: readonly number[];
  /** d residual/d parameter, one row a residual. */
  readonly jacobian: readonly (readonly number[])[];
  readonly sumOfSquares: number;
  /** Whether a parameter ended at one of its bounds. */
  readonly atBound: boolean;
}

/** Why nothing was fitted: rows, parameters and steps [-] counted, the condition number [-] of the Jacobian. */
export type NonlinearFailure =
  | { readonly code: 'not-finite' }
  | { readonly code: 'fewer-rows-than-parameters'; readonly rows: number; readonly parameters: number }
  | { readonly code: 'singular'; readonly conditionNumber: number }
  | { readonly code: 'not-settled'; readonly steps: number };

const UNBOUNDED = 1e300;
/** Damped steps go in bursts of this many, until a burst gains less than a share of the sum, or this many bursts. */
const BURSTS = { steps: 3, most: 120, gain: 1e-3 } as const;
/** A parameter that has become less than this of its start is stepped as if it had not. */
const LEAST_SCALE = 1e-3;
const POLISH = { steps: 30, halvings: 12, flat: 1e-7, settled: 1e-10 } as const;

const squares = (residuals: readonly number[]): number =>
  residuals.reduce((total, residual) => total + residual ** 2, 0);

/**
 * The parameters p at which the sum of squares of the residuals e(p) is least.
 *
 * Damped steps by `descend` are taken as long as they gain, then undamped ones (Gauss-Newton, each step solved for by
 * `leastSquares`, halved until the sum falls) until one is under 1e-10 of the parameters.
 * @param question residuals [any] by parameters [any]; a start, and bounds where there are any, in the units of the
 *   parameters.
 * Accuracy: nine digits of the certified parameters and six of their standard deviations, of NIST Misra1a, Misra1b,
 *   DanWood, Chwirut2, Rat42 and Kirby2 from both of their starting values and of MGH17 from the second, the nearer
 *   one (test/curves/fit-nonlinear.test.ts).
 * Errors: `not-finite` where a residual at the start is no number; `fewer-rows-than-parameters`; `singular` where the
 *   rows do not determine the parameters; `not-settled` where the undamped steps come to no end.
 * Source: Levenberg (1944), Marquardt (1963); NIST/ITL StRD, non-linear regression.
 */
export function fitNonlinear(question: NonlinearQuestion): Result<NonlinearFit, NonlinearFailure> {
  const { residualsAt, start } = question;
  const first = residualsAt(start);
  if (!first.every(Number.isFinite)) return failed({ code: 'not-finite' });
  if (first.length < start.length) {
    return failed({ code: 'fewer-rows-than-parameters', rows: first.length, parameters: start.length });
  }
  // Steps of the package are damped alike in all parameters, so these are taken to the order of 1.
  const scales = start.map((value) => (value === 0 ? 1 : Math.abs(value)));
  const inScale = (values: readonly number[]) => values.map((value, index) => value / (scales[index] ?? 1));
  const low = inScale(question.low ?? start.map(() => -UNBOUNDED));
  const high = inScale(question.high ?? start.map(() => UNBOUNDED));
  const scaledAt = (units: readonly number[]) =>
    residualsAt(units.map((unit, index) => unit * (scales[index] ?? 1)));
  const within = { start: inScale(start), low, high };
  const begun = question.isNear === true ? within.start : descendInBursts(scaledAt, within);
  const polished = polish(scaledAt, { start: begun, low, high });
  if (!polished.ok) return polished;
  const { units, jacobian } = polished.value;
  const residuals = scaledAt(units);
  return success({
    parameters: units.map((unit, index) => unit * (scales[index] ?? 1)),
    residuals,
    jacobian: jacobian.map((row) => row.map((slope, index) => slope / (scales[index] ?? 1))),
    sumOfSquares: squares(residuals),
    atBound: units.some((unit, index) => unit === low[index] || unit === high[index]),
  });
}

interface Within {
  readonly start: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
}

type Residuals = (units: readonly number[]) => readonly number[];

function descendInBursts(residualsAt: Residuals, within: Within): readonly number[] {
  let units = within.start;
  let sum = squares(residualsAt(units));
  for (let burst = 0; burst < BURSTS.most; burst += 1) {
    // Neither the sum nor its slopes say how large a step may be: the size of the residuals is taken out.
    const size = Math.sqrt(sum) || 1;
    const found = descend((at) => residualsAt(at).map((residual) => residual / size), {
      ...within,
      start: units,
      steps: BURSTS.steps,
    });
    units = found.parameters;
    const before = sum;
    sum = found.sumOfSquares * size ** 2;
    if (before - sum <= BURSTS.gain * before) break;
  }
  return units;
}

interface Polished {
  readonly units: readonly number[];
  readonly jacobian: readonly (readonly number[])[];
}

function polish(residualsAt: Residuals, { start, low, high }: Within): Result<Polished, NonlinearFailure> {
  const slopesAt = (at: readonly number[]) =>
    centralDifferences(residualsAt, {
      parameters: at,
      scales: at.map((unit) => Math.max(LEAST_SCALE, Math.abs(unit))),
    });
  const kept = (unit: number, index: number) =>
    Math.min(high[index] ?? UNBOUNDED, Math.max(low[index] ?? -UNBOUNDED, unit));
  let units = start;
  let residuals = residualsAt(units);
  let jacobian = slopesAt(units);
  for (let step = 0; step < POLISH.steps; step += 1) {
    const solved = leastSquares(
      jacobian,
      residuals.map((residual) => -residual),
    );
    if (!solved.ok) return solved;
    const { coefficients } = solved.value;
    const stepBy = (share: number): Place => {
      const at = units.map((unit, index) => kept(unit + share * (coefficients[index] ?? 0), index));
      return { at, residuals: residualsAt(at) };
    };
    const whole = stepBy(1);
    // So near to the least the sum is flat to its last digit, while the step still has some to give.
    const moved = farthest(whole.at, units);
    const next = moved <= POLISH.flat ? whole : shortened(stepBy, squares(residuals));
    if (next === null) return success({ units, jacobian });
    ({ at: units, residuals } = next);
    jacobian = slopesAt(units);
    if (moved <= POLISH.settled) return success({ units, jacobian });
  }
  return failed({ code: 'not-settled', steps: POLISH.steps });
}

const farthest = (units: readonly number[], from: readonly number[]): number =>
  Math.max(
    ...units.map(
      (unit, index) => Math.abs(unit - (from[index] ?? 0)) / Math.max(LEAST_SCALE, Math.abs(unit)),
    ),
  );

interface Place {
  readonly at: readonly number[];
  readonly residuals: readonly number[];
}

/** The first of the whole step, half of it, a quarter, .. that lowers the sum; null where none does. */
function shortened(stepBy: (share: number) => Place, sum: number): Place | null {
  for (let halving = 0; halving <= POLISH.halvings; halving += 1) {
    const place = stepBy(0.5 ** halving);
    if (squares(place.residuals) < sum) return place;
  }
  return null;
}
