/** The unit table against js-quantities, an independent one. */
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { decodeNumber, encodeNumber, unitInForce } from '../../../api/units/convert.ts';
import { toInside } from '../../../api/units/scale.ts';
import { acceptedUnits, type Quantity, quantityUnits } from '../../../api/units/table.ts';
import { expectClose } from '../../expect-close.ts';

// Spellings of the other table; what it does not know is checked by its definition below.
const THEIRS: Readonly<Record<string, string>> = {
  'L/h': 'l/h',
  'gal/h': 'gal/h',
  'L/min': 'l/min',
  'L/s': 'l/s',
  'm3/h': 'm3/h',
  'm3/s': 'm3/s',
  'gal/min': 'gal/min',
  L: 'l',
  gal: 'gal',
  degC: 'tempC',
  degF: 'tempF',
  K: 'tempK',
};

// Its pound per square inch is rounded to six digits: 6894.76 Pa.
const THEIR_ROUNDING: Readonly<Record<string, number>> = { psi: 1e-6 };

const INSIDE: Readonly<Record<string, string>> = {
  flow: 'm3/s',
  velocity: 'm/s',
  pressure: 'Pa',
  volume: 'm3',
  area: 'm2',
  temperature: 'tempC',
  temperatureDifference: 'degK',
  power: 'W',
  energy: 'kWh',
  time: 's',
};

const CHECKED: readonly Quantity[] = [
  'flow',
  'head',
  'diameter',
  'velocity',
  'pressure',
  'volume',
  'area',
  'temperature',
  'power',
  'energy',
  'time',
];

const rows = CHECKED.flatMap((quantity) =>
  Object.entries(quantityUnits(quantity).units).map(([unit, scale]) => ({ quantity, unit, scale })),
);

describe('the unit table', () => {
  it.each(rows)('agrees with js-quantities on $quantity in $unit', ({ quantity, unit, scale }) => {
    const theirs = Qty(`12.5 ${THEIRS[unit] ?? unit}`).to(INSIDE[quantity] ?? 'm').scalar;
    expectClose(toInside(12.5, scale), theirs, { relative: THEIR_ROUNDING[unit] ?? 1e-8 });
  });

  it('has the US gallon of 231 cubic inches: 3.785411784 L exactly', () => {
    expectClose(decodeNumber(1, 'volume', 'us'), 3.785411784e-3, { relative: 1e-15 });
  });

  it('has one bar as 14.503774 psi (common handbook figure)', () => {
    expectClose(encodeNumber(1e5, 'pressure', 'us'), 14.503774, { absolute: 5e-7 });
  });

  it('has a difference of 9 degF as 5 K', () => {
    expectClose(decodeNumber(9, 'temperatureDifference', 'us'), 5, { relative: 1e-15 });
  });

  it('has 77 degF as 25 degC, exactly', () => {
    expect(decodeNumber(77, 'temperature', 'us')).toBe(25);
  });

  it('gives back what was taken in, in both systems', () => {
    for (const quantity of CHECKED) {
      for (const system of ['metric', 'us'] as const) {
        const back = encodeNumber(decodeNumber(123.456, quantity, system), quantity, system);
        expectClose(back, 123.456, { relative: 1e-13 });
      }
    }
  });

  it.each([
    ['flow', 'L/h', 'gal/h'],
    ['head', 'm', 'ft'],
    ['diameter', 'mm', 'in'],
    ['velocity', 'm/s', 'ft/s'],
    ['pressure', 'kPa', 'psi'],
    ['volume', 'L', 'gal'],
    ['area', 'm2', 'ft2'],
    ['temperature', 'degC', 'degF'],
    ['temperatureDifference', 'K', 'degF'],
    ['power', 'W', 'W'],
    ['energy', 'kWh', 'kWh'],
    ['salinity', 'g/kg', 'g/kg'],
    ['setting', '%', '%'],
  ] as const)('writes %s in %s, or in %s', (quantity, metric, us) => {
    expect(unitInForce(quantity, 'metric')).toBe(metric);
    expect(unitInForce(quantity, 'us')).toBe(us);
  });

  it('takes a head, and no length, in units of pressure', () => {
    expect(acceptedUnits('head')).toEqual(['m', 'ft', 'mm', 'cm', 'in', 'kPa', 'bar', 'psi']);
    expect(acceptedUnits('length')).toEqual(['m', 'ft', 'mm', 'cm', 'in']);
    expect(acceptedUnits('diameter')).toEqual(['mm', 'in', 'cm', 'm']);
  });
});
