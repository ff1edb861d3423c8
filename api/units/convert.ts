/** Converts numbers between the unit in force and the unit kept inside. */
import { fromInside, type Scale, toInside } from './scale.ts';
import { type Quantity, quantityUnits } from './table.ts';
import type { UnitSystem } from './unit-system.ts';

export const unitInForce = (quantity: Quantity, system: UnitSystem): string =>
  quantityUnits(quantity)[system];

function scaleInForce(quantity: Quantity, system: UnitSystem): Scale {
  const { units } = quantityUnits(quantity);
  const scale = units[unitInForce(quantity, system)];
  if (scale === undefined) throw new Error(`invariant: ${quantity} has no scale for its own ${system} unit`);
  return scale;
}

export const decodeNumber = (value: number, quantity: Quantity, system: UnitSystem): number =>
  toInside(value, scaleInForce(quantity, system));

export const encodeNumber = (value: number, quantity: Quantity, system: UnitSystem): number =>
  fromInside(value, scaleInForce(quantity, system));
