/** Why a candidate is not in a plan, in a sentence. */
import type { LeftOut } from '../../../models/upgrade-plan/left-out.ts';
import { candidateAt, type PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';

export function leftOutWords(one: LeftOut, question: PlanQuestion, currency: string): string {
  const { cost, notBefore = 1, group = '' } = candidateAt(question, one.candidate);
  const money = (amount: number): string => `${sayNumber(amount)} ${currency}`;
  switch (one.reason) {
    case 'outside-plan':
      return `It may not be made before year ${notBefore}, and the plan ends with year ${question.years}.`;
    case 'does-not-pay': {
      const loss =
        one.value === 0
          ? 'what it saves and keeps of its value only just meets its cost'
          : `its cost exceeds what it saves and keeps of its value by ${money(-one.value)} of present value`;
      return `It does not pay: even in its best year, year ${one.year}, ${loss}.`;
    }
    case 'over-budget':
      return `It costs ${money(cost)}, and in the years in which it would pay the budget reaches ${money(one.most)} at most (year ${one.year}).`;
    case 'group': {
      const chosen = candidateAt(question, one.chosen).name;
      const otherwise = one.fits
        ? `in its place it would be worth ${money(one.value)} of present value`
        : 'in its place it would not fit the budget beside the rest of the plan';
      return `Its group "${group}" allows one, and ${chosen} is made: ${otherwise}.`;
    }
    case 'no-room':
      return `It would pay, but the budget is better spent on the rest of the plan: it would take ${money(one.missing)} more for year ${one.year} to make it as well.`;
  }
}
