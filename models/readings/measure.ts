/** Says how well what is measured on a loop is taken to be measured. */
import type { Measure, Meter } from '../loop/meter.ts';

/** Whether a measure is read off a gauge before or behind the pump. */
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

/** The gauge of a measure with every valve open; `outlet` of an `outletFlow`. */
export const gaugeOf = (measure: Measure, outlet: string | null = null): Gauge => ({
  ...{ measure, outlet, valveClosed: false },
});

/** Tells gauges apart. */
export const gaugeKey = ({ measure, outlet, valveClosed }: Gauge): string =>
  JSON.stringify([measure, outlet, valveClosed]);

/** Where none is stated: common practice for clamp-on meters, gauges and plug-in power meters. */
export const ACCURACY_ASSUMED = 0.02;

/** The stated accuracy of a measure [-], else the one that is assumed. */
export const accuracyOf = (meters: readonly Meter[], measure: Measure): number =>
  meters.find((meter) => meter.measure === measure)?.accuracy ?? ACCURACY_ASSUMED;

/**
 * Standard deviation of one reading about its mean before readings show it, worth so many of them: common practice, power being
 * read off a display and flows and pressures off a moving needle.
 */
export const SCATTER_ASSUMED = { readings: 4, power: 0.01, other: 0.02 } as const;

/** The scatter of a measure [-] before readings show it. */
export const scatterAssumed = (measure: Measure): number =>
  measure === 'power' ? SCATTER_ASSUMED.power : SCATTER_ASSUMED.other;

/** Share by which a head differs from the pump's curve where no grade is stated: that of published curves, common practice. */
export const HEAD_TOLERANCE_ASSUMED = 0.03;
