import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitPowerLaw } from '../../curves/fit-power-law.ts';
import { type PowerLaw, powerAt } from '../../curves/power-law.ts';
import { expectClose } from '../expect-close.ts';
import { BRASCH_WHYMAN_PUMP, CUBE_LAW } from '../reference/pump-curves.ts';
import { expectValue } from './expect-value.ts';

/** The law whose exponent is free, chosen or not. */
function lawOfExponent(...question: Parameters<typeof lawOf>): PowerLaw {
  const law = lawOf(...question);
  const [other] = law.alternatives;
  return law.law === 'exponent' || other === undefined ? law : { ...law, ...other };
}

const lawOf = (points: Parameters<typeof fitPowerLaw>[0], standbyPower = 0) =>
  expectValue(fitPowerLaw(points, { standbyPower }));

describe('a power law from one point', () => {
  for (const { fullPower, speedRatio, expected, tolerance, source } of CUBE_LAW) {
    it(`is the cube law where nothing is fixed: ${fullPower} becomes ${expected} (${source})`, () => {
      const law = lawOf([{ speedRatio: 1, power: fullPower }]);
      const cube = law.alternatives.find(({ fixedPower }) => fixedPower === 0);
      if (cube === undefined) throw new Error('a law without a fixed loss is possible');
      expectClose(powerAt({ ...law, ...cube }, { flow: 0, speedRatio }), expected, { relative: tolerance });
    });
  }

  it('says that its exponent is assumed, and has nothing to judge itself by', () => {
    const law = lawOf([{ speedRatio: 0.8, power: 105 }], 5);
    expect(law).toMatchObject({
      law: 'fixed-loss',
      exponent: 3,
      exponentAssumed: true,
      flowTerms: [],
      r2: null,
      standardError: null,
    });
    expect(law.flowScale).toBeNull();
    // Of the 100 W above standby at 80 % 8 are taken as fixed; the others are 92/0.512 at full speed.
    expectClose(law.fixedPower, 8, { relative: 1e-12 });
    expectClose(law.coefficient, 92 / 0.512, { relative: 1e-12 });
    expectClose(powerAt(law, { flow: 0, speedRatio: 0.8 }), 105, { relative: 1e-12 });
  });
});

