/** Makes the upgrade plan that a request asks for, ready to be stored. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { MODEL_VERSION } from '../../../models/model-version.ts';
import type { PlanFailure } from '../../../models/upgrade-plan/solve-plan.ts';
import { candidateAt, type PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import { toPointer } from '../../http/json-pointer.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import type { StoredUpgradePlan } from './contract.ts';
import { upgradePlanJob } from './job.ts';

/** For the search of one plan; the same with more budget takes half as long. */
const SEARCH_SECONDS = 5;

export async function makeUpgradePlan(
  { workers, site }: { readonly workers: WorkerPool; readonly site: SiteRecord },
  {
    name,
    currency,
    question,
  }: { readonly name: string; readonly currency: string | undefined; readonly question: PlanQuestion },
): Promise<Result<StoredUpgradePlan, Problem>> {
  const own = site.document.currency;
  if (currency !== undefined && currency !== own) {
    const detail = `must be ${own}, the currency of the site: nothing is converted`;
    return failed(invalidRequest([{ pointer: '/currency', detail }]));
  }
  const work = { question, seconds: SEARCH_SECONDS };
  const done = await runJob(workers, upgradePlanJob, { ready: null, work });
  if (!done.ok) return done;
  if (!done.value.ok) return failed(planProblem(done.value.failure, question));
  return success({ name, question, currency: own, plan: done.value.value, modelVersion: MODEL_VERSION });
}

/** More names than these make no sentence. */
const NAMED = 5;

/** Why no plan can be made, at the candidates that prevent it. */
function planProblem(failure: PlanFailure, question: PlanQuestion): Problem {
  if (failure.code === 'no-plan-in-time') {
    const detail =
      'have must-dos for which no years within the budget were found in the time: let money carry over, or take some out';
    return invalidRequest([{ pointer: '/candidates', detail }]);
  }
  const { why, candidates, year } = failure;
  const named = candidates.slice(0, NAMED).map((place) => `"${candidateAt(question, place).name}"`);
  const more = candidates.length > NAMED ? ` and ${candidates.length - NAMED} more` : '';
  const names = `${named.join(', ')}${more}`;
  const cost = candidates.reduce((sum, place) => sum + candidateAt(question, place).cost, 0);
  const by = year === null ? 'in any years that they allow' : `by year ${year}`;
  const details = {
    group: `contradicts another must of its group, which allows one: ${names}`,
    years: `cannot hold: ${names} may not be made in any year of the plan, 1 to ${question.years}`,
    budget: `cannot hold with the others: ${names} cost ${cost} in all, which the budget does not reach ${by}`,
  } as const;
  return invalidRequest(
    candidates.map((place) => ({
      pointer: toPointer(['candidates', place, 'mandatory']),
      detail: details[why],
    })),
  );
}
