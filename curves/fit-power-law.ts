/** Fits a power law to the power points that a user entered. */
import { countDistinct } from './distinct.ts';
import { fitQuality } from './fit-quality.ts';
import { type LeastSquaresFit, leastSquares } from './least-squares.ts';
import type { PowerLaw } from './power-law.ts';
import { type PowerLawFailure, type PowerPoint, powerPointsFailure } from './power-points.ts';
import { failed, type Result, success } from './result.ts';

export type { PowerLawFailure } from './power-points.ts';

/** Shaft power goes with the cube of speed where head is all friction: common practice, and the affinity law. */
const CUBE_LAW = 3;
const CONDITION_LIMIT = 1e8;
const FLOWS_FOR_SLOPE = 3;
const FLOWS_FOR_CURVATURE = 5;

/** Whether ln r is a column, and how many powers of x are. */
interface Terms {
  readonly speed: boolean;
  readonly flow: number;
}

/** Where the flows of the points lie, as q = (Q/r)/scale; a null scale when no flow is above 0. */
interface FlowFrame {
  readonly scale: number;
  readonly centre: number;
  readonly min: number;
  readonly max: number;
  readonly distinct: number;
}

/**
 * The power law P = standby + c r^k exp(b1 x + b2 x^2) through the points: one least-squares fit of ln(P - standby) on
 * [1, ln r, x, x^2], x = q - q0, q = (Q/r)/(largest such), q0 the mean q of the points with flow; a point without flow
 * counts as taken at q0.
 *
 * `standbyPower` [W]. ln r enters with two distinct speeds, else k = 3; x with three distinct q; x^2 with five. While
 * the condition number of the columns exceeds 1e8, x^2 is dropped, then x, then ln r.
 */
export function fitPowerLaw(
  points: readonly PowerPoint[],
  { standbyPower }: { readonly standbyPower: number },
): Result<PowerLaw, PowerLawFailure> {
  const failure = powerPointsFailure(points, standbyPower);
  if (failure !== undefined) return failed(failure);

  const frame = flowFrame(points);
  const logPowers = points.map((point) => Math.log(point.power - standbyPower));
  const { terms, fit } = fitTerms(points, { frame, logPowers });
  const [constant = 0, ...others] = fit.coefficients;
  const [exponent = CUBE_LAW] = terms.speed ? others : [];
  const flowTerms = terms.speed ? others.slice(1) : others;
  const framed = flowTerms.length > 0;
  return success({
    exponent,
    exponentAssumed: !terms.speed,
    coefficient: Math.exp(constant),
    flowTerms,
    flowScale: framed ? frame.scale : null,
    flowCentre: framed ? frame.centre : null,
    flowRange: framed ? { min: frame.min, max: frame.max } : null,
    standbyPower,
    ...fitQuality({ values: logPowers, residuals: fit.residuals, parameters: fit.coefficients.length }),
  });
}

function flowFrame(points: readonly PowerPoint[]): FlowFrame {
  const flows = points.flatMap(({ flow, speedRatio }) => (flow === undefined ? [] : [flow / speedRatio]));
  const scale = Math.max(0, ...flows);
  if (scale === 0) return { scale, centre: 0, min: 0, max: 0, distinct: Math.min(1, flows.length) };
  const shares = flows.map((flow) => flow / scale);
  return {
    scale,
    centre: shares.reduce((total, share) => total + share, 0) / shares.length,
    min: Math.min(...shares),
    max: Math.max(...shares),
    distinct: countDistinct(shares),
  };
}

/** The fit on the most terms that the points settle. */
function fitTerms(
  points: readonly PowerPoint[],
  { frame, logPowers }: { readonly frame: FlowFrame; readonly logPowers: readonly number[] },
): { readonly terms: Terms; readonly fit: LeastSquaresFit } {
  const speed = countDistinct(points.map((point) => point.speedRatio)) >= 2;
  for (const terms of termsToTry({ speed, distinctFlows: frame.distinct })) {
    const fit = leastSquares(
      points.map((point) => termRow(point, { frame, terms })),
      points.map(
        (point, index) => (logPowers[index] ?? 0) - (terms.speed ? 0 : CUBE_LAW * Math.log(point.speedRatio)),
      ),
    );
    if (fit.ok && fit.value.conditionNumber <= CONDITION_LIMIT) return { terms, fit: fit.value };
  }
  throw new Error('a constant alone could not be fitted: a power or a speed is not a finite number');
}

function termsToTry({
  speed,
  distinctFlows,
}: {
  readonly speed: boolean;
  readonly distinctFlows: number;
}): Terms[] {
  const most = distinctFlows >= FLOWS_FOR_CURVATURE ? 2 : distinctFlows >= FLOWS_FOR_SLOPE ? 1 : 0;
  const fewer = [2, 1, 0].filter((flow) => flow <= most).map((flow) => ({ speed, flow }));
  return [...fewer, { speed: false, flow: 0 }];
}

function termRow(
  { flow, speedRatio }: PowerPoint,
  { frame, terms }: { readonly frame: FlowFrame; readonly terms: Terms },
): readonly number[] {
  const x = flow === undefined || terms.flow === 0 ? 0 : flow / speedRatio / frame.scale - frame.centre;
  return [1, ...(terms.speed ? [Math.log(speedRatio)] : []), ...[x, x ** 2].slice(0, terms.flow)];
}
