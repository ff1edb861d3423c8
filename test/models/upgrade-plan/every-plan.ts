/** Every plan of a small question, tried out one by one: a second way to the best. */
import type { PlanItem, PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';

/** Rounding of sums of money. */
const ROUNDING = 1e-6;

/** Of a plan's money, each flow by itself: year's start y - 1, year's end n, the rest at the end of the last year. */
export function worth({ years, discountRate, candidates }: PlanQuestion, items: readonly PlanItem[]): number {
  const flows: { readonly money: number; readonly time: number }[] = [];
  for (const { candidate, year } of items) {
    const { cost = 0, yearlySaving = 0, lifeYears = 1 } = candidates[candidate] ?? {};
    flows.push({ money: -cost, time: year - 1 });
    for (let end = year; end <= years; end++) flows.push({ money: yearlySaving, time: end });
    const used = years - year + 1;
    if (used < lifeYears) flows.push({ money: (cost * (lifeYears - used)) / lifeYears, time: years });
  }
  return flows.reduce((sum, { money, time }) => sum + money / (1 + discountRate) ** time, 0);
}

function isAllowed(
  { years, budget, carryOver, candidates }: PlanQuestion,
  items: readonly PlanItem[],
): boolean {
  const groups = items.flatMap(({ candidate }) => candidates[candidate]?.group ?? []);
  if (new Set(groups).size < groups.length) return false;
  const made = items.map(({ candidate }) => candidate);
  if (candidates.some(({ mandatory: must }, place) => must === true && !made.includes(place))) return false;
  let purse = 0;
  for (let year = 1; year <= years; year++) {
    purse = (carryOver ? purse : 0) + (budget[year - 1] ?? 0);
    for (const item of items) {
      if (item.year === year) purse -= candidates[item.candidate]?.cost ?? 0;
    }
    if (purse < -ROUNDING) return false;
  }
  return true;
}

function* plansOf(question: PlanQuestion, from = 0): Generator<readonly PlanItem[]> {
  const upgrade = question.candidates[from];
  if (upgrade === undefined) {
    yield [];
    return;
  }
  const { firstYear: notBefore = 1, lastYear: notAfter = question.years } = upgrade;
  for (const rest of plansOf(question, from + 1)) {
    yield rest;
    for (let year = notBefore; year <= Math.min(notAfter, question.years); year++) {
      yield [{ candidate: from, year }, ...rest];
    }
  }
}

/** Worth of the best plan; null where no plan makes all must-dos. */
export function bestByEnumeration(question: PlanQuestion): number | null {
  let best: number | null = null;
  for (const items of plansOf(question)) {
    if (!isAllowed(question, items)) continue;
    best = Math.max(best ?? Number.NEGATIVE_INFINITY, worth(question, items));
  }
  return best;
}
