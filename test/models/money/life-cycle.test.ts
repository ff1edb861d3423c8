/** Life-cycle costs against the public guide's example, interest tables and sums by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lifeCycle } from '../../../models/money/life-cycle.ts';
import { COST_ELEMENTS, type OptionCosts } from '../../../models/money/option-costs.ts';
import { purchasesOf } from '../../../models/money/ownership.ts';
import { annuity, presentFactor } from '../../../models/money/terms.ts';
import { expectClose } from '../../expect-close.ts';
import {
  ANNUITIES,
  GUIDE_HOURS,
  GUIDE_OPTIONS,
  GUIDE_PRICE,
  GUIDE_REPAIR,
  GUIDE_TERMS,
} from '../../reference/life-cycle-costs.ts';

const NOTHING: OptionCosts = {
  devices: [],
  energy: 0,
  energyPrice: 0,
  attentionHours: 0,
  failureHours: 0,
  labourRate: 0,
  parts: 0,
  extras: [],
  valueAtRisk: 0,
  lossesPerYear: 0,
};

describe('the guide of pump life-cycle costs', () => {
  it.each(GUIDE_OPTIONS)(
    'prints $printed for $name',
    ({ initial, kilowatts, maintenance, other, printed }) => {
      const { presentValue } = lifeCycle(
        {
          ...NOTHING,
          energy: kilowatts * GUIDE_HOURS,
          energyPrice: GUIDE_PRICE,
          extras: [
            { element: 'purchase', cost: initial, year: 0 },
            { element: 'maintenance', cost: maintenance, year: 1, everyYears: 1 },
            { element: 'operation', cost: other, year: 1, everyYears: 1 },
            { element: 'maintenance', ...GUIDE_REPAIR, year: 2 },
          ],
        },
        GUIDE_TERMS,
      );
      expect(Math.round(presentValue)).toBe(printed);
    },
  );
});

describe('present values', () => {
  it.each(ANNUITIES)('of $years years at $discountRate are $expected times one', (row) => {
    expectClose(annuity({ ...row, rise: 0 }), row.expected, { absolute: 0.5e-4 });
  });

  it('of rising prices are those of the guide: 6.775723 each year, 3.323940 each second', () => {
    // The guide's own factors, to the digit that its totals are sensitive to.
    const { years, discountRate, inflation: rise } = GUIDE_TERMS;
    expectClose(annuity({ years, rise, discountRate }), 6.775723, { absolute: 5e-7 });
    const second = [2, 4, 6, 8].reduce((sum, year) => sum + presentFactor({ year, rise, discountRate }), 0);
    expectClose(second, 3.32394, { absolute: 5e-7 });
  });

  it('of 25 000 out, 8000 a year and 5000 left after 5 years at 20 % grow to 2324.80', () => {
    // Published example of a public page on capital budgeting: future worth 2324.80.
    const { presentValue } = lifeCycle(
      {
        ...NOTHING,
        extras: [
          { element: 'purchase', cost: 25_000, year: 0 },
          { element: 'operation', cost: -8000, year: 1, everyYears: 1 },
          { element: 'disposal', cost: -5000, year: 5 },
        ],
      },
      { years: 5, discountRate: 0.2, inflation: 0, energyInflation: 0 },
    );
    expectClose(-presentValue * 1.2 ** 5, 2324.8, { absolute: 0.005 });
  });
});

describe('what is bought', () => {
  const device = { price: 800, lifeYears: 4, isNew: true, ageYears: 0 };

  it('is bought again at the end of each life, and comes back for what is unused', () => {
    // Bought at 0, 4, 8; of the third 2 of 4 years are left after 10.
    expect(purchasesOf(device, 10)).toEqual([
      { year: 0, cost: 800 },
      { year: 4, cost: 800 },
      { year: 8, cost: 800 },
      { year: 10, cost: -400 },
    ]);
  });

  it('is not bought at the very end', () => {
    expect(purchasesOf(device, 8)).toEqual([
      { year: 0, cost: 800 },
      { year: 4, cost: 800 },
    ]);
  });

  it('is there already at no price, for the life that it has left', () => {
    expect(purchasesOf({ ...device, isNew: false, ageYears: 1 }, 4)).toEqual([
      { year: 3, cost: 800 },
      { year: 4, cost: -600 },
    ]);
    expect(purchasesOf({ ...device, isNew: false, ageYears: 0 }, 4)).toEqual([]);
  });

  it('that has half a year left is bought inside the first year, and again a life after that moment', () => {
    const old = { price: 800, lifeYears: 8, isNew: false, ageYears: 7.5 };
    // By hand: bought at 0.5 and 8.5; of the second (16.5 - 10)/8 is unused at 10, (16.5 - 9)/8 at 9.
    expect(purchasesOf(old, 10)).toEqual([
      { year: 1, cost: 800 },
      { year: 9, cost: 800 },
      { year: 10, cost: -650 },
    ]);
    expect(purchasesOf(old, 9)).toEqual([
      { year: 1, cost: 800 },
      { year: 9, cost: 800 },
      { year: 9, cost: -750 },
    ]);
  });

  it('outlives its life by a year when it is older than that', () => {
    expect(purchasesOf({ ...device, isNew: false, ageYears: 9 }, 5)).toEqual([{ year: 1, cost: 800 }]);
  });

  it('of a life of half years is paid at the end of the year in which it is due', () => {
    expect(purchasesOf({ ...device, lifeYears: 2.5 }, 6)).toEqual([
      { year: 0, cost: 800 },
      { year: 3, cost: 800 },
      { year: 5, cost: 800 },
      { year: 6, cost: -480 },
    ]);
  });

  it('of a life in tenths of a year is due in the year that whole tenths say', () => {
    const lives = fc.record({
      tenths: fc.integer({ min: 1, max: 200 }),
      years: fc.integer({ min: 1, max: 60 }),
    });
    fc.assert(
      fc.property(lives, ({ tenths, years }) => {
        const due: number[] = [];
        for (let at = tenths; at < 10 * years; at += tenths) due.push(Math.ceil(at / 10));
        const bought = purchasesOf({ ...device, lifeYears: tenths / 10 }, years).filter(
          ({ cost }) => cost > 0,
        );
        expect(bought.map(({ year }) => year)).toEqual([0, ...due]);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('every 1.4 years for 20 costs 6579.03 of 1000 each at 10 %', () => {
    // By exact fractions, apart from the code: purchases at 0, 1.4, .. 19.6, each at the end of its year, less the rest at 20.
    const option = { ...NOTHING, devices: [{ ...device, price: 1000, lifeYears: 1.4 }] };
    const { presentValue } = lifeCycle(option, {
      years: 20,
      discountRate: 0.1,
      inflation: 0,
      energyInflation: 0,
    });
    expectClose(presentValue, 6579.03, { absolute: 0.005 });
  });

  it('lasts where its life is not known', () => {
    expect(purchasesOf({ ...device, lifeYears: null }, 30)).toEqual([{ year: 0, cost: 800 }]);
  });

  it('costs its price over its life for each year, whatever the years looked at (without interest)', () => {
    const cases = fc.record({
      life: fc.integer({ min: 1, max: 30 }),
      years: fc.integer({ min: 1, max: 60 }),
    });
    fc.assert(
      fc.property(cases, ({ life, years }) => {
        const total = purchasesOf({ ...device, lifeYears: life }, years).reduce(
          (sum, { cost }) => sum + cost,
          0,
        );
        expectClose(total, (800 * years) / life, { relative: 1e-12 });
      }),
      { seed: 1 },
    );
  });
});

describe('years and elements', () => {
  const money = fc.double({ min: 0, max: 1e5, noNaN: true });
  const rate = fc.double({ min: -0.2, max: 0.4, noNaN: true });
  const options = fc.record({
    energy: money,
    energyPrice: fc.double({ min: -1, max: 1, noNaN: true }),
    attentionHours: money,
    failureHours: fc.constant(0),
    labourRate: money,
    parts: money,
    valueAtRisk: money,
    lossesPerYear: fc.double({ min: 0, max: 2, noNaN: true }),
    extras: fc.array(
      fc.record({
        element: fc.constantFrom(...COST_ELEMENTS),
        cost: fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        year: fc.integer({ min: 0, max: 20 }),
        everyYears: fc.option(fc.integer({ min: 1, max: 5 }), { nil: undefined }),
      }),
      { maxLength: 4 },
    ),
    devices: fc.constant([{ price: 800, lifeYears: 4, isNew: true, ageYears: 0 }]),
  });
  const terms = fc.record({
    years: fc.integer({ min: 1, max: 25 }),
    discountRate: rate,
    inflation: rate,
    energyInflation: rate,
  });

  it('add up to the present value, both ways', () => {
    fc.assert(
      fc.property(options, terms, (option, within) => {
        const { presentValue, elements, years } = lifeCycle(option, within);
        const scale = years.reduce((sum, year) => sum + Math.abs(year.presentValue), 1);
        const byElement = COST_ELEMENTS.reduce((sum, name) => sum + elements[name], 0);
        expectClose(byElement, presentValue, { absolute: 1e-9 * scale });
        expectClose(years.at(-1)?.cumulated ?? Number.NaN, presentValue, { absolute: 1e-9 * scale });
        expect(years).toHaveLength(within.years + 1);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it('tell energy by its own rise of prices', () => {
    const option = { ...NOTHING, energy: 1000, energyPrice: 0.2, parts: 100 };
    const { years } = lifeCycle(option, { years: 2, discountRate: 0, inflation: 0.1, energyInflation: 0.5 });
    expectClose(years[2]?.elements.energy ?? 0, 200 * 1.5 ** 2, { relative: 1e-12 });
    expectClose(years[2]?.elements.maintenance ?? 0, 100 * 1.1 ** 2, { relative: 1e-12 });
    expect(years[0]?.total).toBe(0);
  });
});
