/** The frontier of branches that leave one place: each gets the same head, and their costs add up. */
import { figureAt, placeIn } from './column-at.ts';
import { cheapestWithin, type Frontier } from './frontier.ts';
import { emptied, type PointColumns } from './point-columns.ts';
import type { Trace } from './trace.ts';
import type { Keeping } from './unite.ts';

/**
 * At each head of any frontier, from the largest of their least heads up, the sum of their cheapest costs. They are added in
 * pairs and pairs of pairs, so that the places kept grow with the points times the logarithm of the number of branches.
 */
export function sumFrontiers(frontiers: readonly Frontier[], keeping: Keeping): Frontier {
  let level = frontiers;
  while (level.length > 1) {
    const next: Frontier[] = [];
    for (let place = 0; place < level.length; place += 2) {
      const [one, other] = level.slice(place, place + 2);
      if (one !== undefined) next.push(other === undefined ? one : sumOfTwo(one, other, keeping));
    }
    level = next;
  }
  const [sum] = level;
  if (sum === undefined) throw new Error('invariant: a split has branches');
  return sum;
}

function sumOfTwo(one: Frontier, other: Frontier, { headLimit, budget, columns: [sum] }: Keeping): Frontier {
  emptied(sum, one.heads.length + other.heads.length);
  if (one.heads.length > 0 && other.heads.length > 0) addUp(one, other, { sum, headLimit });
  const missed = budget.thin(sum);
  const { size } = sum;
  return {
    heads: sum.heads.slice(0, size),
    costs: sum.costs.slice(0, size),
    slack: one.slack + other.slack + missed,
    trace: bothOf(
      { trace: one.trace, places: sum.part.slice(0, size) },
      { trace: other.trace, places: sum.from.slice(0, size) },
    ),
  };
}

/** The columns `part` and `from` take the places in the one and in the other. */
function addUp(
  one: Frontier,
  other: Frontier,
  { sum, headLimit }: { readonly sum: PointColumns; readonly headLimit: number },
): void {
  let head = Math.max(figureAt(one.heads, 0), figureAt(other.heads, 0));
  let ofOne = cheapestWithin(one, head);
  let ofOther = cheapestWithin(other, head);
  for (;;) {
    sum.heads[sum.size] = head;
    sum.costs[sum.size] = figureAt(one.costs, ofOne) + figureAt(other.costs, ofOther);
    sum.part[sum.size] = ofOne;
    sum.from[sum.size] = ofOther;
    sum.size += 1;
    const nextOfOne = headAfter(one, ofOne);
    const nextOfOther = headAfter(other, ofOther);
    head = Math.min(nextOfOne, nextOfOther);
    if (head === Number.POSITIVE_INFINITY || head > headLimit) return;
    if (nextOfOne === head) ofOne += 1;
    if (nextOfOther === head) ofOther += 1;
  }
}

const headAfter = ({ heads }: Frontier, place: number): number =>
  place + 1 < heads.length ? figureAt(heads, place + 1) : Number.POSITIVE_INFINITY;

interface Summand {
  readonly trace: Trace;
  /** Of the point that each point of the sum takes. */
  readonly places: Int32Array;
}

const bothOf = (one: Summand, other: Summand): Trace => ({
  behind: (index) =>
    [one, other].map(({ trace, places }) => ({ trace, index: placeIn(places, index), size: null })),
});
