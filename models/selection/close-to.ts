/** Finds the candidates that are too close to the best to call. */
import type { Ranked } from './select.ts';

type Compared = Pick<Ranked, 'lifeCycleCost' | 'rankedBy'>;

/** What may as well be the best. */
export interface CloseToBest<One extends Compared> {
  /** In the order of the ranking; empty where the best is best at either end of what its power leaves open. */
  readonly closeTo: readonly One[];
  /** Whose power is to be measured, at the setting of its duty: the one that is known least; null where none is close. */
  readonly measure: One | null;
}

/**
 * The candidates of a ranking whose low end of what they are ranked by is not above the high end of the best.
 *
 * @param ranking cheapest first; `rankedBy` [money] or [kWh] of all of them alike.
 */
export function closeToBest<One extends Compared>(ranking: readonly One[]): CloseToBest<One> {
  const [best, ...others] = ranking;
  if (best === undefined) return { closeTo: [], measure: null };
  const isComparable = (one: One) => (one.lifeCycleCost === null) === (best.lifeCycleCost === null);
  const closeTo = others.filter((one) => isComparable(one) && one.rankedBy.low <= best.rankedBy.high);
  if (closeTo.length === 0) return { closeTo, measure: null };
  const width = ({ rankedBy: { low, high } }: One) => high - low;
  const measure = closeTo.reduce((widest, one) => (width(one) > width(widest) ? one : widest), best);
  return { closeTo, measure };
}
