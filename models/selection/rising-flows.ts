/** Decides which flows rise with the setting of a pump. */

import { at } from '../../curves/at.ts';
import type { DutyFigures } from '../duty/duty-point.ts';
import type { SampledLoop } from '../duty/sampled-loop.ts';

/** What rises with the setting. */
export interface Rises {
  /** The total flow, and the flow of every outlet with it. */
  readonly flow: boolean;
  /** Q/r: it does where the needed head rises no faster than the square of the flow. */
  readonly 'flow-at-full-speed': boolean;
}

export const NOTHING_RISES: Rises = { flow: false, 'flow-at-full-speed': false };

/**
 * What rises with the setting of a pump, over the settings of its grid by their places [-].
 *
 * For a pump whose head falls with flow, the total flow rises with the setting. The outlets rise with it where the
 * loop is known to do so, or where they do at every sample around the flows of the grid and around the required flow,
 * and at the first setting that moves water are no lower than at those that move none. Q/r rises, since H0(Q/r) =
 * Hs(Q)/r^2, where every sample around the flows of the grid has Q Hs'(Q) <= 2 Hs(Q).
 */
export function risesOf({
  sampled: { loop, samples, atRest, required },
  dutyAt,
  firstMoving,
  last,
}: {
  readonly sampled: SampledLoop;
  readonly dutyAt: (index: number) => DutyFigures;
  /** Place of the first setting whose shutoff head exceeds the head needed at no flow; beyond `last` where none does. */
  readonly firstMoving: number;
  readonly last: number;
}): Rises {
  const known = { flow: loop.system.outletsRise, 'flow-at-full-speed': false };
  if (atRest === null || firstMoving > last) return known;
  const lowest = dutyAt(firstMoving);
  const highest = dutyAt(last);
  if (lowest.deadHead || highest.deadHead) return known;
  const ofGrid = { from: lowest.flow, to: highest.flow };
  const falls = firstMoving > 0 && atRest.outletFlows.some((flow, i) => at(lowest.outletFlows, i) < flow);
  const withRequired = { from: lowest.flow, to: Math.max(highest.flow, required?.flow ?? 0) };
  return {
    flow: known.flow || (!falls && samples.outletsRise(withRequired)),
    'flow-at-full-speed': samples.risesAtMostSquare(ofGrid),
  };
}
