import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { predictedAt } from '../../../models/condition/predicted.ts';
import { cheapestInterval, waiting } from '../../../models/condition/waiting.ts';
import { expectClose } from '../../expect-close.ts';
import { stationWith } from './synthetic.ts';

// 8760 hours, as of every year of the service.
const HOURS = 8.76;

describe('the cheapest interval of cleaning', () => {
  it('is the least of (C + g T^2/2)/T, looked for along T', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 0.5, max: 900, noNaN: true }),
        (cost, growth) => {
          const { everyYears, annualCost } = cheapestInterval(cost, growth);
          const costAt = (years: number) => (cost + (growth * years ** 2) / 2) / years;
          expectClose(costAt(everyYears), annualCost, { relative: 1e-12 });
          for (const factor of [0.5, 0.9, 0.99, 1.01, 1.1, 2]) {
            expect(costAt(factor * everyYears)).toBeGreaterThanOrEqual(annualCost * (1 - 1e-12));
          }
        },
      ),
      { seed: 1 },
    );
  });

  it('spends as much on cleaning as on waste', () => {
    const { everyYears, annualCost } = cheapestInterval(18, 36);
    // sqrt(2 x 18/36) = 1 year, sqrt(2 x 18 x 36) = 36, half of it 18 of cleaning.
    expectClose(everyYears, 1, { relative: 1e-12 });
    expectClose(annualCost, 36, { relative: 1e-12 });
  });
});

describe('the cost of waiting', () => {
  const base = {
    power: 100,
    standbyPower: 0,
    exponent: 3,
    flow: { residual: 0, slope: 0 },
    drawn: { residual: 0, slope: 0 },
    price: 0.2,
    cleaningCost: 10,
    longest: null,
  };

  it('is what the excess power costs, and half of a year of its growth', () => {
    const found = waiting({ ...base, drawn: { residual: 0.1, slope: 0.2 } });
    expectClose(found?.excessCost ?? 0, 0.1 * 100 * HOURS * 0.2, { relative: 1e-12 });
    expectClose(found?.growthPerYear ?? 0, 0.2 * 100 * HOURS * 0.2, { relative: 1e-12 });
    expectClose(found?.costOfAYear ?? 0, (0.1 + 0.1) * 100 * HOURS * 0.2, { relative: 1e-12 });
  });

  it('is none without growth, and tells no interval without a cost of cleaning', () => {
    expect(waiting(base)).toBeNull();
    const easing = waiting({ ...base, flow: { residual: -0.1, slope: 0.1 } });
    expect(easing).toMatchObject({ growthPerYear: 0, cleaning: null });
    expectClose(easing?.excessCost ?? 0, (0.9 ** -3 - 1) * 100 * HOURS * 0.2, { relative: 1e-12 });
    expect(waiting({ ...base, drawn: { residual: 0, slope: 0.1 }, cleaningCost: null })?.cleaning).toBeNull();
  });

  it('leaves standby as it is, whatever the speed', () => {
    // 90 W of 100 follow the speed: 90 (0.9^-3 - 1) W, 8760 h, 0.2 a kWh.
    const found = waiting({ ...base, standbyPower: 10, flow: { residual: -0.1, slope: -0.1 } });
    expectClose(found?.excessCost ?? 0, 90 * (0.9 ** -3 - 1) * HOURS * 0.2, { relative: 1e-12 });
  });

  it('grows as its excess does, wherever the flow has come to', () => {
    // The slope of the excess by a small step in time, apart from the formula.
    for (const residual of [0, -0.05, -0.11, -0.19]) {
      const at = (years: number) =>
        waiting({
          ...base,
          flow: { residual: residual - 0.2 * years, slope: -0.2 },
          drawn: { residual: 0.02 + 0.1 * years, slope: 0.1 },
        });
      const step = 1e-6;
      const slope = ((at(step)?.excessCost ?? 0) - (at(0)?.excessCost ?? 0)) / step;
      expectClose(at(0)?.growthPerYear ?? 0, slope, { relative: 1e-4 });
    }
  });

  it('meets what winning back the flow of a clogged loop takes, solved for', () => {
    const clean = predictedAt(stationWith(), 70);
    const clogged = stationWith({ intake: 10 });
    const atSame = predictedAt(clogged, 70);
    if (clean === null || atSame === null) throw new Error('nothing flows');
    let raised = atSame;
    for (let setting = 70; raised.flow < clean.flow; setting += 0.01) {
      const next = predictedAt(clogged, setting);
      if (next === null) throw new Error('nothing flows');
      raised = next;
    }
    const { exponent, standbyPower, fixedPower } = clogged.pump.fit.powerLaw;
    const found = waiting({
      ...base,
      power: clean.power,
      standbyPower: standbyPower + fixedPower,
      exponent,
      flow: { residual: atSame.flow / clean.flow - 1, slope: -1 },
      drawn: { residual: atSame.power / clean.power - 1, slope: 0 },
      price: 1,
    });
    const excess = (raised.power - clean.power) * HOURS;
    // Friction is not quite a square.
    expectClose(found?.excessCost ?? 0, excess, { relative: 0.05 });
  });
});
