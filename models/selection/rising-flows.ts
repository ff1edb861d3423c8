/** Whether the flow to every outlet rises with the setting of a pump. */
import type { DutyFigures } from '../duty-point.ts';
import { at } from '../network/linear-tree.ts';
import type { SharedLoop } from './shared-loop.ts';

/**
 * For a pump whose head falls with flow, the total flow rises with the setting. The outlets rise with it where the loop is
 * known to do so, or where they do at every sample around the flows of the grid and around the required flow, and at the
 * first setting that moves water are no lower than at those that move none.
 */
export function flowsRise({
  shared: { loop, samples, atRest, required },
  dutyAt,
  firstMoving,
  last,
}: {
  readonly shared: SharedLoop;
  readonly dutyAt: (index: number) => DutyFigures;
  /** Place of the first setting whose shutoff head exceeds the head needed at no flow; beyond `last` where none does. */
  readonly firstMoving: number;
  readonly last: number;
}): boolean {
  if (loop.system.outletsRise) return true;
  if (atRest === null || firstMoving > last) return false;
  const lowest = dutyAt(firstMoving);
  const highest = dutyAt(last);
  if (lowest.deadHead || highest.deadHead) return false;
  if (firstMoving > 0 && atRest.outletFlows.some((flow, i) => at(lowest.outletFlows, i) < flow)) return false;
  return samples.outletsRise({ from: lowest.flow, to: Math.max(highest.flow, required?.flow ?? 0) });
}
