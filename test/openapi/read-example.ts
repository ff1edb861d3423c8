/** Example bodies read from their files, quantities brought to SI by the name of their field. */
import { readFileSync } from 'node:fs';
import { decodeNumber } from '../../api/units/convert.ts';
import { parseQuantity } from '../../api/units/parse.ts';
import { QUANTITIES, type Quantity } from '../../api/units/table.ts';
import type { UnitSystem } from '../../api/units/unit-system.ts';
import type { Loop } from '../../models/loop/loop.ts';
import type { Pump } from '../../models/pump/pump.ts';

const DIRECTORY = new URL('../../openapi/examples/', import.meta.url);
const SEA_WATER_DENSITY = 1024;

/** Fields whose name is not that of their quantity; `width` is that of a tank or a flat screen. */
const QUANTITY_OF_FIELD: Readonly<Record<string, Quantity>> = {
  requiredFlow: 'flow',
  maximumFlow: 'flow',
  staticHead: 'head',
  pumpElevation: 'elevation',
  insideDiameter: 'diameter',
  nozzleDiameter: 'diameter',
  smallestAnimal: 'slot',
  freeboard: 'length',
  siphonBreakDepth: 'depth',
  overflowCapacity: 'flow',
  width: 'length',
  standbyPower: 'power',
};

const isQuantity = (name: string): name is Quantity => Object.hasOwn(QUANTITIES, name);

function quantityOf(field: string): Quantity | undefined {
  return QUANTITY_OF_FIELD[field] ?? (isQuantity(field) ? field : undefined);
}

export const exampleText = (file: string): string => readFileSync(new URL(file, DIRECTORY), 'utf8');

/** A file of examples as it stands. */
export const exampleJson = (file: string) => JSON.parse(exampleText(file));

function inSi(text: string, system: UnitSystem) {
  return JSON.parse(text, (field, value) => {
    if (field === 'flowLimits') return flowLimitsInSi(value, system);
    const quantity = quantityOf(field);
    if (quantity === undefined) return value;
    if (typeof value === 'number') return decodeNumber(value, quantity, system);
    if (typeof value !== 'string') return value;
    const parsed = parseQuantity(value, { quantity, density: SEA_WATER_DENSITY });
    if (!parsed.ok) throw new Error(`${field} "${value}": ${parsed.failure.code}`);
    return parsed.value;
  });
}

function flowLimitsInSi({ min, max }: { readonly min: number; readonly max: number }, system: UnitSystem) {
  return { min: decodeNumber(min, 'flow', system), max: decodeNumber(max, 'flow', system) };
}

/** A pump with the default setting of its head points filled in. */
export function pumpExample(file: string, system: UnitSystem = 'metric'): Pump {
  const entered: Pump = inSi(exampleText(file), system);
  return { ...entered, headPoints: entered.headPoints.map((point) => ({ ...{ setting: 100 }, ...point })) };
}

/** A loop with the default friction filled in. */
export function loopExample(file: string, system: UnitSystem = 'metric'): Loop {
  const entered: Loop = inSi(exampleText(file), system);
  return { ...{ frictionMultiplier: 1 }, ...entered };
}
