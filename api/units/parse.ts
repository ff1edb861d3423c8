/** Reads a quantity written as text, such as `1500 gal/h` or `1-1/2 in`. */
import { failed, type Result, success } from '../../curves/result.ts';
import { GRAVITY } from '../../models/physics/gravity.ts';
import { toInside } from './scale.ts';
import { acceptedUnits, type Quantity, quantityUnits } from './table.ts';

export const QUANTITY_TEXT_MAX = 40;

export type QuantityFailure =
  | { readonly code: 'too-long'; readonly limit: number; readonly actual: number }
  | { readonly code: 'not-a-quantity'; readonly text: string; readonly accepted: readonly string[] }
  /** A number that reads well elsewhere, not here. */
  | { readonly code: NumberFault; readonly text: string }
  | { readonly code: 'unit-not-accepted'; readonly unit: string; readonly accepted: readonly string[] };

/** `1e-9`, `1,5 m`, `1 1/2 in`. */
export type NumberFault = 'has-exponent' | 'has-comma' | 'spaced-fraction';

const DECIMAL = /^\d*\.?\d+$/;
const FRACTION = /^(?:(\d+)-)?(\d+)\/(\d+)$/;

const NUMBER_FAULTS = {
  'has-exponent': /^-?\d*\.?\d+[eE][+-]?\d+(?: |$)/,
  'has-comma': /^-?\d+,\d+(?: |$)/,
  'spaced-fraction': /^-?\d+ \d+\/\d+(?: |$)/,
} as const satisfies Record<NumberFault, RegExp>;

function numberFault(text: string): NumberFault | undefined {
  const codes = ['has-exponent', 'has-comma', 'spaced-fraction'] as const;
  return codes.find((code) => NUMBER_FAULTS[code].test(text));
}

/** The value of an unsigned decimal or of a mixed fraction; undefined where the text is neither. */
function magnitude(text: string): number | undefined {
  if (DECIMAL.test(text)) return Number(text);
  const parts = FRACTION.exec(text);
  if (parts === null) return undefined;
  const [, whole = '0', numerator, denominator] = parts;
  const value = Number(whole) + Number(numerator) / Number(denominator);
  return Number.isFinite(value) ? value : undefined;
}

/**
 * Reads `"<decimal or mixed fraction> <unit>"`; case counts, the decimal mark is a point, no exponent, no grouping.
 * A head in a unit of pressure is that of a column of the water: head = p / (density g), density in kg/m3.
 * @returns the quantity in the unit kept inside
 */
export function parseQuantity(
  text: string,
  { quantity, density }: { quantity: Quantity; density: number },
): Result<number, QuantityFailure> {
  if (text.length > QUANTITY_TEXT_MAX) {
    return failed({ code: 'too-long', limit: QUANTITY_TEXT_MAX, actual: text.length });
  }
  const fault = numberFault(text);
  if (fault !== undefined) return failed({ code: fault, text });
  const accepted = acceptedUnits(quantity);
  const notAQuantity = failed({ code: 'not-a-quantity', text, accepted } as const);
  const space = text.indexOf(' ');
  if (space < 0) return notAQuantity;
  const negative = text.startsWith('-');
  const size = magnitude(text.slice(negative ? 1 : 0, space));
  if (size === undefined) return notAQuantity;
  const value = negative && size !== 0 ? -size : size;

  const unit = text.slice(space + 1);
  if (!accepted.includes(unit)) return failed({ code: 'unit-not-accepted', unit, accepted });
  const { units, pressureUnits } = quantityUnits(quantity);
  const scale = units[unit];
  if (scale !== undefined) return success(toInside(value, scale));
  const pressureScale = pressureUnits?.[unit];
  if (pressureScale === undefined) throw new Error(`invariant: accepted unit ${unit} without a scale`);
  return success(toInside(value, pressureScale) / (density * GRAVITY));
}
