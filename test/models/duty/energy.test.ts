/** Energy and cost of a year. */
import { describe, expect, it } from 'vitest';
import { annualUse } from '../../../models/duty/energy.ts';
import { expectClose } from '../../expect-close.ts';

describe('a year of running', () => {
  it('takes 8.76 kWh a watt around the clock', () => {
    const { annualEnergy, annualCost } = annualUse({
      power: 100,
      standbyPower: 3,
      hoursPerDay: 24,
      price: 0.2,
    });
    expectClose(annualEnergy, 876, { relative: 1e-12 });
    expectClose(annualCost ?? Number.NaN, 175.2, { relative: 1e-12 });
  });

  it('counts standby in the other hours', () => {
    const { annualEnergy } = annualUse({ power: 100, standbyPower: 3, hoursPerDay: 10, price: null });
    expectClose(annualEnergy, 0.365 * (10 * 100 + 14 * 3), { relative: 1e-12 });
  });

  it('costs nobody knows what without a price, and nothing at a price of 0', () => {
    const use = { power: 100, standbyPower: 0, hoursPerDay: 24 };
    expect(annualUse({ ...use, price: null }).annualCost).toBeNull();
    expect(annualUse({ ...use, price: 0 }).annualCost).toBe(0);
  });
});
