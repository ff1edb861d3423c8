/** The factors at which loop and pump come nearest to what was measured. */
import { fitNonlinear, type NonlinearFailure } from '../../curves/fit-nonlinear.ts';
import { failed, type Result, success } from '../../curves/result.ts';
import { type Factors, factorOf, factorsOf, type ParameterName } from '../pump/factors.ts';
import { type Assessment, assess, type LinearRow } from './assess.ts';
import { departure, linearRow } from './linear-rows.ts';
import type { Measured } from './measured-rows.ts';
import { ASSUMED_VARIANCES, type Variances } from './noise.ts';
import type { Prediction } from './prediction.ts';

export interface FittedFactors {
  readonly names: readonly ParameterName[];
  readonly values: readonly number[];
  readonly factors: Factors;
  /** What it rests on, and that as it stands at the factors. */
  readonly measured: readonly Measured[];
  readonly rows: readonly LinearRow[];
  readonly assessment: Assessment;
}

export type FitFactorsFailure =
  | NonlinearFailure
  /** The readings lie beyond what factors can explain. */
  | { readonly code: 'implausible'; readonly factors: Factors };

/** Beyond these no clogging, wear or meter is meant, but other pipework or another pump. */
export const PLAUSIBLE = {
  friction: { low: 0.02, high: 50 },
  head: { low: 0.3, high: 1.5 },
  power: { low: 0.1, high: 10 },
} as const;

/**
 * Weighted least squares of ln(mean/predicted), each row with its readings over their variance; fitted with the assumed
 * variances first, then with those that the residuals show.
 */
export function fitFactors(
  rows: readonly Measured[],
  names: readonly ParameterName[],
  predict: Prediction,
): Result<FittedFactors, FitFactorsFailure> {
  const first = fitOnce({ rows, names, predict, variances: ASSUMED_VARIANCES, start: null });
  if (!first.ok) return first;
  const { values, assessment } = first.value;
  return fitOnce({ rows, names, predict, variances: assessment.variances, start: values });
}

interface OneFit {
  readonly rows: readonly Measured[];
  readonly names: readonly ParameterName[];
  readonly predict: Prediction;
  readonly variances: Variances;
  /** Null: as entered. */
  readonly start: readonly number[] | null;
}

function fitOnce({
  rows,
  names,
  predict,
  variances,
  start,
}: OneFit): Result<FittedFactors, FitFactorsFailure> {
  const bounds = names.map((name) => PLAUSIBLE[factorOf(name)]);
  const fit = fitNonlinear({
    residualsAt: (values) => {
      const factors = factorsOf(names, values);
      return rows.map(
        (row) => Math.sqrt(row.count / variances[row.measure]) * departure(row, predict(row, factors)),
      );
    },
    start: start ?? names.map(() => 1),
    isNear: start !== null,
    low: bounds.map(({ low }) => low),
    high: bounds.map(({ high }) => high),
  });
  if (!fit.ok) return fit;
  const { parameters: values, atBound } = fit.value;
  const factors = factorsOf(names, values);
  if (atBound) return failed({ code: 'implausible', factors });
  const linear = rows.map((row) => linearRow(row, factors, predict));
  const assessment = assess(linear, names);
  if (!assessment.ok) return assessment;
  return success({ names, values, factors, measured: rows, rows: linear, assessment: assessment.value });
}
