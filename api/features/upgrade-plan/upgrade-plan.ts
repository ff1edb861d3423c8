/** An upgrade plan asked for, made in a worker thread and ready to be stored. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { MODEL_VERSION } from '../../../models/model-version.ts';
import type { PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import { runHeavy } from '../../http/run-job.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { HeavyWork } from '../../threads/worker-pool.ts';
import type { StoredUpgradePlan } from './contract.ts';
import { planProblem } from './problems.ts';

/** For the search of one plan; the same with more budget takes half as long. */
const SEARCH_SECONDS = 5;

export async function makeUpgradePlan(
  { heavyWork, site }: { readonly heavyWork: HeavyWork; readonly site: SiteRecord },
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
  const done = await runHeavy(heavyWork, 'upgradePlan', { question, seconds: SEARCH_SECONDS });
  if (!done.ok) return done;
  if (!done.value.ok) return failed(planProblem(done.value.failure, question));
  return success({ name, question, currency: own, plan: done.value.value, modelVersion: MODEL_VERSION });
}
