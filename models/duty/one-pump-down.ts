/** Finds what a loop still receives when one of its parallel pumps stops. */
import { findRoot } from '../../curves/find-root.ts';
import { intersections } from '../../curves/intersections.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { type SampledSystem, sampledSystem } from '../network/sampled-system.ts';
import { SolveFailure } from '../network/solve-failure.ts';
import { idlePumpResistance } from '../pump/idle-pump.ts';
import { type PumpAtSetting, pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { dutyPoint } from './duty-point.ts';

export interface OnePumpDown {
  readonly checkValves: boolean;
  /** What reaches the outlets together [m3/s]. */
  readonly flow: number;
  /** What runs back through the stopped pump [m3/s]. */
  readonly backflow: number;
  /** Of the pumps that still run [W]. */
  readonly power: number;
  /** By outlet [m3/s]. */
  readonly outletFlows: readonly number[];
}

/** Whether each pump of a loop has a check valve: as its installed pump states, else it is taken to. */
export const hasCheckValves = ({ entered: loop }: CompiledLoop): boolean =>
  loop.installed?.checkValves ?? true;

/**
 * The duty of the others at the same setting when one of several pumps stops; null for a single pump.
 *
 * With check valves: that of count - 1 pumps. Without, the stopped pump is a way back in parallel with the loop that
 * loses H = k Q^2, `idlePumpResistance`, at the head of the others; its stable crossing of least flow.
 * @param at setting [% of full]; count [-] of the pumps, the stopped one included.
 * @returns flows [m3/s], power [W].
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function onePumpDown(
  loop: CompiledLoop,
  pump: PumpModel,
  { setting, count }: { readonly setting: number; readonly count: number },
): OnePumpDown | null {
  if (count < 2 || !loop.system.passesWater) return null;
  const running = pumpAtSetting(pump, { setting, count: count - 1 });
  return hasCheckValves(loop) ? behindValves(loop, running) : besideIdlePump(loop, running, pump);
}

function behindValves(loop: CompiledLoop, running: PumpAtSetting): OnePumpDown {
  const { flow, power, outletFlows } = dutyPoint(loop, running);
  return { checkValves: true, flow, backflow: 0, power, outletFlows };
}

function besideIdlePump({ system }: CompiledLoop, running: PumpAtSetting, { fit }: PumpModel): OnePumpDown {
  const samples = sampledSystem(system);
  const resistance = idlePumpResistance(fit);
  const found = intersections({
    ...running,
    pumpHead: running.headAt,
    systemHead: (flow) => headBesideIdle(samples, resistance, flow),
  });
  if (!found.ok) throw new SolveFailure(found.failure);
  const total = found.value.find(({ stable }) => stable)?.flow ?? 0;
  const flow = flowPast(samples, resistance, total);
  const { outletFlows } = system.stateAt(flow, samples.near(flow));
  return { checkValves: false, flow, backflow: total - flow, power: running.powerAt(total), outletFlows };
}

/** Flow [m3/s] that a head [m] drives back through the idle pump. */
const backflowAt = (head: number, resistance: number): number => Math.sqrt(Math.max(0, head) / resistance);

/** What is left for the loop of the running pumps' flow [m3/s]: the rest runs back at the head that the loop then needs. */
function flowPast(samples: SampledSystem, resistance: number, total: number): number {
  const left = (flow: number) => flow + backflowAt(samples.headAt(flow).head, resistance) - total;
  const atRest = left(0);
  if (atRest >= 0) return 0;
  const root = findRoot({
    evaluate: (flow) => ({ value: left(flow) }),
    low: 0,
    high: total,
    lowValue: atRest,
  });
  if (!root.ok) throw new SolveFailure(root.failure);
  return root.value.root;
}

/** Head [m] and slope of loop and idle pump side by side, against the flow of the running pumps. */
function headBesideIdle(
  samples: SampledSystem,
  resistance: number,
  total: number,
): { readonly head: number; readonly slope: number } {
  const flow = flowPast(samples, resistance, total);
  // All of it runs back while that takes less head than the loop needs at rest.
  if (flow === 0) return { head: resistance * total ** 2, slope: 2 * resistance * total };
  const { head, slope } = samples.headAt(flow);
  const back = backflowAt(head, resistance);
  return { head, slope: back === 0 ? slope : slope / (1 + slope / (2 * resistance * back)) };
}
