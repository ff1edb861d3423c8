/** Checks what power points must meet before a power law can be fitted to them. */
import { areDistinct } from './distinct.ts';

export interface PowerPoint {
  /** [-], above 0. */
  readonly speedRatio: number;
  /** Electrical [W], standby included. */
  readonly power: number;
  /** [m3/s], where it was noted. */
  readonly flow?: number | undefined;
}

/** Why no power law fits: index [-] of a point in the list given, speedRatio [-], power and standbyPower [W]. */
export type PowerLawFailure =
  | { readonly code: 'no-points' }
  | { readonly code: 'speed-not-positive'; readonly index: number; readonly speedRatio: number }
  | {
      readonly code: 'power-not-above-standby';
      readonly index: number;
      readonly power: number;
      readonly standbyPower: number;
    }
  | {
      readonly code: 'power-falls-with-speed';
      readonly index: number;
      readonly power: number;
      /** A point at a lower speed that draws more. */
      readonly slowerIndex: number;
      readonly slowerPower: number;
    };

/**
 * The first reason why no power law fits some points, or undefined.
 *
 * Power may fall with speed between points that state their flow: the faster one may be throttled.
 * @param points speed ratios [-], powers [W], flows [m3/s] where noted; in any order.
 * @param standbyPower [W] of 0 or more.
 * @returns indices [-] that are places in the list given.
 */
export function powerPointsFailure(
  points: readonly PowerPoint[],
  standbyPower: number,
): PowerLawFailure | undefined {
  if (points.length === 0) return { code: 'no-points' };
  for (const [index, { speedRatio, power }] of points.entries()) {
    if (!(speedRatio > 0)) return { code: 'speed-not-positive', index, speedRatio };
    if (!(power > standbyPower)) return { code: 'power-not-above-standby', index, power, standbyPower };
  }
  return firstFall(points);
}

/** Walks up the speeds with the greediest point met so far at a lower speed. */
function firstFall(points: readonly PowerPoint[]): PowerLawFailure | undefined {
  const rising = points
    .map((point, index) => ({ ...point, index }))
    .filter((point) => point.flow === undefined)
    .toSorted((a, b) => a.speedRatio - b.speedRatio || a.power - b.power);
  let slower = rising[0];
  let before = rising[0];
  for (const point of rising) {
    if (before === undefined || slower === undefined) return undefined;
    if (areDistinct(point.speedRatio, before.speedRatio) && before.power > slower.power) slower = before;
    if (areDistinct(point.speedRatio, slower.speedRatio) && point.power < slower.power) {
      return {
        code: 'power-falls-with-speed',
        index: point.index,
        power: point.power,
        slowerIndex: slower.index,
        slowerPower: slower.power,
      };
    }
    before = point;
  }
  return undefined;
}
