/** What waiting costs, by hand. */
import { describe, expect, it } from 'vitest';
import { waitingCost } from '../../../models/condition/waiting-cost.ts';
import { expectClose } from '../../expect-close.ts';

/** Each percent of magnitude takes 10 W more, up to 5 %, which the highest setting holds. */
const held = [1, 2, 3, 4, 5, 6, 7].map((share) => ({
  magnitude: share / 100,
  power: 100 + 10 * Math.min(5, share),
  spare: (5 - share) / 100,
}));
const question = {
  ...{ held, power: 100, price: 0.2, grown: 100, grows: true },
  magnitudeAt: (day: number) => Math.max(0, (100 + day) * 1e-4),
  ...{ remedy: 'cleaning' as const, cost: null, shortfallAfter: null },
};

describe('what waiting costs', () => {
  it('is the power beyond that without the fault, for a year', () => {
    // 10 W x 8760 h x 0.2 per kWh.
    expectClose(waitingCost(question).annualExcessCost, 17.52, { relative: 1e-9 });
  });

  it('over the next year grows with the fault and ends at the highest setting', () => {
    // From 10 W on 0.1 W more a day, up to 46.5 W.
    const expected = 0.024 * 0.2 * 365 * (10 + 0.1 * 182.5);
    expectClose(waitingCost(question).nextYearCost, expected, { relative: 1e-6 });
    const fast = waitingCost({ ...question, magnitudeAt: (day) => Math.max(0, (100 + day) * 1e-3) });
    expect(fast.nextYearCost).toBeLessThanOrEqual(0.024 * 0.2 * 365 * 50 * (1 + 1e-12));
  });

  it('says when no setting restores the flow any more', () => {
    // 5 % is reached 500 days from the onset.
    expect(waitingCost(question).capReached).toBe(400);
    expect(waitingCost({ ...question, magnitudeAt: () => 0.02 }).capReached).toBeNull();
    expect(waitingCost({ ...question, held: held.slice(0, 4) }).capReached).toBeNull();
  });

  it('is nothing without an excess', () => {
    expect(waitingCost({ ...question, magnitudeAt: () => 0 })).toMatchObject({
      annualExcessCost: 0,
      nextYearCost: 0,
    });
  });
});

describe('the cheapest interval between cleanings', () => {
  // Excess of 0.1 W a day each day: T = sqrt(2 C/g), a year then costs 365 sqrt(2 C g) (Harris 1913, the square-root rule).
  const growth = 0.1 * 0.024 * 0.2;

  it('is sqrt(2 C/g) of growth in a straight line', () => {
    const cost = 20;
    const { cheapestInterval } = waitingCost({ ...question, cost });
    expectClose(cheapestInterval?.everyDays ?? Number.NaN, Math.sqrt((2 * cost) / growth), { absolute: 1 });
    expectClose(cheapestInterval?.annualCost ?? Number.NaN, 365 * Math.sqrt(2 * cost * growth), {
      relative: 0.01,
    });
    expect(cheapestInterval?.limitedByShortfall).toBe(false);
  });

  it('ends at a shortfall that comes before', () => {
    const found = waitingCost({ ...question, cost: 20, shortfallAfter: 60.5 }).cheapestInterval;
    expect(found).toMatchObject({ everyDays: 60, limitedByShortfall: true });
    expectClose(found?.annualCost ?? Number.NaN, (365 * (20 + (growth * 60 ** 2) / 2)) / 60, {
      relative: 1e-6,
    });
  });

  it('is none of a fault that does not grow', () => {
    expect(waitingCost({ ...question, cost: 20, grows: false }).cheapestInterval).toBeNull();
  });
});
