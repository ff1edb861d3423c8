/** Holds the closed table of units, beyond which a unit is refused. */

import { SECONDS_PER_HOUR, SECONDS_PER_MINUTE } from '../../models/calendar/time-factors.ts';
import { GRAVITY } from '../../models/physics/gravity.ts';
import { BAR, INCH } from '../../models/physics/unit-factors.ts';
import type { Scale } from './scale.ts';

// Exact by definition: international inch and pound of 1959, US gallon of 231 cubic inches, standard gravity.
const FOOT = 0.3048;
const LITRE = 0.001;
const GALLON = 231 * INCH ** 3;
const POUND_FORCE = 0.45359237 * GRAVITY;

const FLOW = {
  'L/h': { factor: LITRE / SECONDS_PER_HOUR },
  'gal/h': { factor: GALLON / SECONDS_PER_HOUR },
  'L/min': { factor: LITRE / SECONDS_PER_MINUTE },
  'L/s': { factor: LITRE },
  'm3/h': { factor: 1 / SECONDS_PER_HOUR },
  'm3/s': { factor: 1 },
  'gal/min': { factor: GALLON / SECONDS_PER_MINUTE },
} as const satisfies Record<string, Scale>;

const LENGTH = {
  m: { factor: 1 },
  ft: { factor: FOOT },
  mm: { factor: 0.001 },
  cm: { factor: 0.01 },
  in: { factor: INCH },
} as const satisfies Record<string, Scale>;

const BORE = { mm: LENGTH.mm, in: LENGTH.in, cm: LENGTH.cm, m: LENGTH.m } as const;

const PERCENT = { '%': { factor: 1 } } as const;

const PRESSURE = {
  kPa: { factor: 1000 },
  psi: { factor: POUND_FORCE / INCH ** 2 },
  Pa: { factor: 1 },
  bar: { factor: BAR },
} as const satisfies Record<string, Scale>;

interface QuantityUnits {
  /** The unit of a bare number in each system. */
  readonly metric: string;
  readonly us: string;
  readonly units: Readonly<Record<string, Scale>>;
  /** Units of pressure that a head may be given in, by the density of the water. */
  readonly pressureUnits?: Readonly<Record<string, Scale>>;
}

const lengthLike = { metric: 'm', us: 'ft', units: LENGTH } as const;
const boreLike = { metric: 'mm', us: 'in', units: BORE } as const;
const percentLike = { metric: '%', us: '%', units: PERCENT } as const;

/** Inside: m3/s, m, m/s, Pa, m3, m2, degC, K, W, kWh, g/kg, s, %. */
export const QUANTITIES = {
  flow: { metric: 'L/h', us: 'gal/h', units: FLOW },
  head: {
    ...lengthLike,
    pressureUnits: { kPa: PRESSURE.kPa, bar: PRESSURE.bar, psi: PRESSURE.psi },
  },
  length: lengthLike,
  elevation: lengthLike,
  distance: lengthLike,
  depth: lengthLike,
  diameter: boreLike,
  slot: boreLike,
  roughness: boreLike,
  gap: boreLike,
  velocity: { metric: 'm/s', us: 'ft/s', units: { 'm/s': { factor: 1 }, 'ft/s': { factor: FOOT } } },
  pressure: { metric: 'kPa', us: 'psi', units: PRESSURE },
  volume: {
    metric: 'L',
    us: 'gal',
    units: { L: { factor: LITRE }, gal: { factor: GALLON }, m3: { factor: 1 } },
  },
  area: { metric: 'm2', us: 'ft2', units: { m2: { factor: 1 }, ft2: { factor: FOOT ** 2 } } },
  temperature: {
    metric: 'degC',
    us: 'degF',
    units: {
      degC: { factor: 1 },
      degF: { factor: 5 / 9, shift: -32 },
      K: { factor: 1, shift: -273.15 },
    },
  },
  temperatureDifference: { metric: 'K', us: 'degF', units: { K: { factor: 1 }, degF: { factor: 5 / 9 } } },
  power: {
    metric: 'W',
    us: 'W',
    units: { W: { factor: 1 }, kW: { factor: 1000 }, hp: { factor: 550 * FOOT * POUND_FORCE } },
  },
  energy: { metric: 'kWh', us: 'kWh', units: { kWh: { factor: 1 }, MJ: { factor: 1 / 3.6 } } },
  salinity: { metric: 'g/kg', us: 'g/kg', units: { 'g/kg': { factor: 1 } } },
  time: { metric: 's', us: 's', units: { s: { factor: 1 } } },
  setting: percentLike,
  speed: percentLike,
  opening: percentLike,
} as const satisfies Record<string, QuantityUnits>;

export type Quantity = keyof typeof QUANTITIES;

export const quantityUnits = (quantity: Quantity): QuantityUnits => QUANTITIES[quantity];

/** Every unit that a string may name for a quantity. */
export function acceptedUnits(quantity: Quantity): readonly string[] {
  const { units, pressureUnits = {} } = quantityUnits(quantity);
  return [...Object.keys(units), ...Object.keys(pressureUnits)];
}
