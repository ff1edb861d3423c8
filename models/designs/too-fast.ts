/** Finds a list whose every size is faster than the velocity limit. */
import type { DocumentPath } from '../loop/document-path.ts';
import { velocityIn } from '../network/velocity-in.ts';
import type { PlacedList } from './design-loop.ts';
import { placesOf, type Run } from './run-tree.ts';

/** Flow [m3/s]; `velocity` in its widest size, and the limit [m/s]. */
export interface TooFast {
  readonly path: DocumentPath;
  readonly flow: number;
  readonly velocity: number;
  readonly limit: number;
}

/** The first such list in the order of the loop, by a velocity limit [m/s]; null where each has a size that is slow enough. */
export function tooFastList(
  suction: Run,
  lists: readonly PlacedList[],
  limit: number | null,
): TooFast | null {
  if (limit === null) return null;
  for (const { flow, list, sizes } of placesOf(suction)) {
    const path = list === null ? undefined : lists[list]?.path;
    if (path === undefined || sizes.some(({ allowed }) => allowed)) continue;
    const widest = Math.max(...sizes.map(({ bore }) => bore));
    return { path, flow, velocity: velocityIn(widest, flow), limit };
  }
  return null;
}
