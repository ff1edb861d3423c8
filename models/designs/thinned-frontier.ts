/** A few points of a frontier, spread over all of it. */
import { at } from '../../curves/at.ts';
import { cheapestWithin, type Frontier } from './frontier.ts';

/** Required head [m] and the least cost of pipes that require no more. */
export interface FrontierPoint {
  readonly head: number;
  readonly cost: number;
}

/** Up to `most` points, 2 or more, evenly by their order, the least head and the least cost among them; none above `headLimit` [m] but the first. */
export function thinnedFrontier(
  frontier: Frontier,
  { most, headLimit }: { readonly most: number; readonly headLimit: number },
): readonly FrontierPoint[] {
  const { heads, costs } = frontier;
  const size = heads.length === 0 ? 0 : Math.max(1, cheapestWithin(frontier, headLimit) + 1);
  const count = Math.min(size, most);
  return Array.from({ length: count }, (_, place) => {
    const index = count === size ? place : Math.round((place * (size - 1)) / (count - 1));
    return { head: at(heads, index), cost: at(costs, index) };
  });
}
