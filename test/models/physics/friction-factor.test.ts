/** The friction factor against published values, bisection, finite differences. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { darcyFriction } from '../../../models/physics/friction-factor.ts';
import { expectClose } from '../../expect-close.ts';
import { COLEBROOK_FACTORS, LAMINAR_FACTORS, OTHER_FORMULAS } from '../../reference/friction.ts';

/** Colebrook-White by plain bisection on 1/sqrt f: the second algorithm. */
function byBisection(reynolds: number, relativeRoughness: number): number {
  let low = 0.01;
  let high = 30;
  for (let halvings = 0; halvings < 200; halvings += 1) {
    const x = (low + high) / 2;
    const excess = x + 2 * Math.log10(relativeRoughness / 3.7 + (2.51 * x) / reynolds);
    if (excess > 0) high = x;
    else low = x;
  }
  return ((low + high) / 2) ** -2;
}

const factorAt = (reynolds: number, relativeRoughness: number) =>
  darcyFriction({ reynolds, relativeRoughness }).factor;

const RELATIVE_ROUGHNESSES = [0, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 5e-3, 0.02, 0.05, 0.2];

const logUniform = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
const anyPipe = fc.record({
  reynolds: logUniform(10, 1e8),
  relativeRoughness: fc.constantFrom(...RELATIVE_ROUGHNESSES),
});

describe('friction factor', () => {
  it.each(LAMINAR_FACTORS)('is $expected at Re $reynolds ($source)', (row) => {
    expectClose(factorAt(row.reynolds, row.relativeRoughness), row.expected, { relative: row.tolerance });
  });

  it.each(COLEBROOK_FACTORS)('is $expected at Re $reynolds, e/D $relativeRoughness ($source)', (row) => {
    expectClose(factorAt(row.reynolds, row.relativeRoughness), row.expected, { absolute: row.tolerance });
  });

  it.each(OTHER_FORMULAS)('lies near $expected at Re $reynolds, e/D $relativeRoughness ($source)', (row) => {
    expectClose(factorAt(row.reynolds, row.relativeRoughness), row.expected, { relative: row.tolerance });
  });

  it('equals bisection of the same equation to 1e-12 from Re 4000 to 1e8, e/D 0 to 0.2', () => {
    for (const relativeRoughness of RELATIVE_ROUGHNESSES) {
      for (let exponent = Math.log10(4000); exponent <= 8; exponent += 0.05) {
        const reynolds = Math.max(4000, 10 ** exponent);
        expectClose(factorAt(reynolds, relativeRoughness), byBisection(reynolds, relativeRoughness), {
          relative: 1e-12,
        });
      }
    }
  });

  it('still settles on walls as rough as the bore', () => {
    for (const reynolds of [2001, 4000, 1e8]) {
      const { factor, slope } = darcyFriction({ reynolds, relativeRoughness: 0.999 });
      expect(Number.isFinite(factor) && Number.isFinite(slope)).toBe(true);
    }
    expectClose(factorAt(4000, 0.999), byBisection(4000, 0.999), { relative: 1e-12 });
  });

  it('tends to the fully rough law 1/sqrt f = 2 log10(3.7 D/e)', () => {
    for (const relativeRoughness of [1e-3, 0.01, 0.05]) {
      const rough = (2 * Math.log10(3.7 / relativeRoughness)) ** -2;
      expectClose(factorAt(1e12, relativeRoughness), rough, { relative: 1e-6 });
    }
  });

  it('is midway between the laminar and the turbulent law at Re 3000', () => {
    expectClose(factorAt(3000, 1e-3), (64 / 3000 + byBisection(3000, 1e-3)) / 2, { relative: 1e-12 });
  });

  it('follows the smoothstep at a quarter of the transition: 27/32 laminar, 5/32 turbulent', () => {
    const expected = (27 / 32) * (64 / 2500) + (5 / 32) * byBisection(2500, 1e-3);
    expectClose(factorAt(2500, 1e-3), expected, { relative: 1e-12 });
  });

  it('states the slope that a finite difference finds', () => {
    fc.assert(
      fc.property(anyPipe, ({ reynolds, relativeRoughness }) => {
        const step = reynolds * 1e-5;
        const difference =
          (factorAt(reynolds + step, relativeRoughness) - factorAt(reynolds - step, relativeRoughness)) /
          (2 * step);
        const { factor, slope } = darcyFriction({ reynolds, relativeRoughness });
        expectClose(slope, difference, {
          relative: 1e-6,
          absolute: (1e-8 * factor) / reynolds + 2e-10 / 1e4,
        });
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it.each([2000, 4000])('neither jumps nor bends sharply at Re %d', (limit) => {
    for (const relativeRoughness of RELATIVE_ROUGHNESSES) {
      const below = darcyFriction({ reynolds: limit * (1 - 1e-9), relativeRoughness });
      const above = darcyFriction({ reynolds: limit * (1 + 1e-9), relativeRoughness });
      expectClose(above.factor, below.factor, { relative: 1e-8 });
      expectClose(above.slope, below.slope, { relative: 1e-5 });
    }
  });

  it('never falls as the wall grows rougher', () => {
    fc.assert(
      fc.property(logUniform(10, 1e8), logUniform(1e-7, 0.1), (reynolds, roughness) => {
        expect(factorAt(reynolds, 1.5 * roughness)).toBeGreaterThanOrEqual(factorAt(reynolds, roughness));
      }),
      { seed: 1 },
    );
  });

  it.each([
    [0, 0.01],
    [-1, 0.01],
    [Number.NaN, 0.01],
    [1e5, -1e-3],
    [1e5, 1],
    [1e5, Number.NaN],
  ])('refuses Re %d with e/D %d', (reynolds, relativeRoughness) => {
    expect(() => darcyFriction({ reynolds, relativeRoughness })).toThrow(RangeError);
  });
});
