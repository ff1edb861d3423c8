/** What each outlet of a loop must get, a stated reach included. */
import type { Outlet } from '../../../models/loop/loop.ts';

/** A tree that ends in outlets, each with the bore [m] of its last pipe. */
interface OutletTree {
  readonly children: readonly OutletTree[];
  readonly end?: { readonly outlet: Outlet; readonly bore: number | undefined } | undefined;
}

export interface Need {
  readonly name: string;
  readonly required: number | undefined;
  readonly maximum: number | undefined;
}

/** Flow [m3/s] of `count` free round jets that still move at `velocity` at `distance` (core to 6 diameters). */
function reachFlow(reach: { distance: number; velocity: number }, diameter: number, count: number): number {
  const each = ((Math.PI * diameter ** 2) / 4) * reach.velocity;
  return count * each * Math.max(1, reach.distance / (6 * diameter));
}

export function needsOf(tree: OutletTree): readonly Need[] {
  if (tree.end === undefined) return tree.children.flatMap(needsOf);
  const { outlet, bore } = tree.end;
  const diameter = outlet.nozzleDiameter ?? bore;
  const nozzles = outlet.nozzleDiameter === undefined ? 1 : (outlet.nozzleCount ?? 1);
  if (outlet.reach !== undefined && diameter === undefined) throw new Error('a reach needs a bore');
  const reach =
    outlet.reach === undefined ? undefined : reachFlow(outlet.reach, diameter ?? Number.NaN, nozzles);
  const required =
    reach === undefined
      ? outlet.requiredFlow
      : Math.max(reach, outlet.requiredFlow ?? Number.NEGATIVE_INFINITY);
  return [{ name: outlet.name, required, maximum: outlet.maximumFlow }];
}
