/** The present value of an upgrade, against published annuity factors and by hand. */
import { describe, it } from 'vitest';
import { upgradeValue } from '../../../models/upgrade-plan/upgrade-value.ts';
import { expectClose } from '../../expect-close.ts';
import { upgrade } from './question.ts';

describe('the present value of an upgrade', () => {
  // Present value of 1 at the end of each year, tables of engineering economics (from memory, as in any textbook), to 4 decimals.
  it.each([
    { years: 5, discountRate: 0.05, factor: 4.3295 },
    { years: 10, discountRate: 0.08, factor: 6.7101 },
    { years: 15, discountRate: 0.04, factor: 11.1184 },
    { years: 20, discountRate: 0.1, factor: 8.5136 },
    { years: 40, discountRate: 0.06, factor: 15.0463 },
  ])('of a free saving of 1 a year is the annuity factor $factor', ({ factor, ...terms }) => {
    expectClose(upgradeValue(upgrade({ cost: 0, yearlySaving: 1 }), 1, terms), factor, { absolute: 0.6e-4 });
  });

  it('pays at the start of its year, saves at the ends of it and of those that follow, keeps unused life', () => {
    const terms = { years: 5, discountRate: 0 };
    const one = upgrade({ cost: 1000, yearlySaving: 200, lifeYears: 10 });
    expectClose(upgradeValue(one, 1, terms), -1000 + 5 * 200 + 500, { absolute: 1e-9 });
    expectClose(upgradeValue(one, 5, terms), -1000 + 200 + 900, { absolute: 1e-9 });
  });

  it('by hand at 10 %: paid at 1/1.1, saved at 1/1.21, the half that is left at 1/1.21', () => {
    const value = upgradeValue(upgrade({ cost: 121, yearlySaving: 60.5, lifeYears: 2 }), 2, {
      years: 2,
      discountRate: 0.1,
    });
    expectClose(value, -110 + 50 + 50, { relative: 1e-12 });
  });

  it('counts no less than nothing for a life that ends before the plan, and goes on saving', () => {
    const value = upgradeValue(upgrade({ cost: 100, yearlySaving: 10, lifeYears: 2 }), 1, {
      years: 4,
      discountRate: 0,
    });
    expectClose(value, -100 + 40, { absolute: 1e-9 });
  });
});
