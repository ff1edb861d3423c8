/** Makes a plan better step by step, until no single upgrade can be added or moved to gain. */
import { type Choice, choicesOf } from './choices.ts';
import { isWithin, roomIn } from './spending.ts';
import { candidateAt, type PlanItem, type PlanQuestion } from './upgrade.ts';

/** Rounds through all candidates; each but the last gains something. */
const ROUNDS_MOST = 50;

/** Gains below this share of what is at stake are rounding. */
const GAIN_LEAST = 1e-12;

/**
 * The plan with what can be added to it, or moved within it to a year of more value. Where the rounds run out it is as good as
 * it has become.
 */
export function fillPlan(question: PlanQuestion, items: readonly PlanItem[]): readonly PlanItem[] {
  const order = byWorth(question);
  let plan = items;
  for (let round = 0; round < ROUNDS_MOST; round++) {
    const before = plan;
    for (const choices of order) plan = withBestYear(question, plan, choices);
    if (plan === before) break;
  }
  return plan;
}

/** The choices of each candidate, those first that gain the most for their money. */
function byWorth(question: PlanQuestion): readonly (readonly Choice[])[] {
  const worth = (choices: readonly Choice[]): number => {
    const best = choices.reduce((most, { value }) => Math.max(most, value), Number.NEGATIVE_INFINITY);
    const [first] = choices;
    return first === undefined ? best : best / candidateAt(question, first.candidate).cost;
  };
  return question.candidates
    .map((upgrade, candidate) => choicesOf(question, candidate, upgrade))
    .map((choices) => ({ choices, worth: worth(choices) }))
    .toSorted((a, b) => b.worth - a.worth)
    .map(({ choices }) => choices);
}

/** The same plan where the candidate of the choices cannot gain. */
function withBestYear(
  question: PlanQuestion,
  plan: readonly PlanItem[],
  choices: readonly Choice[],
): readonly PlanItem[] {
  const [first] = choices;
  if (first === undefined) return plan;
  const { candidate } = first;
  const upgrade = candidateAt(question, candidate);
  const others = plan.filter((item) => item.candidate !== candidate);
  const isExcluded =
    upgrade.group !== undefined &&
    others.some((item) => candidateAt(question, item.candidate).group === upgrade.group);
  if (isExcluded) return plan;
  const now = choices.find(({ year }) =>
    plan.some((item) => item.candidate === candidate && item.year === year),
  );
  const room = roomIn(question, others);
  const smallest = GAIN_LEAST * (upgrade.cost + Math.abs(upgrade.yearlySaving));
  let best: Choice | undefined;
  for (const choice of choices) {
    if (!isWithin(upgrade.cost, room[choice.year - 1] ?? 0)) continue;
    if (choice.value > (best ?? now ?? { value: 0 }).value + smallest) best = choice;
  }
  return best === undefined ? plan : [...others, { candidate, year: best.year }];
}
