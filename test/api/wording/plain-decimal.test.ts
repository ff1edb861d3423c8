/** Numbers in decimal notation. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainDecimal } from '../../../api/wording/plain-decimal.ts';

describe('plain decimal notation', () => {
  it.each([
    [70, '70'],
    [0.385034, '0.385034'],
    [-0, '0'],
    [-0.6, '-0.6'],
    [1e-7, '0.0000001'],
    [1.5e-9, '0.0000000015'],
    [-2.25e-10, '-0.000000000225'],
    [1e21, '1000000000000000000000'],
    [1.25e22, '12500000000000000000000'],
  ])('writes %d as %s', (value, text) => {
    expect(plainDecimal(value)).toBe(text);
  });

  it('reads back as the same number and has no exponent', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const text = plainDecimal(value);
        expect(text).toMatch(/^-?\d+(\.\d+)?$/);
        expect(Number(text)).toBe(value === 0 ? 0 : value);
      }),
      { seed: 1 },
    );
  });
});
