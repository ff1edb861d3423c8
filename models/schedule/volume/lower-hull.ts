/** The lower convex hull of the settings that an hour may run at: flow against cost. */

export interface HullPoint {
  /** Place of the setting in the list it came from. */
  readonly index: number;
  readonly flow: number;
  readonly cost: number;
}

/**
 * Points on the lower convex hull by rising flow, from the cheapest on: the cheapest of the points moves more water than any
 * that costs the same, and dearer points of less flow are of no use to anybody who needs at least a volume.
 *
 * Source: monotone chain, A. M. Andrew (1979), Another efficient algorithm for convex hulls in two dimensions.
 */
export function lowerHull(points: readonly HullPoint[]): readonly HullPoint[] {
  const ordered = points.toSorted((a, b) => a.flow - b.flow || a.cost - b.cost);
  const hull: HullPoint[] = [];
  for (const point of ordered) {
    if (hull.at(-1)?.flow === point.flow) continue;
    while (hull.length >= 2 && !turnsUp(hull.at(-2), hull.at(-1), point)) hull.pop();
    hull.push(point);
  }
  let cheapest = 0;
  for (const [place, { cost }] of hull.entries()) {
    if (cost <= (hull[cheapest]?.cost ?? cost)) cheapest = place;
  }
  return hull.slice(cheapest);
}

function turnsUp(a: HullPoint | undefined, b: HullPoint | undefined, c: HullPoint): boolean {
  if (a === undefined || b === undefined) return true;
  return (b.cost - a.cost) * (c.flow - b.flow) < (c.cost - b.cost) * (b.flow - a.flow);
}
