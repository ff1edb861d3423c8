/** Converts figures from SI to the units of a chart's axes. */
import { encodeNumber, unitInForce } from '../units/convert.ts';
import type { Quantity } from '../units/table.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { type Axis, linearAxis } from './kit/axis.ts';

interface QuantityAxis {
  readonly name: string;
  readonly quantity: Quantity;
  readonly system: UnitSystem;
  /** In SI; all have room. */
  readonly values: readonly number[];
  readonly ticks?: number;
}

export function quantityAxis({ quantity, system, values, ...axis }: QuantityAxis): Axis {
  return linearAxis({
    ...axis,
    unit: unitInForce(quantity, system),
    values: values.map((value) => encodeNumber(value, quantity, system)),
  });
}

/** From SI to the unit of an axis. */
export const inUnit =
  (quantity: Quantity, system: UnitSystem) =>
  (value: number): number =>
    encodeNumber(value, quantity, system);
