/** The job of a schedule plans the phases of a loop: the setting of each, and one for all of them. */

import { type Result, success } from '../../../curves/result.ts';
import { civilYear } from '../../../models/calendar/civil-year.ts';
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { solving, type Unsolved } from '../../../models/network/solve-failure.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { gridSize } from '../../../models/pump/settings-grid.ts';
import { constantFallback, type Fallback, fallbackOf } from '../../../models/schedule/fallback.ts';
import type { Station } from '../../../models/schedule/phase-duty.ts';
import { shutOutlets } from '../../../models/schedule/phase-loop.ts';
import {
  type PlanFigures,
  planFigures,
  planSchedule,
  type SchedulePlan,
} from '../../../models/schedule/phase-plan.ts';
import { planAt } from '../../../models/schedule/plan-at.ts';
import { newMemory } from '../../../models/schedule/run-blocks.ts';
import type { Schedule } from '../../../models/schedule/schedule.ts';
import { stepsWithin } from '../../../models/schedule/setpoints.ts';
import { scheduleUse } from '../../../models/schedule/year-use.ts';
import { flatRate, ratesOf } from '../../../models/tariff/rates.ts';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import { siteYear } from '../../clock/site-time.ts';
import { zoneAround } from '../../clock/zone.ts';
import { branchesOf, LONG, SETTING, SOLVES } from '../../question/job-size.ts';
import { compiled } from '../../records/loop/compile.ts';
import { type SentLoop, sendLoop } from '../../records/loop/loop-job.ts';
import type { Job } from '../../threads/job.ts';

export interface PlanWork {
  readonly schedule: Pick<Schedule, 'phases' | 'emergency'>;
  /** False: the loop keeps one setting all day. */
  readonly isScheduled: boolean;
  readonly station: Station;
  readonly installedSetting: number;
  readonly timeZone: string;
  /** Null: a flat price. */
  readonly tariff: Tariff | null;
  readonly price: number;
  /** The day from this instant on is worked out, and the year. */
  readonly from: number;
  readonly year: number;
}

export interface PlannedSchedule {
  readonly plan: SchedulePlan;
  /** For a controller that is on its own. */
  readonly fallback: Fallback;
}

/** The same as plain data. */
interface PlannedFigures {
  readonly figures: PlanFigures;
  readonly fallback: Fallback;
}

export const scheduleJob: Job<
  CompiledLoop,
  PlanWork,
  Result<PlannedSchedule, Unsolved>,
  SentLoop<PlanWork>,
  Result<PlannedFigures, Unsolved>
> = {
  name: 'schedule',
  isLong: (loop, { schedule, station }) => isLongPlan(loop, schedule, station.pump.entered),
  compute,
  send: sendLoop,
  computeSent: ({ loop, work }) => computeFigures(compiled(loop), work),
  receive(done, loop, { schedule, station }) {
    if (!done.ok) return done;
    const { figures, fallback } = done.value;
    return success({ plan: planSchedule(schedule, loop, station, figures), fallback });
  },
};

function compute(
  loop: CompiledLoop,
  { schedule, isScheduled, station }: PlanWork,
): Result<PlannedSchedule, Unsolved> {
  return solving(() => {
    const plan = planSchedule(schedule, loop, station);
    return { plan, fallback: isScheduled ? fallbackOf(plan) : constantFallback(plan) };
  });
}

/** Walks the day and the year once, so that every duty they take is among the figures. */
function computeFigures(loop: CompiledLoop, work: PlanWork): Result<PlannedFigures, Unsolved> {
  const planned = compute(loop, work);
  if (!planned.ok) return planned;
  const { plan, fallback } = planned.value;
  return solving(() => {
    walk(plan, work);
    return { figures: planFigures(plan), fallback };
  });
}

function walk(plan: SchedulePlan, { installedSetting, timeZone, tariff, price, from, year }: PlanWork): void {
  const rates = tariff === null ? flatRate(price) : ratesOf(tariff);
  const zone = zoneAround(timeZone, year);
  const calendar = { phases: plan.phases.map(({ phase }) => phase), holidays: rates.holidays, zone };
  const memory = newMemory();
  const uses = scheduleUse(plan, calendar, { rates, zone }, civilYear(zone, year), memory);
  const highest = Math.max(
    ...uses.map(({ highestSetting, usualSetting }) => Math.max(highestSetting, usualSetting)),
  );
  for (const setting of [highest, installedSetting]) if (setting > 0) plan.dutyAt(setting);
  for (const [place, { usualSetting }] of uses.entries()) {
    if (usualSetting > 0) planAt(plan, place).dutyAt(usualSetting);
  }
  const today = { ...calendar, zone: zoneAround(timeZone, siteYear(timeZone, from)) };
  const prices = { rates, zone: today.zone };
  for (const { phase, setting } of stepsWithin(
    plan,
    today,
    prices,
    { from, until: from + MS_PER_DAY },
    memory,
  )) {
    if (setting > 0) planAt(plan, phase).dutyAt(setting);
  }
}

/** Each set of openings is sampled, each phase finds its required duty and its setting; volumes look at their whole grid. */
function isLongPlan(
  loop: CompiledLoop,
  { phases, emergency }: Pick<Schedule, 'phases' | 'emergency'>,
  { settings }: Pump,
): boolean {
  const branches = branchesOf(loop);
  const openings = new Set(phases.map((phase) => JSON.stringify(shutOutlets(phase)))).size + 1;
  const ramps = phases.filter(({ rampMinutes = 0 }) => rampMinutes > 0).length;
  const volumes = phases.filter(({ volume }) => volume !== undefined).length;
  const searches =
    phases.length +
    phases.filter(({ pulse }) => pulse !== undefined).length +
    (emergency === undefined ? 0 : 1);
  const solves =
    SOLVES.shared * openings +
    (SOLVES.requiredDuty + SOLVES.candidate) * searches +
    RAMP.duties * RAMP.solves * ramps +
    SOLVES.dutyPoint;
  const judged = searches + volumes;
  return branches * solves + (SETTING.own + SETTING.branch * branches) * gridSize(settings) * judged > LONG;
}

/** Duties of a ramp, each a few solves. */
const RAMP = { duties: 17, solves: 4 } as const;
