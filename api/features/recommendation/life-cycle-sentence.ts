/** The life-cycle cost that a ranking went by, in a sentence. */
import type { LifeCycleTerms } from '../../../models/money/candidate-life-cycle.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { DutyAnswer } from '../duty-point/duty-answer.ts';

/** Empty where the ranking went by energy. */
export function lifeCycleWords(
  best: Pick<DutyAnswer, 'lifeCycleCost'> | null,
  terms: LifeCycleTerms | undefined,
  currency: string,
): string {
  const cost = best?.lifeCycleCost ?? null;
  if (terms === undefined || cost === null) return '';
  return ` Bought anew it costs ${sayNumber(cost, 6)} ${currency} over ${terms.years} years, the least of all that serve.`;
}
