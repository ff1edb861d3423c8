/** Writes a length in the unit that suits its size: under 1 m in mm, under 1 ft in inches. */
import { encodeNumber, unitInForce } from '../units/convert.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { sayNumber } from './numbers-in-words.ts';

const DIGITS = 3;

/** Share of a figure that is rounding, not size. */
const ROUNDING = 1e-9;

type Rounding = 'nearest' | 'up';

/** A length in m: `133 mm`, `1.25 m`. A minimum is rounded up, in mm to whole ones. */
export function sayLength(length: number, system: UnitSystem, rounding: Rounding = 'nearest'): string {
  const quantity = encodeNumber(length, 'length', system) < 1 ? 'diameter' : 'length';
  const figure = encodeNumber(length, quantity, system);
  const unit = unitInForce(quantity, system);
  return `${sayNumber(rounding === 'up' ? roundedUp(figure, unit) : figure, DIGITS)} ${unit}`;
}

function roundedUp(figure: number, unit: string): number {
  const step = unit === 'mm' ? 1 : 10 ** (Math.floor(Math.log10(figure)) + 1 - DIGITS);
  return Math.ceil((figure / step) * (1 - ROUNDING)) * step;
}
