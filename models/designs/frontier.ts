/** The least costs of pipework against the head that it requires. */
import { figureAt } from './column-at.ts';
import type { Trace } from './trace.ts';

/**
 * Points by rising head [m] and strictly falling cost: at each head the cheapest pipework beyond a place that requires no more
 * head there. A head of minus infinity is that of pipework without flow.
 */
export interface Frontier {
  readonly heads: Float64Array;
  readonly costs: Float64Array;
  /** What any pipework may cost less than the point at or below its head: 0 unless points were thinned out. */
  readonly slack: number;
  /** Where each point comes from. */
  readonly trace: Trace;
}

/** Frontiers by the bore [m] of the first pipe beyond a place; null for none, and for all where that bore is of no account. */
export type ByFirstBore = ReadonlyMap<number | null, Frontier>;

/** Place of the cheapest point whose head is at or below `head` [m], by bisection; -1 where there is none. */
export function cheapestWithin({ heads }: Pick<Frontier, 'heads'>, head: number): number {
  let low = -1;
  let high = heads.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (figureAt(heads, middle) <= head) low = middle;
    else high = middle;
  }
  return low;
}

const END: Trace = { behind: () => [] };

/** One point of a head [m] that nothing lies behind. */
export const singlePoint = (head: number): Frontier => ({
  heads: Float64Array.of(head),
  costs: Float64Array.of(0),
  slack: 0,
  trace: END,
});

/** No pipework at all. */
export const noPoint: Frontier = {
  heads: new Float64Array(0),
  costs: new Float64Array(0),
  slack: 0,
  trace: END,
};
