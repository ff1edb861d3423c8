/** Names what meters measure on a loop. */

export const MEASURES = [
  'flow',
  'power',
  'head',
  'suctionPressure',
  'dischargePressure',
  'outletFlow',
] as const;

export type Measure = (typeof MEASURES)[number];

/** The meters of a measure. */
export interface Meter {
  readonly measure: Measure;
  /** One standard deviation of their gain [-]; of a pressure: as a share of the predicted head. */
  readonly accuracy: number;
}
