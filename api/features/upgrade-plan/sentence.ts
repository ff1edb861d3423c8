/** Puts an upgrade plan into a few sentences. */
import { candidateAt } from '../../../models/upgrade-plan/upgrade.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { StoredUpgradePlan } from './contract.ts';
import { outlivedUpgrades } from './outlived.ts';

/** More upgrades than these are counted, not named. */
const NAMED = 3;

export function upgradePlanSentence({ question, currency, plan: found }: StoredUpgradePlan): string {
  const { plan, moreBudget, leftOut } = found;
  const { items, presentValue, status, gap } = plan;
  const money = (amount: number): string => `${sayNumber(amount)} ${currency}`;
  const gain = moreBudget.plan.presentValue - presentValue;
  const more = gain > 0 ? ` With 1 % more budget it would be worth ${money(gain)} more.` : '';
  if (items.length === 0) {
    const because = leftOut.every(({ reason }) => reason === 'does-not-pay')
      ? 'none pays'
      : 'none both pays and fits the budget: see leftOut';
    return `None of the ${question.candidates.length} upgrades is made: ${because}.${more}`;
  }
  const spent = items.reduce((sum, { candidate }) => sum + candidateAt(question, candidate).cost, 0);
  const first = items
    .slice(0, NAMED)
    .map(({ candidate, year }) => `${candidateAt(question, candidate).name} in year ${year}`)
    .join(', ');
  const rest = items.length > NAMED ? ` and ${items.length - NAMED} more` : '';
  const better =
    gap === null
      ? 'a better plan may exist'
      : `a better one could exceed it by ${sayNumber(100 * gap, 2)} % at most`;
  const proof = status === 'optimal' ? '' : ` The search was ended by its time: ${better}.`;
  const outlived = outlivedUpgrades(question, items);
  const caveat =
    outlived.length === 0
      ? ''
      : ` Saved on after their life, without a replacement: ${outlived.join(', ')}; enter what replaces them, or fewer years.`;
  return `Make ${first}${rest}: ${items.length} of ${question.candidates.length} upgrades for ${money(spent)}, worth ${money(presentValue)} of present value over ${question.years} years.${caveat}${proof}${more}`;
}
