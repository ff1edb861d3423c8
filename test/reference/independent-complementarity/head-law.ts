/** A pump's head at full speed: sum of powers, piecewise where none meets the points, or assumed from two points. */
import type { Pump } from '../../../models/pump/pump.ts';
import { distinct } from '../independent/distinct.ts';
import { chooseHeadCurve, headAtFullSpeed, reducedPoints } from '../independent/head-curve.ts';
import { type Knot, type Place, piecewiseHead, withSlopes } from './piecewise.ts';

export interface HeadLaw {
  readonly shape: 'sum-of-powers' | 'piecewise' | 'assumed';
  /** Head [m] of one pump at a flow [m3/s]. */
  readonly at: (flow: number) => number;
  /** Largest entered flow brought to full speed [m3/s]. */
  readonly largestFlow: number;
  /** Rms residual of the chosen sum of powers as a part of the largest head. */
  readonly misfit?: number | undefined;
  readonly knots?: readonly Knot[] | undefined;
}

const GROUP = 0.01;
const MISFIT = 0.01;
const FEWEST_KNOTS = 5;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Points so close in flow that they are one place. */
export function knotPlaces(points: readonly Place[]): readonly Place[] {
  const sorted = [...points].sort((a, b) => a.flow - b.flow);
  const reach = GROUP * (sorted.at(-1)?.flow ?? 0);
  const groups: Place[][] = [];
  for (const point of sorted) {
    const group = groups.at(-1);
    const first = group?.[0];
    if (group !== undefined && first !== undefined && point.flow - first.flow <= reach) group.push(point);
    else groups.push([point]);
  }
  return groups.map((group) => ({
    flow: group[0]?.flow === 0 ? 0 : mean(group.map(({ flow }) => flow)),
    head: mean(group.map(({ head }) => head)),
  }));
}

/** Strictly falling, or strictly rising to one greatest head and then strictly falling. */
function isSinglePeaked(places: readonly Place[]): boolean {
  const heads = places.map(({ head }) => head);
  const top = heads.indexOf(Math.max(...heads));
  return heads.slice(1).every((head, index) => {
    const before = heads[index] ?? Number.NaN;
    return index < top ? head > before : head < before;
  });
}

/** H0 - (H0 - H1) (Q/Q1)^p, tangent beyond Q1. */
export function assumedHead(pump: Pump, power = 2): HeadLaw {
  const points = reducedPoints(pump);
  const largestFlow = Math.max(...points.map(({ flow }) => flow));
  const heads = (still: boolean): number =>
    mean(points.filter(({ flow }) => (flow === 0) === still).map(({ head }) => head));
  const [shutoff, fall] = [heads(true), heads(true) - heads(false)];
  const at = (flow: number): number => {
    const x = flow / largestFlow;
    return shutoff - fall * (x <= 1 ? x ** power : 1 + power * (x - 1));
  };
  return { shape: 'assumed', at, largestFlow };
}

/** The law of a pump's points; nothing where the points make none. */
export function headLaw(pump: Pump): HeadLaw | undefined {
  const points = reducedPoints(pump);
  const largestFlow = Math.max(...points.map(({ flow }) => flow));
  if (distinct(points.map(({ flow }) => flow)) === 2) return assumedHead(pump);
  const curve = chooseHeadCurve(pump);
  const largestHead = Math.max(...points.map(({ head }) => head));
  const misfit =
    curve === undefined
      ? Number.POSITIVE_INFINITY
      : Math.sqrt(mean(curve.residuals.map((residual) => residual ** 2))) / largestHead;
  const places = knotPlaces(points);
  if (misfit > MISFIT && places.length >= FEWEST_KNOTS && isSinglePeaked(places)) {
    const knots = withSlopes(places);
    return { shape: 'piecewise', at: piecewiseHead(knots), largestFlow, misfit, knots };
  }
  if (curve === undefined) return undefined;
  const at = (flow: number): number => headAtFullSpeed(curve, flow);
  return { shape: 'sum-of-powers', at, largestFlow, misfit };
}
