/** Groups points that lie next to each other in flow. */

interface Point {
  readonly flow: number;
  readonly head: number;
}

/** Points within this share of the largest flow from the first of their group are one place. */
const SAME_PLACE = 0.01;

/**
 * The mean flow [m3/s] and head [m] of each group, by rising flow: in the order of their flows, a point joins the group
 * while it lies within 1 % of the largest flow from the group's first. A group whose first lies at flow 0 stays at 0, so
 * that a shutoff head stays one.
 */
export function groupedByFlow(points: readonly Point[]): readonly Point[] {
  const sorted = points.toSorted((a, b) => a.flow - b.flow);
  const reach = SAME_PLACE * (sorted.at(-1)?.flow ?? 0);
  const groups: Point[][] = [];
  for (const point of sorted) {
    const group = groups.at(-1);
    const first = group?.[0];
    if (group !== undefined && first !== undefined && point.flow - first.flow <= reach) group.push(point);
    else groups.push([point]);
  }
  return groups.map((group) => {
    const flow = group[0]?.flow === 0 ? 0 : meanOf(group.map((point) => point.flow));
    return { flow, head: meanOf(group.map((point) => point.head)) };
  });
}

/** The arithmetic mean, in the unit of the values [any]. */
export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
