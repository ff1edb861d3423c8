/** Reads prices of what is sold by length. */
import { decodeNumber } from './convert.ts';
import type { UnitSystem } from './unit-system.ts';

/** Money of a metre, from money of one unit of length of the system. */
export const perMetre = (price: number, system: UnitSystem): number =>
  price / decodeNumber(1, 'length', system);
