/** Net positive suction head, available against required. */
import { atmosphericPressure } from '../physics/atmosphere.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { vapourPressure } from '../physics/vapour-pressure.ts';

/** Heads, elevations [m]; temperature [degC]; density [kg/m3]. */
export interface SuctionSide {
  /** Of the site above sea level. */
  readonly elevation: number;
  readonly temperature: number;
  readonly density: number;
  /** Of the pump's centreline above the surface drawn from; negative is flooded. */
  readonly pumpElevation: number;
  /** Everything lost from the surface to the pump, screen and intake included. */
  readonly suctionLoss: number;
}

/** Pressures [Pa] absolute, density [kg/m3], heads [m]. */
export interface SuctionPressures {
  readonly surfacePressure: number;
  readonly vapourPressure: number;
  readonly density: number;
  readonly pumpElevation: number;
  readonly suctionLoss: number;
}

/** Head [m] required at a flow [m3/s], at full speed. */
export interface NpshPoint {
  readonly flow: number;
  readonly head: number;
}

/** Below this speed ratio the required head is taken no lower. */
const LEAST_SPEED_RATIO = 0.8;

/**
 * NPSH available [m] to a pump that draws from an open surface:
 * (p_atm(elevation) - p_vap(temperature))/(rho g) - pumpElevation - suctionLoss, p_vap that of fresh water.
 */
export function npshAvailable(side: SuctionSide): number {
  return npshFromPressures({
    ...side,
    surfacePressure: atmosphericPressure(side.elevation),
    vapourPressure: vapourPressure(side.temperature),
  });
}

/** NPSH available [m] for known pressures; negative where the liquid would boil. */
export function npshFromPressures(side: SuctionPressures): number {
  const pressureHead = (side.surfacePressure - side.vapourPressure) / (side.density * GRAVITY);
  return pressureHead - side.pumpElevation - side.suctionLoss;
}

/**
 * NPSH required [m] at speed ratio r, max(r, 0.8)^2 NPSHr0(Q/r), points joined by lines, held at the ends.
 *
 * @param duty points at full speed in any order; flow [m3/s] of one pump; speedRatio [-] above 0.
 * @returns null without points.
 */
export function npshRequired(duty: {
  readonly points: readonly NpshPoint[];
  readonly flow: number;
  readonly speedRatio: number;
}): number | null {
  const atFullSpeed = onLines(duty.points, duty.flow / duty.speedRatio);
  return atFullSpeed === null ? null : Math.max(duty.speedRatio, LEAST_SPEED_RATIO) ** 2 * atFullSpeed;
}

function onLines(points: readonly NpshPoint[], flow: number): number | null {
  const ascending = points.toSorted((a, b) => a.flow - b.flow);
  const above = ascending.find((point) => point.flow >= flow);
  const below = ascending.findLast((point) => point.flow <= flow);
  if (above === undefined || below === undefined) return (above ?? below)?.head ?? null;
  if (above.flow === below.flow) return below.head;
  const share = (flow - below.flow) / (above.flow - below.flow);
  return below.head + share * (above.head - below.head);
}
