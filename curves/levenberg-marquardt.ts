/** Descends towards least squares by damped steps, after Levenberg and Marquardt. */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';

/** Where a descent ended. */
export interface Descent {
  /** Each of the order of 1 [-]. */
  readonly parameters: readonly number[];
  /** Of the residuals there [square of their unit]. */
  readonly sumOfSquares: number;
}

const FIRST_DAMPING = 1e-2;
const DIFFERENCE = 1e-5;

/**
 * The best parameters met in at most `steps` damped steps from `start`: those with the least sum of squares of
 * `residualsAt`, never worse than the start.
 *
 * The steps end where a residual is not a number, and do not begin where the parameters cannot be separated. The
 * package keeps a step that makes things worse for the next one to start from, so what it ends on is near the least,
 * not at it: `fitNonlinear` goes on from there.
 * @param residualsAt residuals by parameters, in one unit [any].
 * @param from start, low and high of each parameter, scaled to the order of 1 [-]; steps [-] at most.
 */
export function descend(
  residualsAt: (parameters: readonly number[]) => readonly number[],
  {
    start,
    low,
    high,
    steps,
  }: {
    readonly start: readonly number[];
    readonly low: readonly number[];
    readonly high: readonly number[];
    readonly steps: number;
  },
): Descent {
  const rows = residualsAt(start).map((_, index) => index);
  // The package wants two rows or more: a row that is always met changes nothing.
  const x = [...rows, rows.length];
  try {
    const { parameterValues, parameterError } = levenbergMarquardt(
      { x, y: x.map(() => 0) },
      (parameters) => {
        const residuals = residualsAt(parameters);
        return (row) => residuals[row] ?? 0;
      },
      {
        initialValues: start,
        minValues: low,
        maxValues: high,
        damping: FIRST_DAMPING,
        gradientDifference: DIFFERENCE,
        centralDifference: true,
        maxIterations: steps,
        errorTolerance: 0,
      },
    );
    return { parameters: parameterValues, sumOfSquares: parameterError };
  } catch (error) {
    // What the package says of parameters that cannot be separated; other errors are bugs.
    if (!(error instanceof Error && error.message.includes('singular'))) throw error;
    return { parameters: start, sumOfSquares: squares(residualsAt(start)) };
  }
}

const squares = (residuals: readonly number[]): number =>
  residuals.reduce((total, residual) => total + residual ** 2, 0);
