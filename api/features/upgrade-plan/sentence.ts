/** Puts an upgrade plan into a few sentences. */
import { candidateAt } from '../../../models/upgrade-plan/upgrade.ts';
import { sayMoney } from '../../wording/money.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import { quoted } from '../../wording/quoted.ts';
import type { StoredUpgradePlan } from './contract.ts';
import { outlivedUpgrades } from './outlived.ts';

/** More upgrades than these are counted, not named. */
const NAMED = 3;

/** `Year 1: "A". Year 2: "B", "C". They cost ...; present value ... over 5 years. A 1 % larger budget adds ...` */
export function upgradePlanSentence(stored: StoredUpgradePlan): string {
  const { question, currency, plan: found } = stored;
  const { items, presentValue } = found.plan;
  const gain = found.moreBudget.plan.presentValue - presentValue;
  const more = gain > 0 ? [`A 1 % larger budget adds ${sayMoney(gain, currency)}.`] : [];
  const years = `${question.years} ${question.years === 1 ? 'year' : 'years'}`;
  if (items.length === 0) return [withoutUpgrade(stored, years), ...more].join(' ');
  const spent = items.reduce((sum, { candidate }) => sum + candidateAt(question, candidate).cost, 0);
  const cost = `${items.length === 1 ? 'It costs' : 'They cost'} ${sayMoney(spent, currency)}`;
  return [
    ...yearWords(stored),
    `${cost}; present value ${sayMoney(presentValue, currency)} over ${years}.`,
    ...outlivedWords(stored),
    ...searchWords(stored),
    ...more,
  ].join(' ');
}

const withoutUpgrade = ({ plan: { leftOut } }: StoredUpgradePlan, years: string): string =>
  leftOut.every(({ reason }) => reason === 'does-not-pay')
    ? `No upgrade pays back within ${years}.`
    : `No upgrade both pays back within ${years} and fits the budget. See \`leftOut\`.`;

/** The first upgrades by their years. */
function yearWords({ question, plan: found }: StoredUpgradePlan): readonly string[] {
  const { items } = found.plan;
  const byYear = new Map<number, readonly string[]>();
  for (const { candidate, year } of items.slice(0, NAMED)) {
    byYear.set(year, [...(byYear.get(year) ?? []), quoted(candidateAt(question, candidate).name)]);
  }
  const rest = items.length - NAMED;
  return [
    ...[...byYear].map(([year, names]) => `Year ${year}: ${names.join(', ')}.`),
    ...(rest > 0 ? [`${rest} more ${rest === 1 ? 'upgrade follows' : 'upgrades follow'}.`] : []),
  ];
}

function outlivedWords({ question, plan: found }: StoredUpgradePlan): readonly string[] {
  const names = outlivedUpgrades(question, found.plan.items).map(quoted);
  if (names.length === 0) return [];
  return [`The plan outlives ${names.join(', ')}. Enter the replacement, or fewer years.`];
}

function searchWords({ plan: found }: StoredUpgradePlan): readonly string[] {
  const { status, gap } = found.plan;
  if (status === 'optimal') return [];
  const better =
    gap === null
      ? 'a better plan can exist'
      : `a better plan could exceed it by ${sayNumber(100 * gap, 2)} % at most`;
  return [`The search ended by its time limit; ${better}.`];
}
