/** The valve in the common discharge that brings pumps back to their greatest flow. */
import { settingsGrid, speedRatio } from '../independent/speed.ts';
import { density } from '../independent/water.ts';
import { broken } from './conditions.ts';
import { type Duty, dutyAt } from './duty.ts';
import type { Prepared } from './selection.ts';

export interface Throttle {
  /** m, lost in the valve. */
  readonly head: number;
  readonly kv: number;
  readonly cv: number;
  readonly duty: Duty;
}

const G = 9.80665;
/** Cv over Kv, IEC 60534-2-1. */
const CV = 1.15609923;

/** Kv [m3/h at 1 bar of water of 1000 kg/m3] that loses a head [m] at a flow [m3/s]. */
export const kvOf = (flow: number, head: number): number =>
  (flow * 3600) / Math.sqrt((G * head * 1000) / 1e5);

/** At the smallest setting where the valve takes a head and every other condition holds. */
export function throttleFor({ question, judge, served }: Prepared): Throttle | undefined {
  const { pump, count, loop } = question;
  const most = pump.flowLimits?.max;
  if (most === undefined) return undefined;
  for (const setting of settingsGrid(pump.settings)) {
    const ratio = speedRatio(pump, setting);
    const flow = count * ratio * most;
    const pumpHead = ratio ** 2 * judge.fitted.head.at(most);
    const head = pumpHead - served.head(flow);
    if (head < 0) continue;
    const running = { fitted: judge.fitted, count, setting };
    const duty = dutyAt(served, running, density(loop.water), { flow, head: pumpHead, deadHead: false });
    if (broken(judge, duty).some((reason) => reason !== 'pump-above-maximum')) continue;
    const kv = kvOf(flow, head);
    return { head, kv, cv: CV * kv, duty };
  }
  return undefined;
}
