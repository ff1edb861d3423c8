/** Puts faults on a loop and its pump. */

import { quadraticLoss } from '../components/resistance.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { withMoreFriction } from '../network/more-friction.ts';
import type { Network, PlacedResistance } from '../network/network.ts';
import { pipeworkSystem } from '../network/pipework-system.ts';
import { calibratedFit } from '../pump/calibrated-fit.ts';
import type { Fault } from './metered-loop.ts';
import { type Predicted, predictedAt, type Station } from './predicted.ts';

/** Losses of clogs, as shares of the head needed at the flow that passes there: from 0.5 to over 55 % of the flow. */
const LOSSES: readonly number[] = Array.from({ length: 16 }, (_, i) => 0.01 * 1.8 ** i);
/** Clogs beyond this are not looked at. */
const MAGNITUDE_MOST = 0.6;
/** Share of the total below which no water passes a branch that could show a clog. */
const AT_REST = 1e-6;
/** Of other faults: between them shifts per magnitude go in straight lines. */
const MAGNITUDES = [0.02, 0.06, 0.12, 0.2, 0.28, 0.36, 0.46, 0.55] as const;
/** Head and friction that wear and a larger bore take, per unit of magnitude: about what takes that share of the flow. */
const PER_MAGNITUDE = 1.5;
/** Network solves of the clogs of all branches together, in branches solved: about a second. */
const SOLVED_MOST = 20_000;

export interface Faulted {
  readonly magnitude: number;
  readonly station: Station;
  readonly predicted: Predicted;
}

/** By rising magnitude, at a setting [%]; `entered` is what is predicted there without. */
export function faultedStations(
  station: Station,
  fault: Fault,
  { setting, entered }: { readonly setting: number; readonly entered: Predicted },
): readonly Faulted[] {
  const at = (magnitude: number | null, one: Station): readonly Faulted[] => {
    const predicted = predictedAt(one, setting);
    if (predicted === null) return [];
    return [
      { magnitude: magnitude ?? lossOf(station, fault, { entered, predicted }), station: one, predicted },
    ];
  };
  if (!fault.cause.startsWith('clogged-')) {
    return MAGNITUDES.flatMap((magnitude) => at(magnitude, withFault(station, fault, magnitude)));
  }
  if (passing(station.loop, fault, entered) < AT_REST * entered.flow) return [];
  const clogs: Faulted[] = [];
  for (const loss of LOSSES) {
    const [clog] = at(null, { ...station, loop: clogged(station.loop, fault, { entered, loss }) });
    if (clog === undefined || clog.magnitude <= (clogs.at(-1)?.magnitude ?? 0)) break;
    clogs.push(clog);
    if (clog.magnitude > MAGNITUDE_MOST) break;
  }
  return clogs;
}

/** The flow that a fault is about: that of the outlets behind a branch, else the total. */
export function flowBehind(
  { loop: { system } }: Station,
  { outletNames }: Fault,
  { flow, outletFlows }: Pick<Predicted, 'flow' | 'outletFlows'>,
): number {
  if (outletNames === undefined) return flow;
  return system.outlets.reduce(
    (sum, { name }, i) => sum + (outletNames.includes(name) ? (outletFlows[i] ?? 0) : 0),
    0,
  );
}

const lossOf = (
  station: Station,
  fault: Fault,
  { entered, predicted }: { readonly entered: Predicted; readonly predicted: Predicted },
): number => 1 - flowBehind(station, fault, predicted) / flowBehind(station, fault, entered);

function withFault(station: Station, { cause }: Fault, magnitude: number): Station {
  const { loop, pump } = station;
  const less = 1 - PER_MAGNITUDE * magnitude;
  if (cause === 'less-resistance') return { ...station, loop: withEasierDischarge(loop, less) };
  const { speedMap } = pump.fit;
  const slow = { ...speedMap, speeds: speedMap.speeds.map((speed) => (1 - magnitude) * speed) };
  const fit =
    cause === 'speed-low'
      ? { ...pump.fit, speedMap: slow }
      : calibratedFit(pump.fit, {
          head: cause === 'worn-pump' ? less : 1,
          power: cause === 'draws-more' ? 1 + magnitude : 1,
        });
  return { ...station, pump: { ...pump, fit } };
}

/** A valve that is opened, or pipework that was never so long, lies behind the pump. */
function withEasierDischarge(loop: CompiledLoop, less: number): CompiledLoop {
  const easier = withMoreFriction(loop, less);
  if (easier.network === null || loop.network === null) return easier;
  const network = { ...easier.network, suction: loop.network.suction };
  return { ...easier, network, system: pipeworkSystem(network) };
}

/** A loss H = K Q|Q| added to the suction, the discharge's root or a branch; where the pipework is not known, to its curve. */
function clogged(
  loop: CompiledLoop,
  fault: Fault,
  { entered, loss }: { readonly entered: Predicted; readonly loss: number },
): CompiledLoop {
  const { network, system } = loop;
  const { cause, branch = 0 } = fault;
  if (network === null) return withMoreFriction(loop, 1 + loss);
  const clog: PlacedResistance = {
    ...{ path: [], kind: 'loss', name: null, role: null, bore: null },
    resistance: quadraticLoss(
      (loss * system.stateAt(entered.flow).head) / passing(loop, fault, entered) ** 2,
    ),
  };
  const more: Network =
    cause === 'clogged-intake'
      ? { ...network, suction: [...network.suction, clog] }
      : {
          ...network,
          branches: network.branches.map((one, place) =>
            place === branch ? { ...one, elements: [...one.elements, clog] } : one,
          ),
        };
  return { ...loop, network: more, system: pipeworkSystem(more) };
}

/** Flow where a clog is [m3/s]: that of the branch, else the total. */
const passing = ({ network, system }: CompiledLoop, { branch = 0 }: Fault, { flow }: Predicted): number =>
  network === null || network.branches[branch]?.parent === -1
    ? flow
    : (system.stateAt(flow).network?.flows[branch] ?? flow);

/** One branch of those with the same outlets behind it, those of most outlets first, as many as are solved in time. */
export function branchFaults({ branches, outlets }: Network): readonly Fault[] {
  const behind = branches.map((): string[] => []);
  for (const outlet of outlets) {
    const name = branches[outlet]?.outlet?.name;
    for (let branch = outlet; branch >= 0 && name !== undefined; branch = branches[branch]?.parent ?? -1) {
      behind[branch]?.push(name);
    }
  }
  const sets = new Map<string, Fault>();
  const whole = JSON.stringify(behind[0]);
  for (const [branch, outletNames] of behind.entries()) {
    const key = JSON.stringify(outletNames);
    const isOpen = branches[branch]?.shut === false && outletNames.length > 0;
    if (isOpen && key !== whole && !sets.has(key))
      sets.set(key, { cause: 'clogged-branch', branch, outletNames });
  }
  const most = Math.floor(SOLVED_MOST / (LOSSES.length * branches.length));
  return [...sets.values()]
    .toSorted((a, b) => (b.outletNames?.length ?? 0) - (a.outletNames?.length ?? 0))
    .slice(0, most);
}