describe('a power law from several points', () => {
  it('goes through two points at two speeds: k = ln(P1/P2)/ln(r1/r2)', () => {
    const law = lawOf(
      [
        { speedRatio: 1, power: 245, flow: 0.0025 },
        { speedRatio: 0.6, power: 55 },
      ],
      3,
    );
    expect(law.exponentAssumed).toBe(false);
    expectClose(law.exponent, Math.log(242 / 52) / Math.log(1 / 0.6), { relative: 1e-12 });
    expectClose(law.coefficient, 242, { relative: 1e-12 });
    expectClose(powerAt(law, { flow: 0.001, speedRatio: 0.6 }), 55, { relative: 1e-12 });
  });

  it(`meets the power at the duty point (${BRASCH_WHYMAN_PUMP.source})`, () => {
    const { points, density, gravity, expected, tolerance } = BRASCH_WHYMAN_PUMP;
    const law = lawOf(
      points
        .filter((point) => point.efficiency > 0)
        .map(({ flow, head, efficiency }) => ({
          speedRatio: 1,
          flow,
          power: (density * gravity * flow * head) / efficiency,
        })),
    );
    expect(law.flowTerms).toHaveLength(2);
    expect(law.exponentAssumed).toBe(true);
    const power = powerAt(law, { flow: expected.flow, speedRatio: 1 });
    expectClose(power, expected.power, { relative: tolerance.power });
  });

  it('recovers standby + c r^k exp(b1 x + b2 x^2) exactly, points without flow counting at q0', () => {
    const term = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 2, max: 3.5, noNaN: true }), term, term, (exponent, b1, b2) => {
        const places = [0.1, 0.35, 0.5, 0.8, 1];
        const centre = 0.55;
        const standbyPower = 4;
        const power = (x: number, speedRatio: number): number =>
          standbyPower + 180 * speedRatio ** exponent * Math.exp(b1 * x + b2 * x ** 2);
        const law = lawOfExponent(
          [
            ...places.map((q, index) => {
              const speedRatio = [1, 0.5, 0.9, 0.7, 0.8][index] ?? 1;
              return { speedRatio, flow: q * 0.003 * speedRatio, power: power(q - centre, speedRatio) };
            }),
            { speedRatio: 0.4, power: power(0, 0.4) },
            { speedRatio: 0.95, power: power(0, 0.95) },
          ],
          standbyPower,
        );
        expectClose(law.exponent, exponent, { relative: 1e-9 });
        expectClose(law.coefficient, 180, { relative: 1e-9 });
        expectClose(law.flowTerms[0] ?? Number.NaN, b1, { absolute: 1e-9 });
        expectClose(law.flowTerms[1] ?? Number.NaN, b2, { absolute: 1e-9 });
        expectClose(law.flowCentre ?? Number.NaN, centre, { relative: 1e-12 });
        expectClose(law.flowScale ?? Number.NaN, 0.003, { relative: 1e-12 });
        expectClose(powerAt(law, { flow: 0.0006, speedRatio: 0.5 }), power(0.4 - centre, 0.5), {
          relative: 1e-9,
        });
      }),
      { seed: 1 },
    );
  });

  it('needs three distinct flows for x and five for x^2, counted at full speed', () => {
    const at = (...shares: number[]) =>
      lawOf(
        shares.map((q, index) => ({
          speedRatio: 1 - index / 100,
          flow: q * (1 - index / 100),
          power: 50 + q,
        })),
      ).flowTerms.length;
    expect(at(0.5, 1, 1)).toBe(0);
    expect(at(0.2, 0.5, 1)).toBe(1);
    expect(at(0.2, 0.5, 0.7, 1)).toBe(1);
    expect(at(0.2, 0.4, 0.5, 0.7, 1)).toBe(2);
    expect(at(0, 0, 0)).toBe(0);
  });

  it('judges itself on ln(P - standby), also where the exponent is assumed', () => {
    const law = lawOf([
      { speedRatio: 0.5, power: 10 },
      { speedRatio: 0.5, power: 14 },
    ]);
    const half = Math.log(14 / 10) / 2;
    expect(law.degreesOfFreedom).toBe(1);
    expectClose(law.standardError ?? Number.NaN, Math.SQRT2 * half, { relative: 1e-12 });
    expectClose(law.r2 ?? Number.NaN, 0, { absolute: 1e-12 });
  });

  it('drops x when flow and speed move together, so that neither stands alone', () => {
    // q is a straight function of ln r here: the columns 1, ln r and x are dependent; 1 and x alone are not.
    const points = [1, 0.8, 0.5].map((speedRatio) => ({
      speedRatio,
      flow: (1 + 0.5 * Math.log(speedRatio)) * speedRatio,
      power: 100 * speedRatio ** 3,
    }));
    const law = lawOfExponent(points);
    expect(law.flowTerms).toEqual([]);
    expectClose(law.exponent, 3, { relative: 1e-9 });
  });

  it('drops x^2 when five flows lie too close to show a curvature', () => {
    const points = [0, 1, 2, 3, 4].map((step) => ({
      speedRatio: 1,
      flow: 1 + step * 1e-5,
      power: 100 + step,
    }));
    expect(lawOf(points).flowTerms).toHaveLength(1);
  });

  it('assumes the cube law when two speeds are distinct but too close to show an exponent', () => {
    const law = lawOf([
      { speedRatio: 1, power: 100 },
      { speedRatio: 1 - 3e-9, power: 90 },
    ]);
    expect(law.exponentAssumed).toBe(true);
  });
});

describe('power from a fitted law', () => {
  const law = lawOf(
    [0.2, 0.5, 1].map((flow) => ({ speedRatio: 1, flow, power: 3 + 100 * Math.exp(0.6 * flow) })),
    3,
  );

  it('goes on along its tangent where power rises outward, and is held where it falls', () => {
    const most = 100 * Math.exp(0.6);
    expectClose(powerAt(law, { flow: 2, speedRatio: 1 }), 3 + most * (1 + 0.6), { relative: 1e-9 });
    expect(powerAt(law, { flow: 0, speedRatio: 1 })).toBe(powerAt(law, { flow: 0.2, speedRatio: 1 }));
  });

  it('keeps q, not flow, when speed moves', () => {
    const above = (flow: number, speedRatio: number): number => powerAt(law, { flow, speedRatio }) - 3;
    // 8 % of what one speed shows are taken as fixed.
    expectClose(above(0.35, 0.7), (0.08 + 0.92 * 0.343) * above(0.5, 1), { relative: 1e-12 });
  });

  it('is standby at standstill', () => {
    expect(powerAt(law, { flow: 0.5, speedRatio: 0 })).toBe(3);
  });

  it('survives storage as JSON bit for bit', () => {
    expect(JSON.parse(JSON.stringify(law))).toEqual(law);
  });
});
