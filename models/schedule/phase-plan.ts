/** Works out what each phase of a schedule asks of the pump, once for all its runs. */

import { type RememberedDuty, rememberedDuty } from '../duty/duty-memory.ts';
import type { ExactDuty } from '../duty/duty-point.ts';
import { type SampledLoop, sampleLoop } from '../duty/sampled-loop.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { shutOff } from '../network/shut-off.ts';
import {
  dutyAt,
  type JudgedLoop,
  type PhaseDuty,
  phaseDuty,
  type Station,
  volumeDuty,
} from './phase-duty.ts';
import { nothing, type Requirement, requiring, scaled, shutOutlets, stated } from './phase-loop.ts';
import type { Emergency, Phase, Schedule, VolumeDemand } from './schedule.ts';
import { type SettingGrid, settingGrid } from './setting-grid.ts';
import { type VolumeChoice, volumeChoices } from './volume-choices.ts';

export interface PhasePlan {
  readonly phase: Phase;
  readonly own: PhaseDuty;
  /** The other half of a pulse. */
  readonly other: PhaseDuty | null;
  readonly volume: { readonly demand: VolumeDemand; readonly choices: readonly VolumeChoice[] } | null;
  /** The loop as this phase runs it, its requirements included. */
  readonly loop: CompiledLoop;
  /** The same in the other half of a pulse. */
  readonly otherLoop: CompiledLoop | null;
  /** The settings of the pump on this loop; phases that close the same outlets share them. */
  readonly grid: SettingGrid;
  /** Exact, and each setting worked out once. */
  readonly dutyAt: RememberedDuty;
}

export interface SchedulePlan {
  readonly station: Station;
  readonly phases: readonly PhasePlan[];
  readonly emergency: PhasePlan | null;
  /** On the loop with nothing shut. */
  readonly dutyAt: RememberedDuty;
}

/** What a phase comes to, as plain data: worked out in one place, taken up in another. */
export interface PhaseFigures {
  readonly own: PhaseDuty;
  readonly other: PhaseDuty | null;
  /** Null where the phase moves no volume. */
  readonly choices: readonly VolumeChoice[] | null;
  readonly duties: readonly ExactDuty[];
}

export interface PlanFigures {
  readonly phases: readonly PhaseFigures[];
  readonly emergency: PhaseFigures | null;
  readonly duties: readonly ExactDuty[];
}

/**
 * Works out every phase. A phase that does not fit the loop any more (an outlet that is not there, something to shut where
 * pipework is not known) is infeasible, never an error. With `figures`, those of the same plan worked out before, nothing
 * is solved but what they lack.
 * Throws `SolveFailure` where network or search reach a limit.
 */
export function planSchedule(
  schedule: Pick<Schedule, 'phases' | 'emergency'>,
  loop: CompiledLoop,
  station: Station,
  figures?: PlanFigures,
): SchedulePlan {
  const openings = loopsByOpenings(loop, station);
  const whole = openings([]);
  if (whole === null) throw new Error('a loop with nothing shut is itself');
  const { emergency } = schedule;
  const planned = (phase: Phase, known: PhaseFigures | null | undefined) =>
    planPhase(phase, { whole, fitting: openings(shutOutlets(phase)) }, station, known ?? null);
  return {
    station,
    phases: schedule.phases.map((phase, place) => planned(phase, figures?.phases[place])),
    emergency: emergency === undefined ? null : planned(emergencyPhase(emergency), figures?.emergency),
    dutyAt: rememberedDuty((setting) => dutyAt(whole.sampled(), station, setting), figures?.duties),
  };
}

const emergencyPhase = ({ factor }: Emergency): Phase => ({ name: 'emergency', from: '00:00', factor });

/** A loop with some outlets shut, and what is worked out on it when first asked for. */
interface OpenedLoop {
  readonly loop: CompiledLoop;
  readonly grid: SettingGrid;
  sampled(): SampledLoop;
}

function loopsByOpenings(
  loop: CompiledLoop,
  station: Station,
): (shut: readonly string[]) => OpenedLoop | null {
  const known = new Map<string, OpenedLoop | null>();
  return (shut) => {
    const key = JSON.stringify(shut);
    const before = known.get(key);
    if (before !== undefined) return before;
    const changed = shutOff(loop, shut);
    const opened = changed === null ? null : openedLoop(changed, station);
    known.set(key, opened);
    return opened;
  };
}

function openedLoop(loop: CompiledLoop, station: Station): OpenedLoop {
  let known: SampledLoop | undefined;
  const sampled = () => {
    known ??= sampleLoop(loop);
    return known;
  };
  return { loop, sampled, grid: settingGrid(sampled, station) };
}

function planPhase(
  phase: Phase,
  { whole, fitting }: { readonly whole: OpenedLoop; readonly fitting: OpenedLoop | null },
  station: Station,
  known: PhaseFigures | null,
): PhasePlan {
  const shut = shutOutlets(phase);
  const namesOutlets = Object.keys(phase.requiredFlows ?? {}).every((name) =>
    whole.loop.system.outlets.some((outlet) => outlet.name === name),
  );
  const opened = fitting ?? whole;
  const fits = fitting !== null && namesOutlets;
  const model = (required: Requirement) => requiring(opened.loop, required, shut);
  const { grid } = opened;
  const judged = (): JudgedLoop => ({ sampled: opened.sampled(), grid });
  const solve = (required: CompiledLoop) => phaseDuty(judged(), required, station, fits);
  const dutyOf = rememberedDuty((setting) => dutyAt(opened.sampled(), station, setting), known?.duties);
  const { volume, pulse } = phase;
  if (volume !== undefined) {
    const loop = model(nothing);
    const own = known?.own ?? volumeDuty(judged(), loop, station, volume);
    const choices = known?.choices ?? (fits ? volumeChoices(opened.sampled(), loop, station, volume) : []);
    const moved = { demand: volume, choices };
    return { phase, own, other: null, volume: moved, loop, otherLoop: null, grid, dutyAt: dutyOf };
  }
  const loop = model(requirementOf(phase, 1));
  const otherLoop = pulse === undefined ? null : model(requirementOf(phase, pulse.otherFactor, true));
  const other = () => (otherLoop === null ? null : solve(otherLoop));
  return {
    phase,
    own: known?.own ?? solve(loop),
    other: known === null ? other() : known.other,
    volume: null,
    ...{ loop, otherLoop, grid },
    dutyAt: dutyOf,
  };
}

const figuresOfPhase = ({ own, other, volume, dutyAt: duty }: PhasePlan): PhaseFigures => ({
  own,
  other,
  choices: volume?.choices ?? null,
  duties: duty.known(),
});

/** What is worked out of a plan so far. */
export const planFigures = ({ phases, emergency, dutyAt: duty }: SchedulePlan): PlanFigures => ({
  phases: phases.map(figuresOfPhase),
  emergency: emergency === null ? null : figuresOfPhase(emergency),
  duties: duty.known(),
});

const requirementOf = ({ factor, requiredFlows }: Phase, times: number, isOther = false): Requirement =>
  requiredFlows === undefined ? scaled(isOther ? times : (factor ?? 1)) : stated(requiredFlows, times);
