/** Sums over a site, and the lists that do not grow with it. */
import { describe, expect, it } from 'vitest';
import type { LoopFigures } from '../../../models/site-summary/loop-figures.ts';
import {
  NO_TOTALS,
  REPORTED_MOST,
  SAVINGS_REPORTED,
  type SiteTotals,
  withLoop,
  withoutPump,
} from '../../../models/site-summary/site-totals.ts';
import { drawsFrom, mulberry32 } from '../../random/draw.ts';

const figures = (change: Partial<LoopFigures> = {}): LoopFigures => ({
  ...{ power: 100, annualEnergy: 876, annualCost: 175, hasRequirement: true },
  ...{ short: null, aboveNeed: null, otherPump: null },
  ...change,
});

const added = (totals: SiteTotals, one: LoopFigures | null, name = 'loop'): SiteTotals =>
  withLoop(totals, { loop: { id: name, name }, figures: one, isScheduled: false, count: 1, setting: 80 });

const saved = (money: number) => ({ setting: 60, energySaved: 5 * money, costSaved: money });

describe('the totals of a site', () => {
  it('add up what is known, and count what is not', () => {
    const totals = [figures(), null, figures({ hasRequirement: false })].reduce(
      (sum, one) => added(sum, one),
      withoutPump(NO_TOTALS),
    );
    expect(totals).toMatchObject({
      ...{ loops: 4, withoutPump: 1, unsolved: 1, withoutRequirement: 1 },
      ...{ power: 200, annualEnergy: 1752, annualCost: 350 },
    });
  });

  it('have no cost once a loop has none', () => {
    const totals = added(added(NO_TOTALS, figures({ annualCost: null })), figures());
    expect(totals.annualCost).toBeNull();
  });

  it('tell the best of many, whatever their order, and count the others', () => {
    const draw = drawsFrom(mulberry32(11));
    const money = Array.from({ length: 200 }, () => draw.between(1, 1000));
    const totals = money.reduce(
      (sum, one, place) => added(sum, figures({ aboveNeed: saved(one) }), `loop ${place}`),
      NO_TOTALS,
    );
    const best = money.toSorted((a, b) => b - a);
    expect(totals.above.count).toBe(200);
    expect(totals.above.most.map(({ costSaved }) => costSaved)).toEqual(best.slice(0, REPORTED_MOST));
    expect(totals.savings.map(({ costSaved }) => costSaved)).toEqual(best.slice(0, SAVINGS_REPORTED));
  });

  it('tell the worst of many that are short', () => {
    const margins = Array.from({ length: 90 }, (_, place) => -((place * 37) % 90) / 100 - 0.01);
    const totals = margins.reduce((sum, margin) => {
      const short = { outlet: 'far end', flow: 1 + margin, requiredFlow: 1, margin, phase: null };
      return added(sum, figures({ short }));
    }, NO_TOTALS);
    expect(totals.short.count).toBe(90);
    const told = totals.short.worst.map(({ margin }) => margin);
    expect(told).toEqual(margins.toSorted((a, b) => a - b).slice(0, REPORTED_MOST));
  });

  it('take another pump only where it saves more than the lower setting, and keep that beside it', () => {
    const other = { candidate: 3, count: 1, ...saved(50) };
    const [more] = added(NO_TOTALS, figures({ aboveNeed: saved(40), otherPump: other })).savings;
    expect(more).toMatchObject({ candidate: 3, costSaved: 50, settingAlone: { costSaved: 40 } });
    const [less] = added(NO_TOTALS, figures({ aboveNeed: saved(50), otherPump: other })).savings;
    expect(less).toMatchObject({ candidate: null, count: 1, costSaved: 50 });
  });

  it('take no saving that costs', () => {
    const dearer = figures({ aboveNeed: { setting: 60, energySaved: 10, costSaved: -2 } });
    expect(added(NO_TOTALS, dearer).savings).toEqual([]);
  });
});
