/** Lists the years in which each candidate of a plan may be made, and what it is worth in each. */
import { budgetUpTo, isWithin } from './spending.ts';
import type { PlanItem, PlanQuestion, Upgrade } from './upgrade.ts';
import { upgradeValue } from './upgrade-value.ts';

export interface Choice extends PlanItem {
  /** Present value [money]. */
  readonly value: number;
}

/**
 * First and last year [years] in which an upgrade may be made, the plan's own ends included; empty where the last is
 * before the first.
 */
export function yearsOf(
  { notBefore = 1, notAfter }: Upgrade,
  { years }: Pick<PlanQuestion, 'years'>,
): { readonly first: number; readonly last: number } {
  return { first: notBefore, last: Math.min(notAfter ?? years, years) };
}

/** The years [years] in which a candidate, by its place [-], may be made, by rising year, whatever it costs. */
export function choicesOf(question: PlanQuestion, candidate: number, upgrade: Upgrade): readonly Choice[] {
  const { first, last } = yearsOf(upgrade, question);
  const choices: Choice[] = [];
  for (let year = first; year <= last; year++) {
    choices.push({ candidate, year, value: upgradeValue(upgrade, year, question) });
  }
  return choices;
}

/** Those that a best plan may hold: a must in any year, another where it pays; each within what the budget ever reaches. */
export function usefulChoices(question: PlanQuestion): readonly Choice[] {
  return question.candidates.flatMap((upgrade, candidate) =>
    choicesOf(question, candidate, upgrade).filter(
      ({ year, value }) =>
        (upgrade.must === true || value > 0) && isWithin(upgrade.cost, budgetUpTo(question, year)),
    ),
  );
}
