/** Names the two systems of units in which numbers come and go. */

export const UNIT_SYSTEMS = ['metric', 'us'] as const;

export type UnitSystem = (typeof UNIT_SYSTEMS)[number];
