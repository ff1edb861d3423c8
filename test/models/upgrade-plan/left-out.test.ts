/** The reasons why a candidate is not in a plan, each tried out. */
import { beforeAll, describe, expect, it } from 'vitest';
import { programSolvers } from '../../../api/features/upgrade-plan/program-solver.ts';
import type { ProgramSolver } from '../../../models/upgrade-plan/integer-program.ts';
import { type LeftOut, leftOutOf } from '../../../models/upgrade-plan/left-out.ts';
import { solvePlan } from '../../../models/upgrade-plan/solve-plan.ts';
import type { PlanItem, PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import { brokenRules } from '../../../models/upgrade-plan/verify-plan.ts';
import { worth } from './every-plan.ts';
import { drawnQuestions, question, upgrade } from './question.ts';

let solverFor: (seconds: number) => ProgramSolver;
beforeAll(async () => {
  solverFor = await programSolvers();
});

const itemsOf = (asked: PlanQuestion): readonly PlanItem[] | null => {
  const plan = solvePlan(asked, { solve: solverFor(20) });
  return plan.ok ? plan.value.items : null;
};

const reasonsOf = (asked: PlanQuestion): readonly LeftOut[] => leftOutOf(asked, itemsOf(asked) ?? []);

describe('a candidate is left out', () => {
  it.each([
    ['because its years are not in the plan', { firstYear: 4 }, 'outside-plan'],
    ['because it does not pay', { yearlySaving: 1, lifeYears: 3 }, 'does-not-pay'],
    ['because the budget never reaches its cost', { cost: 3100, yearlySaving: 3000 }, 'over-budget'],
    ['because a better one of its group is made', { yearlySaving: 310, group: 'g' }, 'group'],
    ['because the rest makes more of the money', { cost: 2000, yearlySaving: 700 }, 'no-room'],
  ] as const)('%s', (_, change, reason) => {
    const chosen = upgrade({ cost: 1100, yearlySaving: 900, group: 'g' });
    const asked = question({ candidates: [chosen, upgrade(change)] });
    expect(reasonsOf(asked)).toMatchObject([{ candidate: 1, reason }]);
  });

  it('with the money that is missing', () => {
    const asked = question({
      budget: [1500, 0, 0],
      candidates: [upgrade({ cost: 1200, yearlySaving: 900 }), upgrade({ cost: 700, yearlySaving: 400 })],
    });
    expect(reasonsOf(asked)).toEqual([{ candidate: 1, reason: 'no-room', missing: 400, year: 1 }]);
  });
});

/** What the reason says, tried out on the plan. */
function isTrue(asked: PlanQuestion, items: readonly PlanItem[], one: LeftOut): boolean {
  const years = Array.from({ length: asked.years }, (_, place) => place + 1);
  const inYear = (year: number, others: readonly PlanItem[]) => [
    ...others,
    { candidate: one.candidate, year },
  ];
  const isAllowed = (plan: readonly PlanItem[]) => brokenRules(asked, plan).length === 0;
  const gains = (year: number) => worth(asked, inYear(year, [])) > 1e-9;
  const noMusts = { ...asked, candidates: asked.candidates.map((each) => ({ ...each, mandatory: false })) };
  const fitsAlone = (year: number) => brokenRules(noMusts, inYear(year, [])).length === 0;
  switch (one.reason) {
    case 'outside-plan':
      return years.every((year) => !fitsAlone(year));
    case 'does-not-pay':
      return years.every((year) => !gains(year) || !fitsAlone(year));
    case 'over-budget':
      return years.every((year) => !(gains(year) && fitsAlone(year)));
    case 'group': {
      const others = items.filter(({ candidate }) => candidate !== one.chosen);
      const best = worth(asked, items) + 1e-9;
      const better = years.filter(
        (year) => isAllowed(inYear(year, others)) && worth(asked, inYear(year, others)) > best,
      );
      return (
        better.length === 0 && asked.candidates[one.chosen]?.group === asked.candidates[one.candidate]?.group
      );
    }
    case 'no-room': {
      const richer = (money: number) => ({
        ...asked,
        budget: years.map((year) => (asked.budget[year - 1] ?? 0) + (year === one.year ? money : 0)),
      });
      const added = inYear(one.year, items);
      return (
        brokenRules(richer(one.missing * 1.001), added).length === 0 &&
        brokenRules(richer(one.missing * 0.999), added).length > 0 &&
        years.every((year) => !(gains(year) && isAllowed(inYear(year, items))))
      );
    }
  }
}

it('every reason holds when it is tried out, in 200 small cases', () => {
  const seen = new Set<string>();
  for (const asked of drawnQuestions(200, 7)) {
    const items = itemsOf(asked);
    if (items === null) continue;
    for (const one of leftOutOf(asked, items)) {
      seen.add(one.reason);
      expect(isTrue(asked, items, one), JSON.stringify({ asked, items, one })).toBe(true);
    }
  }
  expect([...seen].sort()).toEqual(['does-not-pay', 'group', 'no-room', 'outside-plan', 'over-budget']);
});
