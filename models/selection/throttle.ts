/** Finds the valve that brings pumps back to the greatest flow that they bear. */
import { cvOfKv, kvOfLoss } from '../components/flow-coefficient.ts';
import { type DutyFigures, dutyPoint, figuresAt } from '../duty/duty-point.ts';
import type { SampledLoop } from '../duty/sampled-loop.ts';
import { withCommonValve } from '../network/common-valve.ts';
import { type PumpAtSetting, pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import { type Criterion, holds } from './criterion.ts';
import { CLOSE, type SearchedEnd } from './grid-search.ts';

/** A valve that makes pumps feasible. */
export interface Throttle {
  /** Lost in the valve at the flow of the duty [m]. */
  readonly head: number;
  /** [m3/h at 1 bar] */
  readonly kv: number;
  /** [US gal/min at 1 psi] */
  readonly cv: number;
  /** Of the pumps with the valve in their common discharge. */
  readonly duty: DutyFigures;
}

interface Pumps {
  readonly pump: PumpModel;
  readonly count: number;
}

/** What the valve makes hold. */
const MET_BY_THE_VALVE = 'pump-above-maximum';

/**
 * A valve in the common discharge of pumps that run above their greatest flow at every setting, at the smallest setting
 * where it has a head to take: Qv = n r flowLimits.max, h = r^2 H0(Qv/(n r)) - Hsys(Qv), while every other criterion
 * holds at Qv and the outlet flows of Hsys(Qv). With a `worstCase` all criteria hold there too, with the same valve.
 * Null where no setting allows one. Throws `SolveFailure` where network or search reach a limit.
 */
export function throttleFor(
  { sampled, criteria }: Pick<SearchedEnd, 'sampled' | 'criteria'>,
  { pump, count }: Pumps,
  worstCase: SearchedEnd | undefined,
): Throttle | null {
  const { settings, flowLimits } = pump.entered;
  const most = flowLimits?.max;
  if (most === undefined || sampled.atRest === null) return null;
  for (let index = 0; index < gridSize(settings); index++) {
    const setting = settingAt(settings, index);
    const at = pumpAtSetting(pump, { setting, count });
    const flow = count * at.speedRatio * most;
    const found = throttledAt(sampled, criteria, { at, flow });
    if (found === null) continue;
    const { head, duty } = found;
    const pumpsAt = { pump, count, setting };
    if (worstCase !== undefined && !holdsInWorstCase(worstCase, pumpsAt, { head, flow })) continue;
    const kv = kvOfLoss({ head, flow });
    return { head, kv, cv: cvOfKv(kv), duty };
  }
  return null;
}

function throttledAt(
  { loop, samples }: SampledLoop,
  criteria: readonly Criterion[],
  { at, flow }: { readonly at: PumpAtSetting; readonly flow: number },
): Pick<Throttle, 'head' | 'duty'> | null {
  const given = at.headAt(flow).head;
  const others = criteria.filter(({ reason }) => reason !== MET_BY_THE_VALVE);
  const suctionLoss = loop.system.suctionLossAt(flow);
  const judge = (needed: number, outletFlows: readonly number[]) => {
    const duty = figuresAt(loop, at, { flow, head: given, suctionLoss, outletFlows });
    const head = given - needed;
    const clearance = Math.min(head / given, ...others.map((one) => one.judge(duty).clearance));
    return { duty, clearance, head };
  };
  const estimate = judge(samples.headAt(flow).head, samples.outletFlowsAt(flow));
  if (!(estimate.clearance > -CLOSE)) return null;
  const state = loop.system.stateAt(flow, samples.near(flow));
  const exact = judge(state.head, state.outletFlows);
  return exact.head > 0 && holds(exact) ? exact : null;
}

function holdsInWorstCase(
  { sampled, criteria, pumpAt = pumpAtSetting }: SearchedEnd,
  { pump, count, setting }: Pumps & { readonly setting: number },
  valve: { readonly head: number; readonly flow: number },
): boolean {
  const duty = dutyPoint(withCommonValve(sampled.loop, valve), pumpAt(pump, { setting, count }));
  return criteria.every((one) => holds(one.judge(duty)));
}
