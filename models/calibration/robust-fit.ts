/** Finds the factors at which a loop and its pump come nearest to most of what was measured. */
import { leastSquares } from '../../curves/least-squares.ts';
import { failed, type Result, success } from '../../curves/result.ts';
import { median } from '../../curves/theil-sen.ts';
import { type Factors, factorOf, factorsOf, type ParameterName } from '../pump/factors.ts';
import { SCATTER_ASSUMED, scatterAssumed } from '../readings/measure.ts';
import type { Prediction } from './prediction.ts';
import type { Measure, Row } from './row-collector.ts';

/** Tukey's biweight: values beyond so many scales weigh nothing; 95 % efficient on normal errors. */
const BIWEIGHT = 4.685;
/** Scales are that much wider at the first passes, so that the start does not decide which values count. */
const WIDE = [6, 3, 1.5] as const;
/** After some passes scales stay and steps shrink as 1/pass: medians, and curves that end in a kink, make whole ones go to and fro. */
const PASSES = { most: 60, whole: 15, settled: 1e-7, step: 1 } as const;
/** Beyond these no clogging, wear or meter is meant, but other pipework or another pump. */
export const PLAUSIBLE = {
  friction: { low: 0.02, high: 50 },
  head: { low: 0.3, high: 1.5 },
  power: { low: 0.1, high: 10 },
} as const;
/** A prediction of nothing has no logarithm. */
const LEAST_PREDICTED = 1e-12;
/** d ln f for slopes: a duty solved for to 1e-10 keeps six digits of them. */
const SLOPE_STEP = 1e-4;

export interface FittedRow {
  readonly row: Row;
  readonly predicted: number;
  /** ln(value/predicted), and the weight of each value, 0 to 1. */
  readonly residuals: readonly number[];
  readonly weights: readonly number[];
  /** d ln predicted/d ln factor. */
  readonly slopes: Factors;
}

/** Of one measure: by its values alone, and drawn to what is assumed of meters, few values more than many. */
export interface Scale {
  readonly raw: number;
  readonly used: number;
}

export interface RobustFit {
  readonly names: readonly ParameterName[];
  readonly factors: Factors;
  readonly rows: readonly FittedRow[];
  readonly scales: ReadonlyMap<Measure, Scale>;
}

export type RobustFitFailure = { readonly code: 'not-distinct' } | { readonly code: 'implausible' };

/**
 * Steps of weighted least squares of ln(value/predicted) on the logarithms of the factors, weights by Tukey's biweight with
 * c = 4.685 and scales of their own by measure, started wide.
 *
 * Sources: Huber (1981), Robust Statistics; Beaton and Tukey (1974), Technometrics 16, 147.
 */
export function robustFit(
  rows: readonly Row[],
  names: readonly ParameterName[],
  predict: Prediction,
): Result<RobustFit, RobustFitFailure> {
  let logs: readonly number[] = names.map(() => 0);
  let scales: RobustFit['scales'] = new Map();
  for (let pass = 0; ; pass += 1) {
    const factors = factorsOf(names, logs.map(Math.exp));
    const placed = rows.map((row) => rowAt(row, { factors, predict }));
    if (pass < PASSES.whole) scales = scalesOf(placed, names.length);
    const wide = WIDE[pass] ?? 1;
    const weighed = placed.map((one) => weighedBy(one, wide * scaleOf(scales, one.row)));
    const step = stepOf(weighed, names, scales);
    if (step === null) return failed({ code: 'not-distinct' });
    const most = Math.max(...step.map(Math.abs));
    if ((pass >= WIDE.length && most < PASSES.settled) || pass === PASSES.most) {
      return success({ names, factors, rows: weighed, scales });
    }
    const share = Math.min(1 / Math.max(1, pass - PASSES.whole), PASSES.step / most);
    logs = logs.map((log, i) => log + share * (step[i] ?? 0));
    if (names.some((name, i) => !isPlausible(name, Math.exp(logs[i] ?? 0))))
      return failed({ code: 'implausible' });
  }
}

const isPlausible = (name: ParameterName, value: number): boolean => {
  const { low, high } = PLAUSIBLE[factorOf(name)];
  return value > low && value < high;
};

export const scaleOf = (scales: RobustFit['scales'], { measure }: Pick<Row, 'measure'>): number =>
  scales.get(measure)?.used ?? scatterAssumed(measure);

interface Place {
  readonly factors: Factors;
  readonly predict: Prediction;
}

function rowAt(row: Row, { factors, predict }: Place): Omit<FittedRow, 'weights'> {
  const predicted = Math.max(LEAST_PREDICTED, predict(row, factors));
  return {
    ...{ row, predicted, slopes: slopesAt(row, { factors, predict }) },
    residuals: row.values.map((value) => Math.log(value / predicted)),
  };
}

/** d ln predicted/d ln factor, by central differences. */
export function slopesAt(gauge: Parameters<Prediction>[0], { factors, predict }: Place): Factors {
  const slope = (name: keyof Factors): number => {
    const at = (change: number) =>
      Math.log(
        Math.max(LEAST_PREDICTED, predict(gauge, { ...factors, [name]: factors[name] * Math.exp(change) })),
      );
    return (at(SLOPE_STEP) - at(-SLOPE_STEP)) / (2 * SLOPE_STEP);
  };
  return { friction: slope('friction'), head: slope('head'), power: slope('power') };
}

/**
 * 1.48 MAD (1 + 1.2/n) sqrt(n/(n - k)) of a measure, k its share of the parameters; with few values near the assumed.
 *
 * Source: Croux and Rousseeuw (1992), Computational Statistics 1, 411, for small samples.
 */
function scalesOf(rows: readonly Omit<FittedRow, 'weights'>[], parameters: number): RobustFit['scales'] {
  const all = new Map<Measure, number[]>();
  for (const { row, residuals } of rows)
    all.set(row.measure, [...(all.get(row.measure) ?? []), ...residuals]);
  const total = [...all.values()].reduce((sum, own) => sum + own.length, 0);
  return new Map(
    [...all].map(([measure, own]) => {
      const n = own.length;
      const free = Math.max(1 / n, 1 - parameters / total);
      const raw = (1.48 * median(own.map(Math.abs)) * (1 + 1.2 / n)) / Math.sqrt(free);
      const { readings } = SCATTER_ASSUMED;
      const used = Math.sqrt((readings * scatterAssumed(measure) ** 2 + n * raw ** 2) / (readings + n));
      return [measure, { raw, used }];
    }),
  );
}

const weighedBy = (one: Omit<FittedRow, 'weights'>, scale: number): FittedRow => ({
  ...one,
  weights: one.residuals.map((residual) => {
    const share = residual / (BIWEIGHT * scale);
    return Math.abs(share) < 1 ? (1 - share ** 2) ** 2 : 0;
  }),
});

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Of the logarithms of the factors; null where the rows do not determine one. */
function stepOf(
  rows: readonly FittedRow[],
  names: readonly ParameterName[],
  scales: RobustFit['scales'],
): readonly number[] | null {
  const counted = rows.filter(({ weights }) => sum(weights) > 0);
  const rootOf = ({ row, weights }: FittedRow) => Math.sqrt(sum(weights)) / scaleOf(scales, row);
  const fit = leastSquares(
    counted.map((one) => names.map((name) => rootOf(one) * one.slopes[factorOf(name)])),
    counted.map((one) => {
      const mean =
        sum(one.residuals.map((residual, j) => residual * (one.weights[j] ?? 0))) / sum(one.weights);
      return rootOf(one) * mean;
    }),
  );
  return fit.ok ? fit.value.coefficients : null;
}
