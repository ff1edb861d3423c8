/** Whether a loop runs by gravity alone. */
import { crossing, type Point } from '../independent/crossing.ts';
import type { Need } from '../independent/requirements.ts';
import { isReversed, meetsNeeds } from './conditions.ts';
import type { Served } from './duty.ts';

const FIRST_STEP = 1e-5;
const DOUBLINGS = 60;

/** Flow [m3/s] at which a loop needs no pump; nothing where it needs one from the first drop on. */
export function gravityFlow({ head }: Pick<Served, 'head'>): number | undefined {
  let low: Point = [0, head(0)];
  if (low[1] >= 0) return undefined;
  for (let step = 0; step < DOUBLINGS; step += 1) {
    const flow = FIRST_STEP * 2 ** step;
    const high: Point = [flow, head(flow)];
    if (high[1] >= 0) return crossing(head, low, high);
    low = high;
  }
  throw new Error('the loop needs no head at any flow');
}

export function gravitySuffices(served: Served, needs: readonly Need[]): boolean {
  const flow = gravityFlow(served);
  if (flow === undefined) return false;
  const outlets = served.outlets(flow);
  const { least, most } = meetsNeeds(needs, outlets);
  return least && most && !isReversed(outlets);
}
