/** Upgrade plans that cannot be made, as problems that name the candidates. */
import type { PlanFailure } from '../../../models/upgrade-plan/solve-plan.ts';
import { candidateAt, type PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import { toPointer } from '../../http/json-pointer.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';

/** More names than these make no sentence. */
const NAMED = 5;

export function planProblem(failure: PlanFailure, question: PlanQuestion): Problem {
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
    candidates.map((place) => ({ pointer: toPointer(['candidates', place, 'must']), detail: details[why] })),
  );
}
