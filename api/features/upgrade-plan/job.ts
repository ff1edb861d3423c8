/** The job of an upgrade plan chooses the upgrades and their years, within a time. */
import type { Result } from '../../../curves/result.ts';
import { planUpgrades, type UpgradePlan } from '../../../models/upgrade-plan/choose-upgrades.ts';
import type { PlanFailure } from '../../../models/upgrade-plan/solve-plan.ts';
import type { PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import { plainJob } from '../../threads/job.ts';
import { programSolvers } from './program-solver.ts';

export interface UpgradePlanWork {
  readonly question: PlanQuestion;
  /** For the plan; the same with more budget gets half of it. */
  readonly seconds: number;
}

const SHARE_OF_MORE_BUDGET = 0.5;

export const upgradePlanJob = plainJob<UpgradePlanWork, Result<UpgradePlan, PlanFailure>>({
  name: 'upgrade-plan',
  isLong: () => true,
  async compute({ question, seconds }) {
    const solverFor = await programSolvers();
    return planUpgrades(question, {
      plan: () => solverFor(seconds),
      moreBudget: () => solverFor(SHARE_OF_MORE_BUDGET * seconds),
    });
  },
});
