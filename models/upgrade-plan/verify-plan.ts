/** Checks a plan against every rule, and recomputes its value, from the plan and the question alone. */
import { candidateAt, type PlanItem, type PlanQuestion } from './upgrade.ts';

/** Twice what a plan may overspend by rounding: the purse is summed in another order. */
const RELATIVE = 2e-9;

/** The rules that a plan breaks; empty for a sound one. */
export function brokenRules(question: PlanQuestion, items: readonly PlanItem[]): readonly string[] {
  return [...onceEach(question, items), ...inYears(question, items), ...withinBudget(question, items)];
}

function onceEach({ candidates }: PlanQuestion, items: readonly PlanItem[]): readonly string[] {
  const broken: string[] = [];
  const groups = new Map<string, number>();
  for (const [place, { must, group }] of candidates.entries()) {
    const times = items.filter(({ candidate }) => candidate === place).length;
    if (times > 1) broken.push(`candidate ${place} is made ${times} times`);
    if (must === true && times === 0) broken.push(`must ${place} is not made`);
    if (group !== undefined) groups.set(group, (groups.get(group) ?? 0) + times);
  }
  for (const [group, times] of groups) {
    if (times > 1) broken.push(`of group ${group}, ${times} are made`);
  }
  return broken;
}

function inYears(question: PlanQuestion, items: readonly PlanItem[]): readonly string[] {
  return items.flatMap(({ candidate, year }) => {
    const { notBefore = 1, notAfter = question.years } = candidateAt(question, candidate);
    const isAllowed =
      Number.isInteger(year) && year >= notBefore && year <= notAfter && year <= question.years;
    return isAllowed ? [] : [`candidate ${candidate} is made in year ${year}`];
  });
}

/** By following the purse year by year. */
function withinBudget(question: PlanQuestion, items: readonly PlanItem[]): readonly string[] {
  let purse = 0;
  let received = 0;
  for (let year = 1; year <= question.years; year++) {
    const money = question.budget[year - 1] ?? 0;
    received = question.carryOver ? received + money : money;
    purse = question.carryOver ? purse + money : money;
    for (const item of items) {
      if (item.year === year) purse -= candidateAt(question, item.candidate).cost;
    }
    if (purse < -RELATIVE * received) return [`year ${year} is overspent by ${-purse}`];
  }
  return [];
}

/** Present value [money] of a plan by its yearly cash: every year's end discounted once, from the last year back. */
export function cashValue(question: PlanQuestion, items: readonly PlanItem[]): number {
  const { years, discountRate } = question;
  const left = items.reduce((sum, { candidate, year }) => {
    const { cost, lifeYears } = candidateAt(question, candidate);
    const age = years + 1 - year;
    return age >= lifeYears ? sum : sum + cost - (cost * age) / lifeYears;
  }, 0);
  let value = left;
  for (let year = years; year >= 1; year--) {
    for (const item of items) {
      if (item.year <= year) value += candidateAt(question, item.candidate).yearlySaving;
    }
    value /= 1 + discountRate;
    for (const item of items) {
      if (item.year === year) value -= candidateAt(question, item.candidate).cost;
    }
  }
  return value;
}
