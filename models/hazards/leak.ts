/** Finds what leaves a tank by a hole, a failed seal or a broken pipe. */
import { failed, type Result, success } from '../../curves/result.ts';
import { drainTime, type Orifice, orificeFlow } from '../components/orifice.ts';

/** A round hole of a diameter [m], or a seal that gapes all round a fitting: gap [m], fittingDiameter [m]. */
export type LeakOpening =
  | { readonly diameter: number }
  | { readonly gap: number; readonly fittingDiameter: number };

/** A leak to be followed. */
export interface Leak {
  readonly opening: LeakOpening;
  /** Cd [-]. */
  readonly dischargeCoefficient: number;
  /** The hole in the tank below its surface [m]. */
  readonly depth: number;
  /** Where a pipe from that hole is broken: how far below the hole [m]; 0 at the tank's wall. */
  readonly drop: number;
  /** Height [m] above the hole that the time to a level is asked for; null: not asked. */
  readonly level: number | null;
  /** Volume [m3] where it is known, surface [m2]. */
  readonly tank: { readonly volume?: number | undefined; readonly area: number };
  /** Of the room or tray that the water spreads over [m2]; null: not known. */
  readonly floorArea: number | null;
}

/** What leaves a tank, when. */
export interface LeakFigures {
  /** Outflow at the start [m3/s]. */
  readonly flow: number;
  /** Until the surface is down at the hole [s]. */
  readonly timeToHole: number;
  /** Until it is down at the level asked for [s]; null where none is. */
  readonly timeToLevel: number | null;
  /** Lost [m3]. */
  readonly volume: number;
  /** Of the water on the floor [m]; null where its area is not known. */
  readonly floodDepth: number | null;
}

/** Why a leak cannot be followed; depth [m], area of the opening [m2]. */
export type LeakFailure =
  | { readonly code: 'level-above-surface'; readonly depth: number }
  | { readonly code: 'opening-wider-than-tank'; readonly openingArea: number };

/** Area of an opening [m2]: pi d^2/4 of a hole; a slit of the gap's width all round a fitting, pi d x gap. */
export function openingArea(opening: LeakOpening): number {
  if ('diameter' in opening) return (Math.PI / 4) * opening.diameter ** 2;
  return Math.PI * opening.fittingDiameter * opening.gap;
}

/**
 * Outflow at the start, times until the surface is down at the hole and at a level, volume lost, depth of the flood.
 *
 * The head is depth + drop at first and drop when the surface is down at the hole: a break below the tank drains it
 * faster, friction in the pipe left out. The volume is surface x depth, at most the tank's.
 * @returns flow [m3/s], times [s], volume [m3], depth [m].
 * Errors: `level-above-surface`; `opening-wider-than-tank`, which no slow fall describes.
 */
export function leak({
  opening,
  dischargeCoefficient,
  depth,
  drop,
  level,
  tank,
  floorArea,
}: Leak): Result<LeakFigures, LeakFailure> {
  if (level !== null && level > depth) return failed({ code: 'level-above-surface', depth });
  const orifice: Orifice = { dischargeCoefficient, area: openingArea(opening) };
  if (orifice.area >= tank.area) {
    return failed({ code: 'opening-wider-than-tank', openingArea: orifice.area });
  }
  const timeDownTo = (height: number): number =>
    drainTime(orifice, { surface: tank.area, from: depth + drop, to: height + drop });
  const volume = Math.min(tank.area * depth, tank.volume ?? Number.POSITIVE_INFINITY);
  return success({
    flow: orificeFlow(orifice, depth + drop),
    timeToHole: timeDownTo(0),
    timeToLevel: level === null ? null : timeDownTo(level),
    volume,
    floodDepth: floorArea === null ? null : volume / floorArea,
  });
}
