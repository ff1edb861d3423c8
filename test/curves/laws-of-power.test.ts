/** The two laws of power: which is chosen, what it gives, and between which powers the points leave it open. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitPowerLaw } from '../../curves/fit-power-law.ts';
import {
  fittedExponent,
  flowEndPassed,
  powerAt,
  powerInterval,
  speedEndPassed,
} from '../../curves/power-law.ts';
import { expectClose } from '../expect-close.ts';
import { POWER_CASES } from '../reference/power-laws.ts';
import { expectValue } from './expect-value.ts';

const PERCENT = 100;

const lawOf = (
  points: readonly { readonly setting: number; readonly power: number; readonly flow?: number }[],
  standbyPower: number,
) =>
  expectValue(
    fitPowerLaw(
      points.map(({ setting, ...point }) => ({ ...point, speedRatio: setting / PERCENT })),
      { standbyPower },
    ),
  );

describe('a power law', () => {
  it.each(POWER_CASES)(
    'of $name ($source)',
    ({ points, standbyPower, law, exponent, fixedPower, at, tolerance }) => {
      const fitted = lawOf(points, standbyPower);
      expect(fitted.law).toBe(law);
      if (exponent !== undefined) expectClose(fittedExponent(fitted), exponent, { relative: 1e-6 });
      if (fixedPower !== undefined) {
        expectClose(fitted.fixedPower, fixedPower, { relative: tolerance, absolute: 1e-12 });
      }
      for (const { setting, flow = 0, power, low, high } of at) {
        const place = { flow, speedRatio: setting / PERCENT };
        expectClose(powerAt(fitted, place), power, { relative: tolerance });
        const interval = powerInterval(fitted, place);
        expectClose(interval.low, low, { relative: tolerance });
        expectClose(interval.high, high, { relative: tolerance });
      }
    },
  );

  it('recovers standby + (F + c r^3) exp(b1 x + b2 x^2) exactly', () => {
    const term = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 60, noNaN: true }), term, term, (fixed, b1, b2) => {
        const points = [
          [0.1, 100],
          [0.35, 50],
          [0.5, 90],
          [0.8, 70],
          [1, 80],
          [0.4, 30],
        ].map(([q = 0, setting = 0]) => {
          const x = q - (0.1 + 0.35 + 0.5 + 0.8 + 1 + 0.4) / 6;
          const above = (fixed + 180 * (setting / PERCENT) ** 3) * Math.exp(b1 * x + b2 * x ** 2);
          return { setting, flow: q * 0.003 * (setting / PERCENT), power: 4 + above };
        });
        const law = lawOf(points, 4);
        expect(law.law).toBe('fixed-loss');
        expectClose(law.fixedPower, fixed, { relative: 1e-7 });
        expectClose(law.coefficient, 180, { relative: 1e-8 });
        expectClose(law.flowTerms[0] ?? Number.NaN, b1, { absolute: 1e-8 });
        expectClose(law.flowTerms[1] ?? Number.NaN, b2, { absolute: 1e-8 });
      }),
      { seed: 1 },
    );
  });

  it('meets powers of one speed at several flows under either law', () => {
    const points = [1000, 4000, 7000].map((flow) => ({ setting: 80, power: 90 + flow / 100, flow }));
    const fitted = lawOf([...points, { setting: 50, power: 60, flow: 2000 }], 2);
    const shapes = [fitted, ...fitted.alternatives].map(({ flowTerms }) => flowTerms.length);
    expect(shapes).toEqual([1, 1]);
  });

  it('tells flows and speeds beyond its points from those within', () => {
    const fitted = lawOf(POWER_CASES[5]?.points ?? [], 0);
    expect(speedEndPassed(fitted, 1 - 1e-10)).toBeNull();
    expect(speedEndPassed(fitted, 0.999)).toBe(1);
    expectClose(flowEndPassed(fitted, 7001) ?? 0, 7000, { relative: 1e-12 });
    expectClose(flowEndPassed(fitted, 999) ?? 0, 1000, { relative: 1e-12 });
    expect(flowEndPassed(fitted, 5000)).toBeNull();
  });
});

describe('the interval of a power', () => {
  const speed = fc.integer({ min: 20, max: 100 });
  const power = fc.double({ min: 10, max: 600, noNaN: true });
  const tables = fc.array(fc.record({ setting: speed, power, flow: fc.integer({ min: 0, max: 9000 }) }), {
    minLength: 1,
    maxLength: 7,
  });
  const places = fc.record({
    flow: fc.integer({ min: 0, max: 15_000 }),
    speedRatio: fc.double({ min: 0.1, max: 1.2, noNaN: true }),
  });

  it('holds the power told, and outside the entered speeds every power that either law gives', () => {
    fc.assert(
      fc.property(tables, places, (points, place) => {
        const fit = fitPowerLaw(
          points.map(({ setting, ...point }) => ({ ...point, speedRatio: setting / PERCENT })),
          { standbyPower: 3 },
        );
        if (!fit.ok) return;
        const law = fit.value;
        const { low, high } = powerInterval(law, place);
        const told = powerAt(law, place);
        expect(low).toBeLessThanOrEqual(told * (1 + 1e-12));
        expect(high).toBeGreaterThanOrEqual(told * (1 - 1e-12));
        if (speedEndPassed(law, place.speedRatio) === null) return;
        for (const other of law.alternatives) {
          const either = powerAt({ ...law, ...other }, place);
          expect(low).toBeLessThanOrEqual(either * (1 + 1e-12));
          expect(high).toBeGreaterThanOrEqual(either * (1 - 1e-12));
        }
      }),
      { seed: 1 },
    );
  });

  it('is one figure within the entered speeds and flows', () => {
    fc.assert(
      fc.property(tables, (points) => {
        const fit = fitPowerLaw(
          points.map(({ setting, ...point }) => ({ ...point, speedRatio: setting / PERCENT })),
          { standbyPower: 3 },
        );
        const [first] = points;
        if (!fit.ok || first === undefined) return;
        const { low, high } = powerInterval(fit.value, {
          flow: first.flow,
          speedRatio: first.setting / PERCENT,
        });
        expectClose(high, low, { relative: 1e-9 });
      }),
      { seed: 1 },
    );
  });
});
