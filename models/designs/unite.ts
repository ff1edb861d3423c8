/** The frontier of several alternatives: for each head the cheapest of them all. */
import { figureAt, placeIn } from './column-at.ts';
import type { Frontier } from './frontier.ts';
import { emptied, isCheaper, type PointColumns, pointColumns } from './point-columns.ts';
import type { PointBudget } from './thin.ts';
import type { ChosenSize, Trace } from './trace.ts';

/** A frontier with something put before it: the head [m] that this loses, and its cost. */
export interface Alternative {
  readonly frontier: Frontier;
  readonly head: number;
  readonly cost: number;
  readonly size: ChosenSize | null;
}

/** What frontiers are made within: points above `headLimit` [m] serve nothing, and columns are used again and again. */
export interface Keeping {
  readonly headLimit: number;
  readonly budget: PointBudget;
  readonly columns: readonly [PointColumns, PointColumns];
}

/** What frontiers are made within, with columns of its own. */
export const keepingFor = (limits: Pick<Keeping, 'headLimit' | 'budget'>): Keeping => ({
  ...limits,
  columns: [pointColumns(), pointColumns()],
});

/**
 * Every point of every alternative, shifted by its head and cost; of these the ones that no other undercuts.
 * Points above `headLimit` [m] are dropped, but for the one of the least head. The alternatives are merged one after another,
 * so that the work grows with the sum of their points times the points kept.
 */
export function unite(
  alternatives: readonly Alternative[],
  { headLimit, budget, columns }: Keeping,
): Frontier {
  let [kept, merged] = columns;
  let slack = 0;
  emptied(kept, 0);
  for (const [part, alternative] of alternatives.entries()) {
    merge(kept, { ...alternative, part, headLimit }, merged);
    [kept, merged] = [merged, kept];
    slack = Math.max(slack, alternative.frontier.slack);
  }
  slack += budget.thin(kept);
  const { size } = kept;
  return {
    heads: kept.heads.slice(0, size),
    costs: kept.costs.slice(0, size),
    slack,
    trace: traceOf(alternatives, kept.part.slice(0, size), kept.from.slice(0, size)),
  };
}

/** Both lists by rising head into a third, each point only if it is cheaper than the one before. */
function merge(
  kept: PointColumns,
  {
    frontier,
    head,
    cost,
    part,
    headLimit,
  }: Alternative & { readonly part: number; readonly headLimit: number },
  into: PointColumns,
): void {
  const { heads, costs } = frontier;
  const total = kept.size + heads.length;
  emptied(into, total);
  let old = 0;
  let added = 0;
  while (old + added < total) {
    const oldHead = old < kept.size ? figureAt(kept.heads, old) : Number.POSITIVE_INFINITY;
    const addedHead = added < heads.length ? figureAt(heads, added) + head : Number.POSITIVE_INFINITY;
    const isOld =
      added >= heads.length ||
      (old < kept.size &&
        (oldHead < addedHead ||
          (oldHead === addedHead && figureAt(kept.costs, old) <= figureAt(costs, added) + cost)));
    const pointHead = isOld ? oldHead : addedHead;
    const pointCost = isOld ? figureAt(kept.costs, old) : figureAt(costs, added) + cost;
    if (into.size > 0 && pointHead > headLimit) return;
    if (isCheaper(into, pointCost)) {
      into.heads[into.size] = pointHead;
      into.costs[into.size] = pointCost;
      into.part[into.size] = isOld ? placeIn(kept.part, old) : part;
      into.from[into.size] = isOld ? placeIn(kept.from, old) : added;
      into.size += 1;
    }
    if (isOld) old += 1;
    else added += 1;
  }
}

function traceOf(alternatives: readonly Alternative[], part: Int32Array, from: Int32Array): Trace {
  const parts = alternatives.map(({ frontier: { trace }, size }) => ({ trace, size }));
  return {
    behind(index) {
      const origin = parts[placeIn(part, index)];
      if (origin === undefined) throw new Error(`invariant: point ${index} has no origin`);
      return [{ ...origin, index: placeIn(from, index) }];
    },
  };
}
