/** Describes the points of a head curve as every shape of curve is fitted to them. */

/** A point at full speed: flow [m3/s], head [m]. */
export interface FullSpeedPoint {
  readonly flow: number;
  readonly head: number;
}

/** Points at full speed, as every shape of curve is fitted to them. */
export interface HeadPoints {
  readonly points: readonly FullSpeedPoint[];
  /** Largest flow [m3/s]. */
  readonly flowScale: number;
  /** Head [m] below which differences are rounding. */
  readonly rounding: number;
  /** The greatest head is at a flow above the least. */
  readonly drooping: boolean;
  /** How many flows are distinct [-]. */
  readonly distinct: number;
}
