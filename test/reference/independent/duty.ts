/** Where pumps in parallel land on a system: the stable intersection of least flow, by a dense scan. */
import type { Pump } from '../../../models/pump/pump.ts';
import { powerAt } from '../independent-complementarity/power-at.ts';
import { choosePower, type PowerChoice } from '../independent-complementarity/power-choice.ts';
import { crossing, type Point } from './crossing.ts';
import type { OutletFlow, System } from './flows.ts';
import { chooseHeadCurve, type HeadCurve, headAtFullSpeed } from './head-curve.ts';
import { GRAVITY } from './losses.ts';
import { speedRatio } from './speed.ts';

export interface FittedPump {
  readonly pump: Pump;
  readonly curve: HeadCurve;
  readonly law: PowerChoice;
}

export function fitPump(pump: Pump): FittedPump | undefined {
  const curve = chooseHeadCurve(pump);
  return curve && { pump, curve, law: choosePower(pump) };
}

export interface Intersection {
  readonly flow: number;
  readonly head: number;
  readonly stable: boolean;
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
  readonly intersections: readonly Intersection[];
}

interface Running {
  readonly fitted: FittedPump;
  readonly count: number;
  readonly setting: number;
}

/** Cells of flow from nothing to the end of the full-speed curve, the same at every setting. */
const CELLS = 128;

/** Head [m] of `count` equal pumps side by side at their total flow. */
export function pumpHead({ fitted, count, setting }: Running, flow: number): number {
  const ratio = speedRatio(fitted.pump, setting);
  return ratio ** 2 * headAtFullSpeed(fitted.curve, flow / count / ratio);
}

/** Flow at full speed past which a single pump's head is negative, found by doubling. */
function endOfCurve(curve: HeadCurve): number {
  let flow = curve.scale;
  for (let step = 0; step < 60 && headAtFullSpeed(curve, flow) > 0; step += 1) flow *= 1.25;
  return flow;
}

/** Every crossing of the pump's curve and the system's, in order of flow. */
export function intersections(system: System, running: Running): readonly Intersection[] {
  const excess = (flow: number): number => pumpHead(running, flow) - system.head(flow);
  const ratio = speedRatio(running.fitted.pump, running.setting);
  const width = (endOfCurve(running.fitted.curve) * running.count) / CELLS;
  const cells = Math.ceil(ratio * CELLS) + 1;
  const found: Intersection[] = [];
  let last: Point = [0, excess(0)];
  for (let cell = 1; cell <= cells; cell += 1) {
    const flow = width * cell;
    const next: Point = [flow, excess(flow)];
    if (next[1] > 0 !== last[1] > 0) {
      const at = crossing(excess, last, next);
      found.push({ flow: at, head: system.head(at), stable: last[1] > 0 });
    }
    last = next;
  }
  return found;
}

/** The duty at a setting; `density` [kg/m3] of the loop's water enters the efficiency only. */
export function dutyOf(system: System, running: Running, density: number): Duty {
  const { fitted, count, setting } = running;
  const ratio = speedRatio(fitted.pump, setting);
  const shutoff = pumpHead(running, 0);
  const deadHead = shutoff <= system.head(0);
  const all = intersections(system, running);
  const first = deadHead ? undefined : all.find((intersection) => intersection.stable);
  if (!deadHead && first === undefined) throw new Error('the pump meets the system nowhere');
  const { flow, head } = first ?? { flow: 0, head: shutoff };
  const power = count * powerAt(fitted.law, { ratio, flow: flow / count });
  const efficiency = (density * GRAVITY * flow * head) / power;
  const outlets = system.outlets(flow);
  return { setting, ratio, flow, head, power, efficiency, deadHead, outlets, intersections: all };
}
