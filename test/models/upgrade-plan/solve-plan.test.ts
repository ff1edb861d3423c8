/** Upgrade plans against trying out every plan, and the rules that they keep. */
import { beforeAll, describe, expect, it } from 'vitest';
import { programSolvers } from '../../../api/features/upgrade-plan/program-solver.ts';
import { planUpgrades } from '../../../models/upgrade-plan/choose-upgrades.ts';
import type { ProgramSolver } from '../../../models/upgrade-plan/integer-program.ts';
import { leftOutOf } from '../../../models/upgrade-plan/left-out.ts';
import { solvePlan } from '../../../models/upgrade-plan/solve-plan.ts';
import type { PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import { brokenRules, cashValue } from '../../../models/upgrade-plan/verify-plan.ts';
import { expectClose } from '../../expect-close.ts';
import { bestByEnumeration, worth } from './every-plan.ts';
import { drawnQuestions, extremeQuestions, question, upgrade } from './question.ts';

const CASES = 200;
const SECONDS = 20;

let solverFor: (seconds: number) => ProgramSolver;
beforeAll(async () => {
  solverFor = await programSolvers();
});

const solved = (asked: PlanQuestion) => {
  const plan = solvePlan(asked, { solve: solverFor(SECONDS) });
  if (!plan.ok) throw new Error(plan.failure.code);
  return plan.value;
};

describe('a plan', () => {
  it(`is worth what the best of all plans is worth, in ${CASES} small cases`, () => {
    let made = 0;
    for (const asked of drawnQuestions(CASES, 4)) {
      const best = bestByEnumeration(asked);
      const plan = solvePlan(asked, { solve: solverFor(SECONDS) });
      expect(plan.ok, JSON.stringify(asked)).toBe(best !== null);
      if (!plan.ok || best === null) continue;
      made += 1;
      expect(plan.value).toMatchObject({ status: 'optimal', gap: 0 });
      expectClose(plan.value.presentValue, best, { relative: 1e-9, absolute: 1e-9 });
      expectClose(worth(asked, plan.value.items), best, { relative: 1e-9, absolute: 1e-9 });
      expect(brokenRules(asked, plan.value.items)).toEqual([]);
    }
    // Some cases have must-dos that contradict one another.
    expect(made).toBeGreaterThan(CASES / 2);
    expect(made).toBeLessThan(CASES);
  });

  it('never is worth less with more budget, and tells what 1 % more is worth', () => {
    for (const asked of drawnQuestions(40, 5)) {
      const plan = planUpgrades(asked, {
        plan: () => solverFor(SECONDS),
        moreBudget: () => solverFor(SECONDS),
      });
      if (!plan.ok) continue;
      const { moreBudget } = plan.value;
      expectClose(moreBudget.budget[0] ?? 0, 1.01 * (asked.budget[0] ?? 0), { relative: 1e-12 });
      const best = bestByEnumeration({ ...asked, budget: moreBudget.budget }) ?? Number.NaN;
      expectClose(moreBudget.plan.presentValue, best, { relative: 1e-9, absolute: 1e-9 });
      expect(moreBudget.plan.presentValue).toBeGreaterThanOrEqual(plan.value.plan.presentValue - 1e-9);
    }
  });

  it('is empty where the budget fits nothing', () => {
    const plan = solved(question({ budget: [10] }));
    expect(plan).toEqual({ items: [], presentValue: 0, status: 'optimal', gap: 0 });
  });

  it('waits for money that carries over, and cannot where it does not', () => {
    const two = {
      years: 4,
      budget: [500, 500, 500, 500],
      candidates: [upgrade({ cost: 900, yearlySaving: 800 })],
    };
    expect(solved(question(two)).items).toEqual([{ candidate: 0, year: 2 }]);
    expect(solved(question({ ...two, carryOver: false })).items).toEqual([]);
  });

  it('makes a must-do that does not pay, in the year in which it costs the least', () => {
    const burden = upgrade({ yearlySaving: -50, mandatory: true });
    const plan = solved(question({ candidates: [burden] }));
    expect(plan.items).toEqual([{ candidate: 0, year: 3 }]);
    expect(plan.presentValue).toBeLessThan(0);
  });

  it('takes cents to the last one', () => {
    const thirds = [upgrade({ cost: 0.1 }), upgrade({ cost: 0.2 }), upgrade({ cost: 0.31 })];
    const plan = solved(question({ years: 1, budget: [0.3], candidates: thirds }));
    expect(plan.items.map(({ candidate }) => candidate)).toEqual([0, 1]);
  });

  it.each([true, false])(
    'takes what overspends by rounding alone as within, carried over: %s',
    (carryOver) => {
      for (const over of [1 + 9e-10, 1, 1 - 1e-12]) {
        for (const cost of [1e-3, 1, 1e9]) {
          const candidates = [upgrade({ cost: over * cost, yearlySaving: cost, mandatory: true })];
          const plan = solved(question({ years: 1, budget: [cost], carryOver, candidates }));
          expect(plan.items).toEqual([{ candidate: 0, year: 1 }]);
        }
      }
    },
  );

  it('keeps its rules for the largest and smallest sums and rates', () => {
    for (const asked of extremeQuestions(150, 9)) {
      const plan = solved(asked);
      expect(Number.isFinite(plan.presentValue)).toBe(true);
      expect(brokenRules(asked, plan.items)).toEqual([]);
    }
  });

  it('is not tempted by what overspends by less than a solver notices', () => {
    const millions = [upgrade({ cost: 4e8, yearlySaving: 3e8 }), upgrade({ cost: 6e8, yearlySaving: 4e8 })];
    const short = question({ years: 1, budget: [1e9 - 10], candidates: millions });
    expect(solved(short).items).toEqual([{ candidate: 1, year: 1 }]);
    expect(solved({ ...short, budget: [1e9] }).items).toHaveLength(2);
  });
});

describe('must-dos that contradict one another', () => {
  const contradiction = (asked: PlanQuestion) => {
    const plan = solvePlan(asked, { solve: solverFor(SECONDS) });
    if (plan.ok) throw new Error('there is a plan');
    return plan.failure;
  };
  const must = (change: object = {}) => upgrade({ mandatory: true, ...change });

  it('are named where their group allows one', () => {
    const candidates = [must({ group: 'a' }), upgrade({ group: 'a' }), must({ group: 'a' })];
    expect(contradiction(question({ candidates }))).toMatchObject({ why: 'group', candidates: [0, 2] });
  });

  it('are named where their years lie outside the plan', () => {
    const candidates = [upgrade(), must({ firstYear: 4 })];
    expect(contradiction(question({ candidates }))).toMatchObject({ why: 'years', candidates: [1] });
  });

  it('are named where the budget does not reach by a year', () => {
    const candidates = [must({ lastYear: 1 }), must({ lastYear: 2 }), must({ lastYear: 2 }), must()];
    expect(contradiction(question({ candidates }))).toEqual({
      code: 'contradictory-musts',
      why: 'budget',
      candidates: [0, 1, 2],
      year: 2,
    });
  });

  it('are named, and those that do not matter are not, where money does not carry over', () => {
    const candidates = [
      must({ cost: 100 }),
      must({ cost: 600, lastYear: 1 }),
      must({ cost: 500, lastYear: 1 }),
    ];
    const asked = question({ candidates, carryOver: false });
    expect(contradiction(asked)).toMatchObject({ why: 'budget', candidates: [1, 2] });
  });
});

describe('a search that is ended by its time', () => {
  const large = (): PlanQuestion => {
    const [many] = [drawnQuestions(120, 6)];
    const candidates = many
      .flatMap((one) => one.candidates)
      .map(({ mandatory: _, group: __, ...one }) => one);
    return {
      years: 20,
      budget: Array.from({ length: 20 }, () => 400),
      carryOver: true,
      discountRate: 0.06,
      candidates,
    };
  };

  it('answers with a plan that keeps the rules, and with a gap that holds', () => {
    const asked = large();
    const hasty = solvePlan(asked, { solve: solverFor(0) });
    const patient = solvePlan(asked, { solve: solverFor(3) });
    if (!hasty.ok || !patient.ok) throw new Error('there is no plan');
    expect(hasty.value.status).toBe('time-limit');
    expect(brokenRules(asked, hasty.value.items)).toEqual([]);
    expectClose(cashValue(asked, hasty.value.items), hasty.value.presentValue, { relative: 1e-9 });
    const most = hasty.value.presentValue * (1 + (hasty.value.gap ?? 0));
    expect(patient.value.presentValue).toBeLessThanOrEqual(most * (1 + 1e-9));
    expect(patient.value.presentValue).toBeGreaterThanOrEqual(hasty.value.presentValue * (1 - 1e-9));
  });

  it('still leaves nothing out that could be added', () => {
    const asked = large();
    const hasty = solvePlan(asked, { solve: solverFor(0) });
    if (!hasty.ok) throw new Error('there is no plan');
    for (const one of leftOutOf(asked, hasty.value.items)) {
      if (one.reason === 'no-room') expect(one.missing).toBeGreaterThan(0);
    }
  });
});
