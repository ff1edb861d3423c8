/** Finds the one setting for all phases, for a controller that has lost its connection. */
import { SECONDS_PER_MINUTE } from '../calendar/time-factors.ts';
import { hasRequirement } from '../network/margins.ts';
import { criteriaFor } from '../selection/criteria.ts';
import { type Criterion, EQUAL, holds } from '../selection/criterion.ts';
import { minutesToNext } from './phase-length.ts';
import type { PhasePlan, SchedulePlan } from './phase-plan.ts';
import { isKept } from './protective-setting.ts';
import type { SettingGrid } from './setting-grid.ts';
import { firstMoving, keepsLimit, upperLimits } from './upper-limits.ts';

/** What a controller dials on its own, and what that does not give. */
export interface Fallback {
  /** [% of full] */
  readonly setting: number;
  /** Whether no outlet is below its required flow in any phase, and each volume is moved. */
  readonly requiredFlowsMet: boolean;
  /** Names of the phases in which that fails. */
  readonly phasesBelowRequired: readonly string[];
}

/**
 * The one setting for a controller that has lost its connection.
 *
 * That is F, the highest of the phases' own settings (both of a pulse, the steady one of a volume), if in no phase it
 * breaks an upper limit that some setting there keeps; else the highest grid setting below F that breaks none and
 * moves water in every phase whose own setting does; else the lowest that moves water there.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function fallbackOf(plan: SchedulePlan): Fallback {
  const asked = plan.phases.map((one) => askedOf(plan, one));
  const setting = settingOf(plan, asked);
  const below = asked.filter((one) => !isMet(plan, one, setting)).map(({ one }) => one.phase.name);
  return { setting, requiredFlowsMet: below.length === 0, phasesBelowRequired: below };
}

/** The same for a loop that keeps one setting all day: its own. */
export function constantFallback(plan: SchedulePlan): Fallback {
  const setting = Math.max(...plan.phases.map(({ own }) => own.setting));
  const isEnough = plan.phases.every((one) => isMet(plan, askedOf(plan, one), setting));
  return { setting, requiredFlowsMet: isEnough, phasesBelowRequired: [] };
}

/** What a phase asks of the fallback. */
interface Asked {
  readonly one: PhasePlan;
  /** The highest setting of its own [% of full]. */
  readonly setting: number;
  readonly movesWater: boolean;
  /** Mean flow [m3/s] that moves its volume in the time to the next start; null without a volume. */
  readonly meanFlow: number | null;
}

function askedOf({ phases }: SchedulePlan, one: PhasePlan): Asked {
  const { own, other, volume, phase } = one;
  if (volume === null) {
    const setting = Math.max(own.setting, other?.setting ?? 0);
    return { one, setting, movesWater: !own.duty.deadHead, meanFlow: null };
  }
  const minutes = minutesToNext(
    phase.from,
    phases.map((each) => each.phase.from),
  );
  const meanFlow = volume.demand.perDay / (minutes * SECONDS_PER_MINUTE);
  const running = volume.choices.filter(({ setting }) => setting > 0);
  const steady = running.toSorted((a, b) => a.setting - b.setting).find(({ flow }) => flow >= meanFlow);
  return {
    ...{ one, meanFlow, setting: steady?.setting ?? own.setting },
    movesWater: steady !== undefined || !own.duty.deadHead,
  };
}

function settingOf(plan: SchedulePlan, asked: readonly Asked[]): number {
  const highest = Math.max(...asked.map(({ setting }) => setting));
  const limited = limitedGrids(plan, asked);
  const [first] = limited;
  if (first === undefined) throw new Error('a schedule has phases');
  const { grid } = first;
  const breaksNone = (index: number) =>
    limited.every((each) => each.limits.every((limit) => keepsLimit(each.grid, index, limit)));
  const moves = (index: number) => limited.every((each) => !each.mustMove || each.grid.movesWater(index));
  let index = grid.size - 1;
  while (index > 0 && grid.settingAt(index) > highest) index -= 1;
  if (breaksNone(index)) return highest;
  for (index -= 1; index >= 0; index--) if (breaksNone(index) && moves(index)) return grid.settingAt(index);
  return grid.settingAt(lowestMoving(limited));
}

/** The settings of a loop with some outlets closed, and the upper limits that some of them keep. */
interface LimitedGrid {
  readonly grid: SettingGrid;
  readonly limits: readonly Criterion[];
  /** Whether a phase on it runs at a setting that moves water. */
  readonly mustMove: boolean;
}

/** Phases that close the same outlets share a grid, and with it their upper limits. */
function limitedGrids({ station }: SchedulePlan, asked: readonly Asked[]): readonly LimitedGrid[] {
  const grids = new Map(asked.map(({ one: { grid, loop } }) => [grid, loop]));
  return [...grids].map(([grid, loop]) => ({
    grid,
    limits: upperLimits({ ...station, loop }).filter((limit) => isKept(grid, limit)),
    mustMove: asked.some(({ one, movesWater }) => movesWater && one.grid === grid),
  }));
}

/** Place [-] of the lowest setting that moves water wherever a phase's own does. */
function lowestMoving(limited: readonly LimitedGrid[]): number {
  const firsts = limited.map(({ grid, mustMove }) => (mustMove ? (firstMoving(grid) ?? 0) : 0));
  return Math.max(...firsts);
}

function isMet({ station }: SchedulePlan, { one, meanFlow }: Asked, setting: number): boolean {
  const duty = one.dutyAt(setting);
  if (meanFlow !== null) return duty.flow >= meanFlow * (1 - EQUAL);
  return [one.loop, ...(one.otherLoop === null ? [] : [one.otherLoop])].every((loop) => {
    if (duty.deadHead && hasRequirement(loop.system.outlets)) return false;
    const served = criteriaFor({ ...station, loop }).filter(({ reason }) => reason === 'not-enough-head');
    return served.every((criterion) => holds(criterion.judge(duty)));
  });
}
