/** Completes the terms of the life-cycle cost that a recommendation ranks by. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { LifeCycleTerms } from '../../../models/money/candidate-life-cycle.ts';
import { LIFE_CYCLE_DEFAULTS } from '../../fields/life-cycle-terms.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import type { RecommendationQuestion } from './question.ts';

/** Undefined where the ranking is by energy. Energy without a price cannot be compared with a purchase cost. */
export function statedLifeCycle(
  { site, options, places }: Pick<RecommendationQuestion, 'site' | 'options' | 'places'>,
  price: number | null,
): Result<LifeCycleTerms | undefined, Problem> {
  if (options.objective !== 'life-cycle-cost') return success(undefined);
  if (price === null) {
    const place = 'pointer' in places.balancing ? { pointer: '/objective' } : { parameter: 'objective' };
    const detail = 'needs a price of energy: state price or tariff, or enter one for the site';
    return failed(invalidRequest([{ ...place, detail }]));
  }
  const { years, discountRate, inflation, minutesPerFailure, ...rest } = {
    ...LIFE_CYCLE_DEFAULTS,
    ...options.lifeCycle,
  };
  return success({
    ...{ years, discountRate, inflation, minutesPerFailure },
    energyInflation: rest.energyInflation ?? inflation,
    labourRate: rest.labourRate ?? site.document.labourRate ?? 0,
  });
}
