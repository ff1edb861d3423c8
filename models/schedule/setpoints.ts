/** Lists what to set from one instant to another, step by step. */
import type { Interval } from '../calendar/civil-year.ts';
import { MS_PER_MINUTE } from '../calendar/zone-offsets.ts';
import type { Settings } from '../pump/pump.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import type { Feasibility, PhaseDuty } from './phase-duty.ts';
import type { PhasePlan, SchedulePlan } from './phase-plan.ts';
import { type PhaseCalendar, type PhaseRun, phaseRuns } from './phase-starts.ts';
import { planAt } from './plan-at.ts';
import { lastSetting, type Memory, volumesOf } from './run-blocks.ts';
import { type Prices, volumeRun } from './volume-run.ts';

export interface Step extends Interval {
  /** Place in the schedule [-]. */
  readonly phase: number;
  /** [% of full]; 0 is stopped. */
  readonly setting: number;
  /** Which part of a pulse it is. */
  readonly part: 'own' | 'other';
  /** Whether its phase is feasible at a setting of its own. */
  readonly feasible: boolean;
}

/** Why the phase of a step is infeasible, or that it is not. */
export function feasibilityOf(one: PhasePlan, { feasible, part }: Step): Feasibility {
  if (feasible) return { feasible };
  const duty = part === 'other' ? one.other : one.own;
  if (duty === null || duty.feasible) throw new Error(`${one.phase.name} is feasible`);
  const { reason, step, choice, limitedBy } = duty;
  return { feasible, reason, step, choice, limitedBy };
}

/** Long enough to hold the start of the run before the one that is asked about. */
const RUN_BEFORE = 1;

/** The steps that touch an interval, whole, in order. Ramps change every minute, on the grid of the pump's settings. */
export function stepsWithin(
  plan: SchedulePlan,
  calendar: PhaseCalendar,
  prices: Prices,
  interval: Interval,
  memory: Memory,
): readonly Step[] {
  const runs = phaseRuns(calendar, interval);
  const first = runs[0];
  const [earlier] =
    first === undefined ? [] : phaseRuns(calendar, { from: first.from - RUN_BEFORE, until: first.from });
  let before = earlier === undefined ? null : lastSetting(plan, earlier, prices, memory);
  const steps: Step[] = [];
  for (const run of runs) {
    steps.push(...joined(stepsOfRun(plan, { run, before }, prices, memory)));
    before = lastSetting(plan, run, prices, memory);
  }
  return steps.filter(({ from, until }) => until > interval.from && from < interval.until);
}

function stepsOfRun(
  plan: SchedulePlan,
  { run, before }: { readonly run: PhaseRun; readonly before: number | null },
  prices: Prices,
  memory: Memory,
): readonly Step[] {
  const one = planAt(plan, run.phase);
  const { phase } = run;
  if (one.volume !== null) {
    const { blocks } = volumeRun(one, run, prices, volumesOf(memory, phase));
    return blocks.map(({ from, until, setting, isReached }) => {
      return { phase, from, until, setting, part: 'own', feasible: isReached };
    });
  }
  const ramp = rampSteps(plan.station.pump.entered.settings, {
    run,
    before,
    to: one.own.setting,
    minutes: one.phase.rampMinutes ?? 0,
  }).map((step) => ({ ...step, phase, part: 'own' as const, feasible: one.own.feasible }));
  const rest = { from: ramp.at(-1)?.until ?? run.from, until: run.until };
  return [...ramp, ...steadySteps(plan, { ...run, ...rest })];
}

function rampSteps(
  settings: Settings,
  {
    run,
    before,
    to,
    minutes,
  }: {
    readonly run: Interval;
    readonly before: number | null;
    readonly to: number;
    readonly minutes: number;
  },
): readonly (Interval & { readonly setting: number })[] {
  if (before === null || before === to) return [];
  const start = Math.max(before, settings.min);
  return Array.from({ length: minutes }, (_, minute) => ({
    from: run.from + minute * MS_PER_MINUTE,
    until: Math.min(run.until, run.from + (minute + 1) * MS_PER_MINUTE),
    setting: onGrid(settings, start + ((to - start) * (minute + 1)) / minutes),
  })).filter(({ from, until }) => from < until);
}

function onGrid(settings: Settings, setting: number): number {
  const index = Math.round((setting - settings.min) / settings.step);
  return settingAt(settings, Math.max(0, Math.min(gridSize(settings) - 1, index)));
}

/** The phase's own setting or, pulsing, its own and the other in turn. */
function steadySteps(plan: SchedulePlan, { phase: place, from, until }: PhaseRun): readonly Step[] {
  const { own, other, phase } = planAt(plan, place);
  const step = (interval: Interval, part: Step['part'], { setting, feasible }: PhaseDuty): Step[] =>
    interval.from < interval.until ? [{ phase: place, ...interval, setting, part, feasible }] : [];
  const { pulse } = phase;
  if (pulse === undefined || other === null) return step({ from, until }, 'own', own);
  const period = pulse.periodMinutes * MS_PER_MINUTE;
  const periods = Math.ceil((until - from) / period);
  return Array.from({ length: periods }, (_, index) => {
    const start = from + index * period;
    const end = Math.min(until, start + period);
    const change = Math.min(end, Math.round(start + (1 - pulse.share) * period));
    return [
      ...step({ from: start, until: change }, 'own', own),
      ...step({ from: change, until: end }, 'other', other),
    ];
  }).flat();
}

/** Neighbours at one setting are one step. */
function joined(steps: readonly Step[]): readonly Step[] {
  const out: Step[] = [];
  for (const step of steps) {
    const last = out.at(-1);
    const isSame =
      last !== undefined &&
      last.until === step.from &&
      last.setting === step.setting &&
      last.part === step.part &&
      last.feasible === step.feasible;
    if (isSame) out[out.length - 1] = { ...last, until: step.until };
    else out.push(step);
  }
  return out;
}
