/** Finds from the plan itself why it leaves a candidate out. */
import { type Choice, choicesOf } from './choices.ts';
import { budgetUpTo, isWithin, roomIn } from './spending.ts';
import { candidateAt, type PlanItem, type PlanQuestion } from './upgrade.ts';

/** Why the candidate at a place [-] is left out: values and money [money], years [years]. */
export type LeftOut = { readonly candidate: number } /** It may not be made in any year of the plan. */ & (
  | { readonly reason: 'outside-plan' }
  /** `value`: what it would be worth in its best year, at most 0. */
  | { readonly reason: 'does-not-pay'; readonly value: number; readonly year: number }
  /** `most`: what the budget reaches in the best of the years in which it would pay. */
  | { readonly reason: 'over-budget'; readonly most: number; readonly year: number }
  /** `chosen`: the one of its group that is made; `fits`: whether it could be made in its place. */
  | { readonly reason: 'group'; readonly chosen: number; readonly fits: boolean; readonly value: number }
  /** `missing`: the least money more by which it could be made in addition to the plan. */
  | { readonly reason: 'no-room'; readonly missing: number; readonly year: number }
);

/** By the place of the candidate; no candidate of the plan could be added to it as it is. */
export function leftOutOf(question: PlanQuestion, items: readonly PlanItem[]): readonly LeftOut[] {
  const made = new Set(items.map(({ candidate }) => candidate));
  return question.candidates.flatMap((_, candidate) =>
    made.has(candidate) ? [] : [reasonOf(question, items, candidate)],
  );
}

function reasonOf(question: PlanQuestion, items: readonly PlanItem[], candidate: number): LeftOut {
  const upgrade = candidateAt(question, candidate);
  const { cost, group } = upgrade;
  const choices = choicesOf(question, candidate, upgrade);
  const best = highest(choices, ({ value }) => value);
  if (best === null) return { candidate, reason: 'outside-plan' };
  if (best.value <= 0) return { candidate, reason: 'does-not-pay', value: best.value, year: best.year };
  const paying = choices.filter(({ value }) => value > 0);
  const reach = ({ year }: Choice): number => budgetUpTo(question, year);
  if (!paying.some((choice) => isWithin(cost, reach(choice)))) {
    const richest = highest(paying, reach) ?? best;
    return { candidate, reason: 'over-budget', most: reach(richest), year: richest.year };
  }
  const rival = items.find(
    (item) => group !== undefined && candidateAt(question, item.candidate).group === group,
  );
  if (rival !== undefined) {
    const room = roomIn(
      question,
      items.filter((item) => item !== rival),
    );
    const fitting = paying.filter(({ year }) => isWithin(cost, room[year - 1] ?? 0));
    const value = highest(fitting, (choice) => choice.value)?.value ?? best.value;
    return { candidate, reason: 'group', chosen: rival.candidate, fits: fitting.length > 0, value };
  }
  const room = roomIn(question, items);
  const missing = ({ year }: Choice): number => cost - (room[year - 1] ?? 0);
  const nearest = highest(paying, (choice) => -missing(choice)) ?? best;
  return { candidate, reason: 'no-room', missing: missing(nearest), year: nearest.year };
}

/** The earliest of the choices with the highest figure; null without any. */
function highest(choices: readonly Choice[], figureOf: (choice: Choice) => number): Choice | null {
  let best: Choice | null = null;
  for (const choice of choices) {
    if (best === null || figureOf(choice) > figureOf(best)) best = choice;
  }
  return best;
}
