/** Plans upgrades as a whole: what to make when, what it spends, what is left out and why, what more money would be worth. */
import { type Result, success } from '../../curves/result.ts';
import type { ProgramSolver } from './integer-program.ts';
import { type LeftOut, leftOutOf } from './left-out.ts';
import { type PlanFailure, type SolvedPlan, solvePlan } from './solve-plan.ts';
import { spendingOf, type YearSpending } from './spending.ts';
import type { PlanQuestion } from './upgrade.ts';

export interface UpgradePlan {
  readonly plan: SolvedPlan;
  readonly spending: readonly YearSpending[];
  readonly leftOut: readonly LeftOut[];
  /** The same with a budget [money/year] that is larger in every year. */
  readonly moreBudget: {
    /** Of each year, this much more. */
    readonly budget: readonly number[];
    readonly plan: SolvedPlan;
  };
}

/** Each year's budget, once more, by this factor. */
const MORE = 1.01;

/** `solvers`: one for the plan, one for the same with 1 % more in every year. */
export function planUpgrades(
  question: PlanQuestion,
  solvers: { readonly plan: () => ProgramSolver; readonly moreBudget: () => ProgramSolver },
): Result<UpgradePlan, PlanFailure> {
  const plan = solvePlan(question, { solve: solvers.plan() });
  if (!plan.ok) return plan;
  const budget = question.budget.map((money) => MORE * money);
  const known = plan.value.items;
  const more = solvePlan({ ...question, budget }, { solve: solvers.moreBudget(), known });
  if (!more.ok) return more;
  return success({
    plan: plan.value,
    spending: spendingOf(question, known),
    leftOut: leftOutOf(question, known),
    moreBudget: { budget, plan: more.value },
  });
}
