/** Writes invented documents, which are in SI, as callers write them. */
import type { Json } from '../../api/requests.ts';

/** Numbers of either system of units, or texts with other units. */
export type Manner = 'metric' | 'us' | 'texts';

interface Unit {
  readonly factor: number;
  /** Added after the factor. */
  readonly shift?: number;
  readonly name: string;
}

const INCH = 0.0254;
const FOOT = 0.3048;
const GALLON = 231 * INCH ** 3;

const UNITS = {
  flow: {
    metric: { factor: 3.6e6, name: 'L/h' },
    us: { factor: 3600 / GALLON, name: 'gal/h' },
    texts: { factor: 6e4, name: 'L/min' },
  },
  bore: {
    metric: { factor: 1000, name: 'mm' },
    us: { factor: 1 / INCH, name: 'in' },
    texts: { factor: 100, name: 'cm' },
  },
  length: {
    metric: { factor: 1, name: 'm' },
    us: { factor: 1 / FOOT, name: 'ft' },
    texts: { factor: 100, name: 'cm' },
  },
  head: {
    metric: { factor: 1, name: 'm' },
    us: { factor: 1 / FOOT, name: 'ft' },
    // About the weight of a metre of water: such a head depends on the loop's own water.
    texts: { factor: 10, name: 'kPa' },
  },
  velocity: {
    metric: { factor: 1, name: 'm/s' },
    us: { factor: 1 / FOOT, name: 'ft/s' },
    texts: { factor: 1 / FOOT, name: 'ft/s' },
  },
  volume: {
    metric: { factor: 1000, name: 'L' },
    us: { factor: 1 / GALLON, name: 'gal' },
    texts: { factor: 1, name: 'm3' },
  },
  area: {
    metric: { factor: 1, name: 'm2' },
    us: { factor: 1 / FOOT ** 2, name: 'ft2' },
    texts: { factor: 1 / FOOT ** 2, name: 'ft2' },
  },
  temperature: {
    metric: { factor: 1, name: 'degC' },
    us: { factor: 1.8, shift: 32, name: 'degF' },
    texts: { factor: 1, shift: 273.15, name: 'K' },
  },
} as const satisfies Record<string, Record<Manner, Unit>>;

type Quantity = keyof typeof UNITS;

const named = (quantity: Quantity, ...members: readonly string[]): readonly (readonly [string, Quantity])[] =>
  members.map((member) => [member, quantity] as const);

const QUANTITY_OF: ReadonlyMap<string, Quantity> = new Map([
  ...named('flow', 'flow', 'requiredFlow', 'minimumFlow', 'maximumFlow', 'overflowCapacity'),
  ...named('bore', 'insideDiameter', 'diameter', 'nozzleDiameter', 'suctionDiameter', 'dischargeDiameter'),
  ...named('bore', 'roughness', 'slot', 'hole', 'pitch', 'smallestAnimal'),
  ...named('length', 'length', 'equivalentLength', 'distance', 'depth', 'width', 'height'),
  ...named('length', 'pumpElevation', 'freeboard', 'siphonBreakDepth'),
  ...named('head', 'head', 'staticHead'),
  ...named('velocity', 'velocity', 'throughSlotVelocity', 'pipeVelocity'),
  ...named('volume', 'volume'),
  ...named('area', 'area'),
  ...named('temperature', 'temperature'),
]);

/** Objects all of whose members are flows, whatever they are called. */
const OF_FLOWS: readonly string[] = ['flowLimits', 'requiredFlows'];

/** More digits than anybody enters, few enough that a last digit of the arithmetic does not show. */
const DIGITS = 9;

function expressed(value: number, quantity: Quantity, manner: Manner): number | string {
  const { factor, shift = 0, name }: Unit = UNITS[quantity][manner];
  const number = Number((value * factor + shift).toPrecision(DIGITS));
  return manner === 'texts' ? `${number} ${name}` : number;
}

interface Place {
  readonly key: string;
  /** The member that the object around it is. */
  readonly within: string;
  readonly manner: Manner;
}

function member(value: unknown, { key, within, manner }: Place): unknown {
  if (typeof value === 'number') {
    const quantity = OF_FLOWS.includes(within) ? 'flow' : QUANTITY_OF.get(key);
    return quantity === undefined ? value : expressed(value, quantity, manner);
  }
  if (Array.isArray(value)) return value.map((item: unknown) => member(item, { key, within, manner }));
  if (typeof value === 'object' && value !== null) return object(value, { key, manner });
  return value;
}

function object(value: object, { key: within, manner }: Omit<Place, 'within'>): Json {
  const entries = Object.entries(value).filter(([, one]) => one !== undefined);
  return Object.fromEntries(entries.map(([key, one]) => [key, member(one, { key, within, manner })]));
}

/** Quantities are known by the names of their members; all else stays as it is. */
export const written = (document: object, manner: Manner): Json => object(document, { key: '', manner });

/** The query that says which system of units numbers are in. */
export const unitsQuery = (manner: Manner): Json => (manner === 'us' ? { units: 'us' } : {});
