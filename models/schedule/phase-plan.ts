/** What each phase of a schedule asks of the pump, worked out once for all its runs. */

import type { ExactDuty } from '../duty-point.ts';
import type { LoopModel } from '../loop-model.ts';
import { pumpAtSetting } from '../pump-at-setting.ts';
import { conditionsFor, EQUAL } from '../selection/conditions.ts';
import { holds } from '../selection/grid-search.ts';
import { estimateDuty, type SharedLoop, shareLoop } from '../selection/shared-loop.ts';
import { gridSize, settingAt } from '../settings-grid.ts';
import type { Choice } from '../volume/volume-plan.ts';
import { dutyAt, type PhaseDuty, phaseDuty, type Station } from './phase-duty.ts';
import { nothing, type Requirement, requiring, scaled, shutOff, shutOutlets, stated } from './phase-loop.ts';
import type { Emergency, Phase, Schedule, VolumeDemand } from './schedule.ts';

/** A setting that a volume may be moved at; 0 is stopped. */
export interface VolumeChoice extends Choice {
  readonly setting: number;
}

export interface PhasePlan {
  readonly phase: Phase;
  readonly own: PhaseDuty;
  /** The other half of a pulse. */
  readonly other: PhaseDuty | null;
  readonly volume: { readonly demand: VolumeDemand; readonly choices: readonly VolumeChoice[] } | null;
  /** The loop as this phase runs it, its requirements included. */
  readonly loop: LoopModel;
  /** Exact, and each setting worked out once. */
  dutyAt(setting: number): ExactDuty;
}

export interface SchedulePlan {
  readonly station: Station;
  readonly phases: readonly PhasePlan[];
  readonly emergency: PhasePlan | null;
}

/** Settings of a grid that a volume chooses among at most; finer grids are taken at even strides. */
const CHOICES_MOST = 1001;

/**
 * Works out every phase. A phase that does not fit the loop any more (an outlet that is not there, something to shut where
 * pipework is not known) is infeasible, never an error.
 * Throws `SolveFailure` where network or search reach a limit.
 */
export function planSchedule(
  schedule: Pick<Schedule, 'phases' | 'emergency'>,
  loop: LoopModel,
  station: Station,
): SchedulePlan {
  const shares = sharedByOpenings(loop);
  const { emergency } = schedule;
  return {
    station,
    phases: schedule.phases.map((phase) => planPhase(phase, loop, station, shares)),
    emergency: emergency === undefined ? null : planPhase(emergencyPhase(emergency), loop, station, shares),
  };
}

const emergencyPhase = ({ factor }: Emergency): Phase => ({ name: 'emergency', from: '00:00', factor });

type Shares = (shut: readonly string[]) => SharedLoop | null;

function sharedByOpenings(loop: LoopModel): Shares {
  const known = new Map<string, SharedLoop | null>();
  return (shut) => {
    const key = JSON.stringify(shut);
    const before = known.get(key);
    if (before !== undefined) return before;
    const changed = shutOff(loop, shut);
    const shared = changed === null ? null : shareLoop(changed);
    known.set(key, shared);
    return shared;
  };
}

function planPhase(phase: Phase, base: LoopModel, station: Station, shares: Shares): PhasePlan {
  const shut = shutOutlets(phase);
  const fitting = shares(shut);
  const namesOutlets = Object.keys(phase.requiredFlows ?? {}).every((name) =>
    base.system.outlets.some((outlet) => outlet.name === name),
  );
  const shared = fitting ?? shares([]);
  if (shared === null) throw new Error('a loop with nothing shut is itself');
  const fits = fitting !== null && namesOutlets;
  const model = (required: Requirement) => requiring(shared.loop, required, shut);
  const solve = (required: Requirement): PhaseDuty => {
    const found = phaseDuty(shared, model(required), station);
    return fits ? found : { ...found, feasible: false };
  };
  const dutyOf = remembered((setting) => dutyAt(shared, station, setting));
  const { volume, pulse } = phase;
  if (volume !== undefined) {
    const own = solve(nothing);
    const loop = model(nothing);
    const choices = fits ? volumeChoices(shared, loop, station, volume) : [];
    return { phase, own, other: null, volume: { demand: volume, choices }, loop, dutyAt: dutyOf };
  }
  return {
    phase,
    own: solve(requirementOf(phase, 1)),
    other: pulse === undefined ? null : solve(requirementOf(phase, pulse.otherFactor, true)),
    volume: null,
    loop: model(requirementOf(phase, 1)),
    dutyAt: dutyOf,
  };
}

const requirementOf = ({ factor, requiredFlows }: Phase, times: number, isOther = false): Requirement =>
  requiredFlows === undefined ? scaled(isOther ? times : (factor ?? 1)) : stated(requiredFlows, times);

function remembered(compute: (setting: number) => ExactDuty): (setting: number) => ExactDuty {
  const known = new Map<number, ExactDuty>();
  return (setting) => {
    const duty = known.get(setting) ?? compute(setting);
    known.set(setting, duty);
    return duty;
  };
}

/** The settings between floor and ceiling at which all conditions hold, by their duties on the samples of the loop. */
function volumeChoices(
  shared: SharedLoop,
  loop: LoopModel,
  station: Station,
  { floor = 0, ceiling = Number.POSITIVE_INFINITY, mayStop }: VolumeDemand,
): readonly VolumeChoice[] {
  const { pump, count } = station;
  const { settings, standbyPower } = pump.pump;
  const conditions = conditionsFor({ ...station, loop });
  const size = gridSize(settings);
  const stride = Math.ceil(size / CHOICES_MOST);
  const choices: VolumeChoice[] = [];
  let guess: number | undefined;
  for (let index = size - 1; index >= 0; index -= stride) {
    const setting = settingAt(settings, index);
    const duty = estimateDuty(shared, pumpAtSetting(pump, { setting, count }), guess);
    const { flow, power, deadHead } = duty;
    if (!deadHead) guess = flow;
    const inside = flow >= floor * (1 - EQUAL) && flow <= ceiling * (1 + EQUAL);
    if (deadHead || !inside || !conditions.every((one) => holds(one.judge(duty)))) continue;
    choices.push({ setting, flow, power });
  }
  if (mayStop) choices.push({ setting: 0, flow: 0, power: count * standbyPower });
  return choices;
}
