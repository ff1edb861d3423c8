/** The reference's water, friction, bores and least squares against published values. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { standardBore } from './bore.ts';
import { crossing, zeroFrom } from './crossing.ts';
import { colebrook, frictionFactor } from './friction.ts';
import { conditionNumber, leastSquares } from './least-squares.ts';
import { elementLoss, namedCoefficient } from './losses.ts';
import { density, dynamicViscosity } from './water.ts';

describe('water', () => {
  // UNESCO Technical Papers in Marine Science 44 (Fofonoff and Millard 1983); last two by the same polynomial.
  it.each([
    [35, 25, 1023.34306, 1e-5],
    [35, 5, 1027.67547, 1e-5],
    [0, 5, 999.96675, 1e-5],
    [35, 20, 1024.763, 1e-3],
    [35, 30, 1021.7286, 1e-3],
  ])('of %d g/kg at %d degC has the density of EOS-80', (salinity, temperature, expected, absolute) => {
    expectClose(density({ temperature, salinity }), expected, { absolute });
  });

  // Sharqawy et al. 2010, eq. 22-23, evaluated apart.
  it.each([
    [35, 10, 1.39677e-3],
    [35, 25, 0.958828e-3],
    [0, 20, 1.00176e-3],
  ])('of %d g/kg at %d degC has the published viscosity', (salinity, temperature, expected) => {
    expectClose(dynamicViscosity({ temperature, salinity }), expected, { relative: 1e-4 });
  });
});

describe('friction', () => {
  // Colebrook-White values of a general fluids library's documentation.
  it.each([
    [1e5, 1e-4, 0.018513866, 1e-8],
    [1e4, 0, 0.030883, 1e-6],
    [1e6, 1e-2, 0.0379647, 1e-6],
    [1e8, 1e-3, 0.0196386, 1e-6],
  ])('at Re %d and e/D %d meets Colebrook-White', (reynolds, relativeRoughness, expected, absolute) => {
    expectClose(colebrook({ reynolds, relativeRoughness }), expected, { absolute });
  });

  it('is 64/Re in laminar flow, the mean of both laws half way, and joins without a step', () => {
    const at = (reynolds: number): number => frictionFactor({ reynolds, relativeRoughness: 1e-3 });
    expectClose(at(1000), 0.064, { relative: 1e-14 });
    const half = (64 / 3000 + colebrook({ reynolds: 3000, relativeRoughness: 1e-3 })) / 2;
    expectClose(at(3000), half, { relative: 1e-14 });
    expectClose(at(2000.000001), 0.032, { relative: 1e-8 });
    expectClose(at(3999.999999), colebrook({ reynolds: 4000, relativeRoughness: 1e-3 }), { relative: 1e-8 });
  });
});

describe('elements', () => {
  // ASTM D1785 outside diameters and least walls; mean bores [mm] as trade tables print them (from memory).
  it.each([
    ['sch40 1/2', 15.29],
    ['sch40 3/4', 20.42],
    ['sch40 1', 26.14],
    ['sch40 1-1/4', 34.54],
    ['sch40 1-1/2', 40.39],
    ['sch40 2', 51.99],
    ['sch40 2-1/2', 62.1],
    ['sch40 3', 77.27],
    ['sch40 4', 101.55],
    ['sch80 1/2', 13.36],
    ['sch80 3/4', 18.34],
    ['sch80 1', 23.77],
    ['sch80 1-1/4', 31.88],
    ['sch80 1-1/2', 37.49],
    ['sch80 2', 48.59],
    ['sch80 2-1/2', 58.17],
    ['sch80 3', 72.75],
    ['sch80 4', 96.16],
  ])('%s has the mean bore of %d mm', (name, millimetres) => {
    // Printed from a tolerance rounded to 0.001 in, of which the mean bore takes half.
    expectClose(standardBore(name) * 1000, millimetres, { absolute: 0.0051 + 0.0127 });
  });

  // The handbook's fT for 2 in is 0.019 (rounded), its elbow 30 fT.
  it('takes named losses as n fT', () => {
    expectClose(namedCoefficient('elbow-90', 0.0525), 30 * 0.019, { relative: 0.01 });
  });

  // Kv 500 at 0.154 m: K 3.60 (Crane TP-410M, Example 7-2).
  it('takes a valve by Kv', () => {
    const loss = elementLoss({ valve: { kv: 500 } }, () => Number.NaN, 1e-6)(0.05);
    const velocity = 0.05 / ((Math.PI / 4) * 0.154 ** 2);
    expectClose((loss * 2 * 9.80665) / velocity ** 2, 3.6, { relative: 0.002 });
  });
});

describe('numerics', () => {
  it('finds crossings of a rising function from either side', () => {
    const f = (x: number): number => x ** 3 - 2;
    expectClose(crossing(f, [0, f(0)], [3, f(3)]), Math.cbrt(2), { relative: 1e-12 });
    expectClose(zeroFrom(f, [10, f(10)], 0.1), Math.cbrt(2), { relative: 1e-12 });
  });

  it('refuses ends of one sign', () => {
    expect(() => crossing((x) => x, [1, 1], [2, 2])).toThrow(/no crossing/);
  });

  // Through four points of y = 1 + 2x by hand: exact; leverages of a straight line add up to 2.
  it('fits a line exactly and its leverages add up to the number of columns', () => {
    const fit = leastSquares(
      [
        [1, 1, 1, 1],
        [0, 1, 2, 5],
      ],
      [1, 3, 5, 11],
    );
    expectClose(fit.coefficients[0] ?? Number.NaN, 1, { absolute: 1e-13 });
    expectClose(fit.coefficients[1] ?? Number.NaN, 2, { absolute: 1e-13 });
    expectClose(
      fit.leverages.reduce((sum, leverage) => sum + leverage, 0),
      2,
      { absolute: 1e-13 },
    );
  });

  // Orthogonal columns of lengths 1 and 1e-9: the ratio is known.
  it('knows the condition number of nearly dependent columns', () => {
    expectClose(
      conditionNumber([
        [1, 0],
        [0, 1e-9],
      ]),
      1e9,
      { relative: 1e-9 },
    );
  });
});
