/** Names what meters measure on a loop, and how well they are taken to. */

export const MEASURES = [
  'flow',
  'power',
  'head',
  'suctionPressure',
  'dischargePressure',
  'outletFlow',
] as const;

export type Measure = (typeof MEASURES)[number];

export const isPressure = (measure: Measure): boolean =>
  measure === 'suctionPressure' || measure === 'dischargePressure';

/** Whether a measure follows from the head curve of the pump alone, as the others do less directly. */
export const isHead = (measure: Measure): boolean => measure === 'head' || isPressure(measure);

/** What is measured: a head `valveClosed` is that of the pump at no flow. */
export interface Gauge {
  readonly measure: Measure;
  /** Of an `outletFlow`; null: of the whole loop. */
  readonly outlet: string | null;
  readonly valveClosed: boolean;
}

export const gaugeOf = (measure: Measure, outlet: string | null = null): Gauge => ({
  ...{ measure, outlet, valveClosed: false },
});

export const gaugeKey = ({ measure, outlet, valveClosed }: Gauge): string =>
  JSON.stringify([measure, outlet, valveClosed]);

/** One standard deviation of a meter's gain; of a pressure: as a share of the predicted head. */
export interface Meter {
  readonly measure: Measure;
  readonly accuracy: number;
}

/** Where none is stated: common practice for clamp-on meters, gauges and plug-in power meters. */
export const ACCURACY_ASSUMED = 0.02;

export const accuracyOf = (meters: readonly Meter[], measure: Measure): number =>
  meters.find((meter) => meter.measure === measure)?.accuracy ?? ACCURACY_ASSUMED;

/**
 * Standard deviation of one reading about its mean before readings show it, worth so many of them: common practice, power being
 * read off a display and flows and pressures off a moving needle.
 */
export const SCATTER_ASSUMED = { readings: 4, power: 0.01, other: 0.02 } as const;

export const scatterAssumed = (measure: Measure): number =>
  measure === 'power' ? SCATTER_ASSUMED.power : SCATTER_ASSUMED.other;

/** Share by which a head differs from the pump's curve where no grade is stated: that of published curves, common practice. */
export const HEAD_TOLERANCE_ASSUMED = 0.03;
