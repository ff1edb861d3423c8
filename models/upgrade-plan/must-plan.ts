/** Places the must-dos of a plan within the budget, or finds those that contradict one another. */
import { yearsOf } from './choices.ts';
import { firstOverspent, isWithin, roomIn } from './spending.ts';
import { candidateAt, type PlanItem, type PlanQuestion } from './upgrade.ts';

export interface Contradiction {
  readonly code: 'contradictory-musts';
  readonly why: 'group' | 'years' | 'budget';
  /** Places of the candidates that cannot all be made [-]. */
  readonly candidates: readonly number[];
  /** By which the budget is not enough [years]; null where another rule prevents it, or no one year decides. */
  readonly year: number | null;
}

const mustsOf = ({ candidates }: PlanQuestion): readonly number[] =>
  candidates.flatMap(({ must }, place) => (must === true ? [place] : []));

/** Musts that no budget could help: two of one group, or one whose years lie outside the plan. */
export function ruledOutMusts(question: PlanQuestion): Contradiction | null {
  const byGroup = new Map<string, number[]>();
  for (const place of mustsOf(question)) {
    const upgrade = candidateAt(question, place);
    const { first, last } = yearsOf(upgrade, question);
    if (first > last) return { code: 'contradictory-musts', why: 'years', candidates: [place], year: null };
    if (upgrade.group === undefined) continue;
    const others = byGroup.get(upgrade.group) ?? [];
    byGroup.set(upgrade.group, [...others, place]);
  }
  for (const candidates of byGroup.values()) {
    if (candidates.length > 1) return { code: 'contradictory-musts', why: 'group', candidates, year: null };
  }
  return null;
}

/** The latest year of each must: where money carries over, no other years spend less by any year. */
function latest(question: PlanQuestion): readonly PlanItem[] {
  return mustsOf(question).map((candidate) => ({
    candidate,
    year: yearsOf(candidateAt(question, candidate), question).last,
  }));
}

/** Where money carries over: the musts that must be paid for by a year whose budget does not reach; null where all reaches. */
export function overspentMusts(question: PlanQuestion): Contradiction | null {
  const items = latest(question);
  const year = firstOverspent(question, items);
  if (year === null) return null;
  const candidates = items.filter((item) => item.year <= year).map(({ candidate }) => candidate);
  return { code: 'contradictory-musts', why: 'budget', candidates, year };
}

/** All musts in years that the budget allows. Null where money does not carry over and none were found by placing those of the highest cost first. */
export function placedMusts(question: PlanQuestion): readonly PlanItem[] | null {
  if (question.carryOver) return latest(question);
  let items: readonly PlanItem[] = [];
  const highestCostFirst = mustsOf(question).toSorted(
    (a, b) => candidateAt(question, b).cost - candidateAt(question, a).cost,
  );
  for (const candidate of highestCostFirst) {
    const upgrade = candidateAt(question, candidate);
    const { first, last } = yearsOf(upgrade, question);
    const room = roomIn(question, items);
    let found: number | null = null;
    for (let year = first; year <= last && found === null; year++) {
      if (isWithin(upgrade.cost, room[year - 1] ?? 0)) found = year;
    }
    if (found === null) return null;
    items = [...items, { candidate, year: found }];
  }
  return items;
}

/**
 * Where money does not carry over and all musts cannot be paid: few musts, by their places [-], that cannot all be,
 * found by leaving out one after the other as long as the rest still cannot.
 *
 * @param fits whether those alone can be made, null where it was not found out.
 */
export function conflictingMusts(
  question: PlanQuestion,
  fits: (musts: readonly number[]) => boolean | null,
): Contradiction {
  let conflict = mustsOf(question);
  for (const place of conflict.slice(0, TRIED_MOST)) {
    const rest = conflict.filter((one) => one !== place);
    if (fits(rest) === false) conflict = rest;
  }
  return { code: 'contradictory-musts', why: 'budget', candidates: conflict, year: null };
}

/** Each trial is a program solved; beyond these, more musts are named than clash. */
const TRIED_MOST = 50;
