/** Writes figures as sentences show them, with four digits and the unit in force. */

import { encodeNumber, unitInForce } from '../units/convert.ts';
import type { Quantity } from '../units/table.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { plainDecimal } from './plain-decimal.ts';

const DIGITS = 4;

export const sayNumber = (value: number, digits: number = DIGITS): string => {
  const rounded = Number(value.toPrecision(digits));
  return plainDecimal(rounded === 0 ? 0 : rounded);
};

/** A quantity kept in SI, in the unit of the system: `7533 L/h`. */
export const say = (value: number, quantity: Quantity, system: UnitSystem, digits: number = DIGITS): string =>
  `${sayNumber(encodeNumber(value, quantity, system), digits)} ${unitInForce(quantity, system)}`;
