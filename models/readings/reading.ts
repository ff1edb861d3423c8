/** Describes what was measured on a loop at one moment, in SI. */

/** What was measured; what was not is undefined. */
export interface Reading {
  /** Instant [ms since 1970-01-01T00:00Z]. */
  readonly time: number;
  /** [% of full] */
  readonly setting: number;
  /** Electrical, of all pumps of the loop together [W]. */
  readonly power?: number | undefined;
  /** Total [m3/s]. */
  readonly flow?: number | undefined;
  /** By the name of the outlet [m3/s]. */
  readonly outletFlows?: Readonly<Record<string, number>> | undefined;
  /** Across the pump, in the loop's water [m]. */
  readonly head?: number | undefined;
  /** Above that of the air, at the pump's level, just before it [Pa]. */
  readonly suctionPressure?: number | undefined;
  /** Above that of the air, at the pump's level, just behind it [Pa]. */
  readonly dischargePressure?: number | undefined;
}
