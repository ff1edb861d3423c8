/** Finds the figures of a loop that runs by a schedule. */

import type { Interval } from '../calendar/civil-year.ts';
import { HOURS_PER_DAY } from '../calendar/time-factors.ts';
import type { ZoneOffsets } from '../calendar/zone-offsets.ts';
import { sampleLoop } from '../duty/sampled-loop.ts';
import { limitsOf } from '../loop/limits.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { hasRequirement, outletFigures } from '../network/margins.ts';
import { WATTS_PER_KILOWATT } from '../physics/unit-factors.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import type { Station } from '../schedule/phase-duty.ts';
import { planSchedule, type SchedulePlan } from '../schedule/phase-plan.ts';
import type { Schedule } from '../schedule/schedule.ts';
import { scheduleUse } from '../schedule/year-use.ts';
import { select } from '../selection/select.ts';
import { flatRate, type Rates } from '../tariff/rates.ts';
import {
  type InstalledStation,
  type LoopFigures,
  type Saving,
  type ShortOutlet,
  savedBy,
  shortOutlet,
  worthOfSaved,
  type YearUse,
} from './loop-figures.ts';

export interface ScheduledTerms {
  /** Null: nothing is priced. */
  readonly rates: Rates | null;
  readonly zone: ZoneOffsets;
  /** A year of the calendar. */
  readonly interval: Interval;
  /** Of the site above sea level [m]. */
  readonly elevation: number;
}

/** Walking a year takes as long as judging many pumps: of the pumps that serve the loop all day, only the best are walked. */
const WALKED_MOST = 3;

/**
 * What a loop uses in a year of its schedule, and what another pump would save.
 *
 * A schedule already asks for no more than is required, so that there is no lower setting to find.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function scheduledLoop(
  loop: CompiledLoop,
  { schedule, installed }: { readonly schedule: Schedule; readonly installed: InstalledStation },
  candidates: readonly PumpModel[],
  terms: ScheduledTerms,
): LoopFigures {
  const limits = limitsOf(loop.entered.limits);
  const stationOf = (pump: PumpModel, count: number): Station => ({
    ...{ pump, count, limits },
    elevation: terms.elevation,
  });
  const plan = planSchedule(schedule, loop, stationOf(installed.pump, installed.count));
  const { hours, ...now } = yearOf(plan, terms);
  const short = shortPhase(plan);
  const figures = {
    ...now,
    power: (WATTS_PER_KILOWATT * now.annualEnergy) / hours,
    short,
    hasRequirement: true,
    aboveNeed: null,
  };
  if (short !== null || !hasRequirement(loop.system.outlets)) return { ...figures, otherPump: null };
  const running = { price: null, hoursPerDay: HOURS_PER_DAY, elevation: terms.elevation };
  const all = candidates.map((pump) => ({ pump, count: 1 }));
  const { ranking } = select({ sampled: sampleLoop(loop), candidates: all, limits, running });
  let best: Saving | null = null;
  for (const { candidate } of ranking.slice(0, WALKED_MOST)) {
    const pump = candidates[candidate];
    if (pump === undefined) throw new Error(`invariant: there is no candidate ${candidate}`);
    const other = planSchedule(schedule, loop, stationOf(pump, 1));
    if (shortPhase(other) !== null) continue;
    const saved = savedBy(now, yearOf(other, terms));
    if (worthOfSaved(saved) <= (best === null ? 0 : worthOfSaved(best))) continue;
    const setting = Math.max(...other.phases.map(({ own }) => own.setting));
    best = { candidate, count: 1, setting, ...saved };
  }
  return { ...figures, otherPump: best };
}

function yearOf(
  plan: SchedulePlan,
  { rates, zone, interval }: ScheduledTerms,
): YearUse & { readonly hours: number } {
  // Without a price, volumes are moved at the least energy.
  const priced = rates ?? flatRate(1);
  const calendar = { phases: plan.phases.map(({ phase }) => phase), holidays: priced.holidays, zone };
  const uses = scheduleUse(plan, calendar, { rates: priced, zone }, interval);
  const sum = (figureOf: (use: (typeof uses)[number]) => number): number =>
    uses.reduce((total, use) => total + figureOf(use), 0);
  return {
    annualEnergy: sum(({ energy }) => energy),
    annualCost: rates === null ? null : sum(({ cost }) => cost),
    hours: sum(({ hours }) => hours),
  };
}

function shortPhase({ phases }: SchedulePlan): ShortOutlet | null {
  const shorts = phases.flatMap(({ phase, own, loop, volume }) => {
    if (own.feasible || volume !== null) return [];
    return shortOutlet(outletFigures(loop.system.outlets, own.duty.outletFlows), phase.name) ?? [];
  });
  return shorts.toSorted((a, b) => a.margin - b.margin)[0] ?? null;
}
