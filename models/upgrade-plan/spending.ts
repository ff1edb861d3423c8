/** Adds up what a plan spends each year, against its budget. */
import { candidateAt, type PlanItem, type PlanQuestion } from './upgrade.ts';

export interface YearSpending {
  /** From 1 [years]. */
  readonly year: number;
  /** New in this year [money]. */
  readonly budget: number;
  /** With what earlier years left [money]. */
  readonly available: number;
  /** [money] */
  readonly spent: number;
  /** Handed on to the next year [money]; 0 without carry-over. */
  readonly carried: number;
}

/** Sums of money count as equal within this share: they are rounded as they are added. */
const ROUNDING = 1e-9;

/** The budget of a year [money]. */
export const budgetOf = ({ budget }: Pick<PlanQuestion, 'budget'>, year: number): number =>
  budget[year - 1] ?? 0;

/** Most [money] that can have been spent in or up to a year [years], by what it is counted against. */
export function budgetUpTo(question: Pick<PlanQuestion, 'budget' | 'carryOver'>, year: number): number {
  if (!question.carryOver) return budgetOf(question, year);
  let sum = 0;
  for (let each = 1; each <= year; each++) sum += budgetOf(question, each);
  return sum;
}

/** Most [money] that a sum of costs may be within a budget [money], rounding allowed. */
export const mostWithin = (budget: number): number => budget + ROUNDING * budget;

/** Whether a sum of costs [money] is within a budget [money], rounding allowed. */
export const isWithin = (spent: number, budget: number): boolean => spent <= mostWithin(budget);

/** What a plan spends each year [money], against its budget. */
export function spendingOf(question: PlanQuestion, items: readonly PlanItem[]): readonly YearSpending[] {
  const spending: YearSpending[] = [];
  let carried = 0;
  for (let year = 1; year <= question.years; year++) {
    const budget = budgetOf(question, year);
    const spent = items
      .filter((item) => item.year === year)
      .reduce((sum, { candidate }) => sum + candidateAt(question, candidate).cost, 0);
    const available = budget + carried;
    carried = question.carryOver ? Math.max(0, available - spent) : 0;
    spending.push({ year, budget, available, spent, carried });
  }
  return spending;
}

/** The first year [years] in which a plan spends more than it may; null where it never does. */
export function firstOverspent(question: PlanQuestion, items: readonly PlanItem[]): number | null {
  let spentBefore = 0;
  for (const { year, spent } of spendingOf(question, items)) {
    const counted = question.carryOver ? spentBefore + spent : spent;
    if (!isWithin(counted, budgetUpTo(question, year))) return year;
    spentBefore += spent;
  }
  return null;
}

/**
 * Money [money] that could be spent in each year in addition to a plan without taking it from what the plan buys; by
 * year - 1.
 */
export function roomIn(question: PlanQuestion, items: readonly PlanItem[]): readonly number[] {
  const spending = spendingOf(question, items);
  let spentSoFar = 0;
  const left = spending.map(({ year, spent }) => {
    spentSoFar += spent;
    return budgetUpTo(question, year) - (question.carryOver ? spentSoFar : spent);
  });
  if (!question.carryOver) return left;
  let least = Number.POSITIVE_INFINITY;
  return left
    .toReversed()
    .map((room) => {
      least = Math.min(least, room);
      return least;
    })
    .toReversed();
}
