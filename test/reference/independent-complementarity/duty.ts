/** Where pumps in parallel meet a system: the stable intersection of least flow, by a dense scan. */

import type { ExtendedPump } from '../../random/extended-loop.ts';
import { crossing, type Point } from '../independent/crossing.ts';
import type { OutletFlow } from '../independent/flows.ts';
import { GRAVITY } from '../independent/losses.ts';
import { speedRatio } from '../independent/speed.ts';
import type { System } from './flows.ts';
import { type HeadLaw, headLaw } from './head-law.ts';
import { powerAt } from './power-at.ts';
import { choosePower, type PowerChoice } from './power-choice.ts';

export interface FittedPump {
  readonly pump: ExtendedPump;
  readonly head: HeadLaw;
  readonly power: PowerChoice;
}

export function fitPump(pump: ExtendedPump): FittedPump {
  const head = headLaw(pump);
  if (head === undefined) throw new Error('the points make no head curve');
  return { pump, head, power: choosePower(pump) };
}

/** Equal pumps side by side at a setting. */
export interface Running {
  readonly fitted: FittedPump;
  readonly count: number;
  readonly setting: number;
}

export interface Duty {
  readonly setting: number;
  readonly ratio: number;
  readonly flow: number;
  readonly head: number;
  readonly power: number;
  readonly efficiency: number;
  readonly deadHead: boolean;
  readonly outlets: readonly OutletFlow[];
}

/** Where a system's head and outlets come from. */
export type Served = Pick<System, 'head' | 'outlets'>;

/** Cells of flow from nothing to the end of the full-speed curve, the same at every setting. */
const CELLS = 128;
/** Cells past that end in which a loop that runs by gravity meets the pump's resistance. */
const CELLS_BEYOND = 100 * CELLS;

export function pumpHead({ fitted, count, setting }: Running, flow: number): number {
  const ratio = speedRatio(fitted.pump, setting);
  return ratio ** 2 * fitted.head.at(flow / count / ratio);
}

/** Flow at full speed past which a single pump's head is negative, found by growing steps. */
function endOfCurve({ at, largestFlow }: HeadLaw): number {
  let flow = largestFlow;
  for (let step = 0; step < 60 && at(flow) > 0; step += 1) flow *= 1.25;
  return flow;
}

/** The least flow at which the pump's head falls below what the system needs. */
export function firstStableFlow(served: Served, running: Running): number {
  const excess = (flow: number): number => pumpHead(running, flow) - served.head(flow);
  const width = (endOfCurve(running.fitted.head) * running.count) / CELLS;
  let last: Point = [0, excess(0)];
  for (let cell = 1; cell <= CELLS_BEYOND; cell += 1) {
    const next: Point = [width * cell, excess(width * cell)];
    if (last[1] > 0 && next[1] <= 0) return crossing(excess, last, next);
    last = next;
  }
  throw new Error('the pump meets the system nowhere');
}

interface DutyPlace {
  readonly flow: number;
  readonly head: number;
  readonly deadHead: boolean;
}

/** Figures of pumps that run at a flow and head; `density` [kg/m3] enters the efficiency only. */
export function dutyAt(served: Served, running: Running, density: number, place: DutyPlace): Duty {
  const { fitted, count, setting } = running;
  const ratio = speedRatio(fitted.pump, setting);
  const { flow, head } = place;
  const power = count * powerAt(fitted.power, { ratio, flow: flow / count });
  const efficiency = (density * GRAVITY * flow * head) / power;
  return { setting, ratio, ...place, power, efficiency, outlets: served.outlets(flow) };
}

export function dutyOf(served: Served, running: Running, density: number): Duty {
  const shutoff = pumpHead(running, 0);
  if (shutoff <= served.head(0))
    return dutyAt(served, running, density, { flow: 0, head: shutoff, deadHead: true });
  const flow = firstStableFlow(served, running);
  return dutyAt(served, running, density, { flow, head: served.head(flow), deadHead: false });
}
