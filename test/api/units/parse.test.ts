/** Quantities written as text. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../api/units/parse.ts';
import type { Quantity } from '../../../api/units/table.ts';
import { expectClose } from '../../expect-close.ts';

const DENSITY = 1000;
const parse = (text: string, quantity: Quantity, density = DENSITY) =>
  parseQuantity(text, { quantity, density });

function value(text: string, quantity: Quantity, density = DENSITY): number {
  const parsed = parse(text, quantity, density);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.failure.code}`);
  return parsed.value;
}

describe('a quantity as text', () => {
  it.each([
    ['1500 gal/h', 'flow', (1500 * 3.785411784e-3) / 3600],
    ['1-1/2 in', 'diameter', 0.0381],
    ['1/2 in', 'diameter', 0.0127],
    ['3/2 in', 'diameter', 0.0381],
    ['.5 m', 'head', 0.5],
    ['-0.6 m', 'elevation', -0.6],
    ['-1-1/2 ft', 'elevation', -0.4572],
    ['2.5 m3/h', 'flow', 2.5 / 3600],
    ['1/3 hp', 'power', 745.6998715822702 / 3],
    ['3.6 MJ', 'energy', 1],
    ['298.15 K', 'temperature', 25],
    ['80 %', 'setting', 80],
  ] as const)('reads "%s" as a %s', (text, quantity, expected) => {
    expectClose(value(text, quantity), expected, { relative: 1e-12 });
  });

  it('reads a head in a unit of pressure as a column of the water: p / (density g)', () => {
    expectClose(value('1 bar', 'head', 1000), 1e5 / (1000 * 9.80665), { relative: 1e-14 });
    expectClose(value('10 kPa', 'head', 1023.343), 1e4 / (1023.343 * 9.80665), { relative: 1e-14 });
    // 1 psi = 2.31 ft of fresh water (common handbook figure, at 62 degF: 998.9 kg/m3)
    expectClose(value('1 psi', 'head', 998.9) / 0.3048, 2.31, { relative: 1e-3 });
  });

  it.each([
    '1500',
    'gal/h',
    '1500gal/h',
    '1500  gal/h',
    ' 1500 gal/h',
    '1500 gal/h ',
    '1,500 gal/h',
    '1 500 gal/h',
    '1e3 gal/h',
    '0x10 gal/h',
    '+5 gal/h',
    '5. gal/h',
    'NaN gal/h',
    'Infinity gal/h',
    '1/0 gal/h',
    '1-1-1/2 gal/h',
    '--1 gal/h',
    '',
  ])('refuses "%s"', (text) => {
    expect(parse(text, 'flow').ok).toBe(false);
  });

  it.each(['GAL/H', 'l/h', 'm', 'gph', 'constructor', '__proto__', 'toString'])(
    'refuses the unit "%s" for a flow and names those it takes',
    (unit) => {
      const accepted = ['L/h', 'gal/h', 'L/min', 'L/s', 'm3/h', 'm3/s', 'gal/min'];
      expect(parse(`1 ${unit}`, 'flow')).toEqual({
        ok: false,
        failure: { code: 'unit-not-accepted', unit, accepted },
      });
    },
  );

  it.each([
    ['1e-9', 'has-exponent'],
    ['1.5E3 gal/h', 'has-exponent'],
    ['-2e+3 gal/h', 'has-exponent'],
    ['1,5 gal/h', 'has-comma'],
    ['1,500 gal/h', 'has-comma'],
    ['3,5', 'has-comma'],
    ['1 1/2 gal/h', 'spaced-fraction'],
    ['-1 1/2 gal/h', 'spaced-fraction'],
    ['1 500 gal/h', 'unit-not-accepted'],
    ['1e gal/h', 'not-a-quantity'],
    ['1500gal/h', 'not-a-quantity'],
  ])('says of "%s" what stands in the way: %s', (text, code) => {
    expect(parse(text, 'flow')).toMatchObject({ ok: false, failure: { code } });
  });

  it('reads forty characters and no more', () => {
    expect(parse(`${'0'.repeat(34)}1 gal/h`, 'flow').ok).toBe(false);
    expect(value(`${'0'.repeat(33)}1 gal/h`, 'flow')).toBeGreaterThan(0);
  });

  it('has no negative zero', () => {
    expect(Object.is(value('-0 m', 'elevation'), 0)).toBe(true);
  });

  it('reads back every decimal that it could be given', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), (n) => {
        const text = (n / 1000).toFixed(3);
        expectClose(value(`${text} L/s`, 'flow'), Number(text) / 1000, { relative: 1e-14 });
      }),
      { seed: 1 },
    );
  });
});
