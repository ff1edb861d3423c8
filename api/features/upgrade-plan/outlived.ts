/** Finds the upgrades whose life ends before the plan does. */
import { candidateAt, type PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';

/** Their names. */
export const outlivedUpgrades = (
  question: PlanQuestion,
  items: readonly { readonly candidate: number; readonly year: number }[],
): readonly string[] =>
  items.flatMap(({ candidate, year }) => {
    const { name, lifeYears } = candidateAt(question, candidate);
    return lifeYears < question.years - year + 1 ? [name] : [];
  });
