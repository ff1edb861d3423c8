/** The two laws of power against speed and flow, each fitted by least squares on logarithms. */
import { crossing } from '../independent/crossing.ts';
import { leastSquares } from '../independent/least-squares.ts';
import { type PowerRows, withFlowTerms } from './power-rows.ts';

/** P - standby = (fixed + coefficient r^exponent) g(x), ln g = b1 x + b2 x^2. */
export interface Law {
  readonly fixed: number;
  readonly coefficient: number;
  readonly exponent: number;
  readonly flowTerms: readonly number[];
}

/** A law with the residuals of ln(P - standby), and the leverages of its columns. */
export interface Fitted extends Law {
  readonly residuals: readonly number[];
  readonly leverages: readonly number[];
}

const ones = ({ rows }: PowerRows): number[] => rows.map(() => 1);

/** Law A; with one speed its exponent is 3. */
export function exponentLaw(data: PowerRows): Fitted {
  const several = data.speeds > 1;
  const logs = data.rows.map(({ ratio }) => Math.log(ratio));
  const columns = withFlowTerms(several ? [ones(data), logs] : [ones(data)], data);
  const y = data.rows.map((row, index) => row.y - (several ? 0 : 3 * (logs[index] ?? 0)));
  const { coefficients, residuals, leverages } = leastSquares(columns, y);
  return {
    fixed: 0,
    coefficient: Math.exp(coefficients[0] ?? Number.NaN),
    exponent: several ? (coefficients[1] ?? Number.NaN) : 3,
    flowTerms: coefficients.slice(several ? 2 : 1),
    residuals,
    leverages,
  };
}

const LARGEST_SHARE = 10;
const PLACES = 600;
const FIRST_PLACE = 1e-9;

/** Values of u over its whole interval, close together near 0. */
const places = [
  0,
  ...Array.from(
    { length: PLACES + 1 },
    (_, index) => FIRST_PLACE * (LARGEST_SHARE / FIRST_PLACE) ** (index / PLACES),
  ),
];

/** Law B: the ratio u of its fixed to its cubic part is where the sum of squares is least. */
export function fixedLossLaw(data: PowerRows): Fitted {
  const columns = withFlowTerms([ones(data)], data);
  const inverse = (u: number): number[] => data.rows.map(({ ratio }) => 1 / (u + ratio ** 3));
  const fitAt = (u: number) =>
    leastSquares(
      columns,
      data.rows.map(({ y, ratio }) => y - Math.log(u + ratio ** 3)),
    );
  const squares = (u: number): number => fitAt(u).residuals.reduce((sum, residual) => sum + residual ** 2, 0);
  // Half of the derivative of the sum of squares by u: the coefficients are at their best already.
  const slope = (u: number): number => {
    const weights = inverse(u);
    return -fitAt(u).residuals.reduce((sum, residual, row) => sum + residual * (weights[row] ?? 0), 0);
  };
  const slopes = places.map(slope);
  const valleys = places.slice(1).flatMap((high, index) => {
    const [low, before, after] = [places[index] ?? 0, slopes[index] ?? 0, slopes[index + 1] ?? 0];
    return before < 0 && after >= 0 ? [crossing(slope, [low, before], [high, after])] : [];
  });
  const [u = 0] = [0, LARGEST_SHARE, ...valleys].sort((a, b) => squares(a) - squares(b));
  const { coefficients, residuals } = fitAt(u);
  const coefficient = Math.exp(coefficients[0] ?? Number.NaN);
  const withShare = u > 0 ? [...columns, inverse(u)] : columns;
  const { leverages } = leastSquares(
    withShare,
    data.rows.map(({ y }) => y),
  );
  return {
    fixed: u * coefficient,
    coefficient,
    exponent: 3,
    flowTerms: coefficients.slice(1),
    residuals,
    leverages,
  };
}
