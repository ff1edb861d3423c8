/** Finds the net positive suction head, available and required. */
import { atmosphericPressure } from '../physics/atmosphere.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { vapourPressure } from '../physics/vapour-pressure.ts';

/** What a pump draws from. */
export interface SuctionSide {
  /** Of the site above sea level [m]. */
  readonly elevation: number;
  /** Of the water [degC]. */
  readonly temperature: number;
  /** Of the water [kg/m3]. */
  readonly density: number;
  /** Of the pump's centreline above the surface drawn from [m]; negative is flooded. */
  readonly pumpElevation: number;
  /** Everything lost from the surface to the pump, screen and intake included [m]. */
  readonly suctionLoss: number;
}

/** The same by known pressures. */
export interface SuctionPressures {
  /** Absolute [Pa]. */
  readonly surfacePressure: number;
  /** Absolute [Pa]. */
  readonly vapourPressure: number;
  /** [kg/m3] */
  readonly density: number;
  /** [m] */
  readonly pumpElevation: number;
  /** [m] */
  readonly suctionLoss: number;
}

/** A point of the head required, at full speed. */
export interface NpshPoint {
  /** [m3/s] */
  readonly flow: number;
  /** [m] */
  readonly head: number;
}

/** Below this speed ratio the required head is taken no lower. */
const LEAST_SPEED_RATIO = 0.8;
/** Flows this near to each other are one (relative). */
const SAME_FLOW = 1e-9;

/**
 * NPSH available [m] to a pump that draws from an open surface:
 * (p_atm(elevation) - p_vap(temperature))/(rho g) - pumpElevation - suctionLoss, p_vap that of fresh water.
 *
 * @param side elevation [m] -500..11000; temperature [degC]; density rho [kg/m3]; pumpElevation and suctionLoss [m].
 * @returns negative where the water would boil before the pump.
 * Errors: throws a RangeError outside the elevations of the standard atmosphere.
 */
export function npshAvailable(side: SuctionSide): number {
  return npshFromPressures({
    ...side,
    surfacePressure: atmosphericPressure(side.elevation),
    vapourPressure: vapourPressure(side.temperature),
  });
}

/**
 * NPSH available [m] by known pressures: (p_surface - p_vap)/(rho g) - pumpElevation - suctionLoss; negative where
 * the liquid would boil.
 */
export function npshFromPressures(side: SuctionPressures): number {
  const pressureHead = (side.surfacePressure - side.vapourPressure) / (side.density * GRAVITY);
  return pressureHead - side.pumpElevation - side.suctionLoss;
}

/**
 * NPSH required [m] at a speed ratio r, max(r, 0.8)^2 NPSHr0(Q/r), points joined by lines, held below the least entered
 * flow; beyond the greatest, q_end, it rises as NPSHr_end (q/q_end)^2, since a curve rises at least so fast.
 *
 * @param duty points at full speed in any order [m3/s, m]; flow Q [m3/s] of one pump, 0 or more; speedRatio r [-] above 0.
 * @returns null without points.
 * Source of the rise: common practice, not looked up.
 */
export function npshRequired(duty: {
  readonly points: readonly NpshPoint[];
  readonly flow: number;
  readonly speedRatio: number;
}): number | null {
  const atFullSpeed = onLines(duty.points, duty.flow / duty.speedRatio);
  return atFullSpeed === null ? null : Math.max(duty.speedRatio, LEAST_SPEED_RATIO) ** 2 * atFullSpeed;
}

/** The greatest flow [m3/s] that the points reach, where a flow at full speed lies beyond it; else null. */
export function npshEndPassed(points: readonly NpshPoint[], fullSpeedFlow: number): number | null {
  const end = Math.max(...points.map(({ flow }) => flow));
  return points.length > 0 && fullSpeedFlow > end * (1 + SAME_FLOW) ? end : null;
}

function onLines(points: readonly NpshPoint[], flow: number): number | null {
  const ascending = points.toSorted((a, b) => a.flow - b.flow);
  const above = ascending.find((point) => point.flow >= flow);
  const below = ascending.findLast((point) => point.flow <= flow);
  if (below === undefined) return above?.head ?? null;
  if (above === undefined) return below.head * (below.flow === 0 ? 1 : (flow / below.flow) ** 2);
  if (above.flow === below.flow) return below.head;
  const share = (flow - below.flow) / (above.flow - below.flow);
  return below.head + share * (above.head - below.head);
}
