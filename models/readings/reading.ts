/** What was measured on a loop at one moment, in SI. */

/**
 * `time` in ms since 1970-01-01T00:00Z; `setting` [%]; `power` [W] electrical, of all pumps of the loop together; `flow` [m3/s]
 * total; `outletFlows` [m3/s] by the name of the outlet; `head` [m] across the pump, in the loop's water; pressures [Pa] above that
 * of the air, at the pump's level, just before and just behind it. What was not measured is absent.
 */
export interface Reading {
  readonly time: number;
  readonly setting: number;
  readonly power?: number | undefined;
  readonly flow?: number | undefined;
  readonly outletFlows?: Readonly<Record<string, number>> | undefined;
  readonly head?: number | undefined;
  readonly suctionPressure?: number | undefined;
  readonly dischargePressure?: number | undefined;
}
