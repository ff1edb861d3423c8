/** A pump's head curve at full speed chosen from sums of powers by leave-one-out error. */
import type { Pump } from '../../../models/pump/pump.ts';
import { distinct } from './distinct.ts';
import { leastSquares } from './least-squares.ts';
import { speedRatio } from './speed.ts';

export interface HeadCurve {
  /** Powers of x = Q/scale beside the constant. */
  readonly powers: readonly number[];
  /** The constant first. */
  readonly coefficients: readonly number[];
  readonly scale: number;
  readonly leaveOneOut: number;
  readonly residuals: readonly number[];
}

const singles = [1, 2, 3, 4, 5, 6].map((p) => [p]);
const pairs = singles.flatMap(([p = 0]) => singles.flatMap(([q = 0]) => (p < q ? [[p, q]] : [])));
const CANDIDATES: readonly (readonly number[])[] = [...singles, ...pairs, [1, 2, 3]];

const SCAN = 2000;
/** A slope this small a part of the largest head is rounding, not a rise. */
const FLAT = 1e-11;

const slopeOf = ({ powers, coefficients }: Pick<HeadCurve, 'powers' | 'coefficients'>, x: number): number =>
  powers.reduce((sum, power, index) => sum + power * (coefficients[index + 1] ?? 0) * x ** (power - 1), 0);

const shareHead = ({ powers, coefficients }: HeadCurve, x: number): number =>
  powers.reduce(
    (sum, power, index) => sum + (coefficients[index + 1] ?? 0) * x ** power,
    coefficients[0] ?? 0,
  );

/** Head [m] at a flow [m3/s] at full speed; beyond the largest reduced flow along the tangent. */
export function headAtFullSpeed(curve: HeadCurve, flow: number): number {
  const x = flow / curve.scale;
  return x <= 1 ? shareHead(curve, x) : shareHead(curve, 1) + slopeOf(curve, 1) * (x - 1);
}

/** Points reduced to full speed by the affinity laws. */
export const reducedPoints = (pump: Pump): readonly { flow: number; head: number }[] =>
  pump.headPoints.map(({ flow, head, setting }) => {
    const ratio = speedRatio(pump, setting);
    return { flow: flow / ratio, head: head / ratio ** 2 };
  });

type Points = ReturnType<typeof reducedPoints>;

/** The greatest head is at a flow above the least. */
function droops(points: Points): boolean {
  const least = Math.min(...points.map((point) => point.flow));
  const atLeast = points.filter((point) => distinct([point.flow, least]) === 1);
  const greatest = Math.max(...points.map((point) => point.head));
  return greatest > Math.max(...atLeast.map((point) => point.head));
}

function fitted(points: Points, powers: readonly number[]): HeadCurve | undefined {
  const flows = points.map((point) => point.flow);
  if (distinct(flows) < powers.length + 2) return undefined;
  const scale = Math.max(...flows);
  const largestHead = Math.max(...points.map((point) => Math.abs(point.head)));
  const x = flows.map((flow) => flow / scale);
  const columns = [x.map(() => 1), ...powers.map((power) => x.map((value) => value ** power))];
  const heads = points.map((point) => point.head);
  const { coefficients, residuals, leverages } = leastSquares(columns, heads);
  const squares = residuals.map((residual, row) => (residual / (1 - (leverages[row] ?? 1))) ** 2);
  const mean = squares.reduce((sum, square) => sum + square, 0) / squares.length;
  const leaveOneOut = Math.max(mean, (1e-9 * largestHead) ** 2);
  const curve = { powers, coefficients, scale, leaveOneOut, residuals };
  const slopes = Array.from({ length: SCAN + 1 }, (_, index) => slopeOf(curve, index / SCAN));
  const rises = slopes.some((slope) => slope > FLAT * largestHead);
  if ((rises && !droops(points)) || slopeOf(curve, 1) >= 0) return undefined;
  return curve;
}

/** Orders by number of powers, then error, then the powers themselves. */
function before(a: HeadCurve, b: HeadCurve): number {
  if (a.powers.length !== b.powers.length) return a.powers.length - b.powers.length;
  if (a.leaveOneOut !== b.leaveOneOut) return a.leaveOneOut - b.leaveOneOut;
  const first = a.powers.findIndex((power, index) => power !== b.powers[index]);
  return (a.powers[first] ?? 0) - (b.powers[first] ?? 0);
}

/** The curve the rule picks; nothing when no candidate is left. */
export function chooseHeadCurve(pump: Pump): HeadCurve | undefined {
  const points = reducedPoints(pump);
  const curves = CANDIDATES.flatMap((powers) => fitted(points, powers) ?? []);
  const least = Math.min(...curves.map((curve) => curve.leaveOneOut));
  return curves.filter((curve) => curve.leaveOneOut <= 1.05 * least).sort(before)[0];
}
