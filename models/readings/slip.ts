/** Recognises readings that were entered in another unit. */
import type { Measure } from '../loop/meter.ts';
import { isHead } from './measure.ts';

export const SLIPS = [
  'gallons-and-litres',
  'hours-and-minutes',
  'cubic-metres-per-hour-and-litres-per-minute',
  'watts-and-kilowatts',
  'feet-and-metres',
  'psi-and-kilopascals',
  'kilopascals-and-metres',
] as const;

export type Slip = (typeof SLIPS)[number];

export interface UnitSlip {
  readonly slip: Slip;
  /** What the reading is of the true value [-]. */
  readonly factor: number;
}

/** Litres in a US and in an imperial gallon, minutes in an hour, litres a minute in a cubic metre an hour. */
const OF_FLOW: readonly UnitSlip[] = [
  { slip: 'gallons-and-litres', factor: 3.785 },
  { slip: 'gallons-and-litres', factor: 4.546 },
  { slip: 'hours-and-minutes', factor: 60 },
  { slip: 'cubic-metres-per-hour-and-litres-per-minute', factor: 16.67 },
];
const OF_POWER: readonly UnitSlip[] = [{ slip: 'watts-and-kilowatts', factor: 1000 }];
/** Feet in a metre, kilopascals in a psi, metres of water in a bar as kilopascals in a metre. */
const OF_HEAD: readonly UnitSlip[] = [
  { slip: 'feet-and-metres', factor: 3.281 },
  { slip: 'psi-and-kilopascals', factor: 6.895 },
  { slip: 'kilopascals-and-metres', factor: 10.2 },
];

/** How near a ratio is to a factor to be taken for it: meters and entries are seldom farther off, and factors lie farther apart. */
const NEAR = 0.1;

/** The mix-ups of a measure, each both ways. */
export function slipsOf(measure: Measure): readonly UnitSlip[] {
  const known = measure === 'power' ? OF_POWER : isHead(measure) ? OF_HEAD : OF_FLOW;
  return known.flatMap((one) => [one, { ...one, factor: 1 / one.factor }]);
}

/** The mix-up that makes readings `ratio` [-] times what they should be, the nearest; null where there is none. */
export function slipOf(measure: Measure, ratio: number): UnitSlip | null {
  const off = ({ factor }: UnitSlip) => Math.abs(Math.log(ratio / factor));
  const [nearest] = slipsOf(measure)
    .filter((one) => off(one) < NEAR)
    .toSorted((a, b) => off(a) - off(b));
  return nearest ?? null;
}
