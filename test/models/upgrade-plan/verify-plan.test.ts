/** The check of a plan from itself alone finds each rule that is broken, and nothing else. */
import { describe, expect, it } from 'vitest';
import type { PlanItem, PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import { brokenRules, cashValue } from '../../../models/upgrade-plan/verify-plan.ts';
import { expectClose } from '../../expect-close.ts';
import { worth } from './every-plan.ts';
import { drawnQuestions, question, upgrade } from './question.ts';

const asked = question({
  budget: [1000, 500, 0],
  candidates: [
    upgrade({ cost: 900, mandatory: true, lastYear: 2 }),
    upgrade({ cost: 500, group: 'a' }),
    upgrade({ cost: 100, group: 'a', firstYear: 2 }),
  ],
});
const must: PlanItem = { candidate: 0, year: 1 };

describe('a plan', () => {
  it.each<[string, readonly PlanItem[], Partial<PlanQuestion>]>([
    ['within its rules', [must, { candidate: 1, year: 2 }], {}],
    ['that spends all it has', [must, { candidate: 2, year: 2 }], { budget: [900, 100, 0] }],
  ])('%s breaks none', (_, items, change) => {
    expect(brokenRules({ ...asked, ...change }, items)).toEqual([]);
  });

  it.each<[string, readonly PlanItem[], Partial<PlanQuestion>]>([
    ['must 0 is not made', [], {}],
    ['candidate 0 is made 2 times', [must, { candidate: 0, year: 2 }], { budget: [2000] }],
    [
      'of group a, 2 are made',
      [must, { candidate: 1, year: 2 }, { candidate: 2, year: 3 }],
      { budget: [2000] },
    ],
    ['candidate 0 is made in year 3', [{ candidate: 0, year: 3 }], {}],
    ['candidate 2 is made in year 1', [must, { candidate: 2, year: 1 }], {}],
    ['candidate 1 is made in year 4', [must, { candidate: 1, year: 4 }], {}],
    ['candidate 1 is made in year 1.5', [must, { candidate: 1, year: 1.5 }], {}],
    ['year 2 is overspent by', [must, { candidate: 1, year: 2 }], { budget: [1000, 399] }],
    ['year 2 is overspent by', [must, { candidate: 1, year: 2 }], { budget: [1000, 499], carryOver: false }],
  ])('breaks a rule: %s', (rule, items, change) => {
    const [first, ...others] = brokenRules({ ...asked, ...change }, items);
    expect(first).toContain(rule);
    expect(others).toEqual([]);
  });

  it('is worth the same by its yearly cash as flow by flow', () => {
    for (const one of drawnQuestions(100, 8)) {
      const items = one.candidates.map((_, candidate) => ({ candidate, year: 1 + (candidate % one.years) }));
      expectClose(cashValue(one, items), worth(one, items), { relative: 1e-10, absolute: 1e-9 });
    }
  });
});
