/** Finds what a schedule uses and costs in a year of the calendar. */

import type { Interval } from '../calendar/civil-year.ts';
import { MS_PER_HOUR } from '../calendar/zone-offsets.ts';
import { WATTS_PER_KILOWATT } from '../physics/unit-factors.ts';
import { eachRateRun } from '../tariff/rate-runs.ts';
import { hoursByRate } from '../tariff/year-hours.ts';
import type { Block } from './block.ts';
import type { PhasePlan, SchedulePlan } from './phase-plan.ts';
import { type PhaseCalendar, phaseRuns } from './phase-starts.ts';
import { planAt } from './plan-at.ts';
import { lastSetting, type Memory, newMemory, runBlocks } from './run-blocks.ts';
import type { Prices } from './volume-run.ts';

/** What a stretch of time uses. */
export interface Use {
  /** [kWh] */
  readonly energy: number;
  /** [money] */
  readonly cost: number;
  /** [h] */
  readonly hours: number;
  /** Mean over those hours [W]. */
  readonly power: number;
  /** Mean over those hours [m3/s]. */
  readonly flow: number;
}

/** What a phase uses. */
export interface PhaseUse extends Use {
  /** Run for longest [% of full]. */
  readonly usualSetting: number;
  /** That is run at all [% of full]. */
  readonly highestSetting: number;
}

/** Walks every run of every phase through the interval, each block at the price of its own time. One use a phase. */
export function scheduleUse(
  plan: SchedulePlan,
  calendar: PhaseCalendar,
  prices: Prices,
  interval: Interval,
  memory: Memory = newMemory(),
): readonly PhaseUse[] {
  const totals = plan.phases.map(() => ({ ...emptyTotal(), bySetting: new Map<number, number>() }));
  let before: number | null = null;
  for (const run of phaseRuns(calendar, interval)) {
    const total = totals[run.phase];
    if (total === undefined) throw new Error(`there is no phase ${run.phase}`);
    for (const block of runBlocks(plan, { run, before }, prices, memory)) {
      const hours = addBlock(total, block, prices, interval);
      total.bySetting.set(block.setting, (total.bySetting.get(block.setting) ?? 0) + hours);
    }
    before = lastSetting(plan, run, prices, memory);
  }
  return totals.map((total, place) => ({
    ...useOf(total),
    ...settingsOf(total.bySetting, planAt(plan, place)),
  }));
}

function settingsOf(
  bySetting: ReadonlyMap<number, number>,
  { own, other }: PhasePlan,
): Pick<PhaseUse, 'usualSetting' | 'highestSetting'> {
  const [usual] = [...bySetting].toSorted((a, b) => b[1] - a[1] || a[0] - b[0]);
  const all = bySetting.size === 0 ? [own.setting] : [...bySetting.keys()];
  return {
    usualSetting: usual?.[0] ?? own.setting,
    highestSetting: Math.max(...all, other?.setting ?? 0),
  };
}

const emptyTotal = (): Total => ({ energy: 0, cost: 0, hours: 0, flowHours: 0 });

interface Total {
  energy: number;
  cost: number;
  hours: number;
  flowHours: number;
}

/** Returns the hours of the block inside the interval. */
function addBlock(
  total: Total,
  { from, until, power, flow }: Block,
  prices: Prices,
  within: Interval,
): number {
  const clipped = { from: Math.max(from, within.from), until: Math.min(until, within.until) };
  const kilowatts = power / WATTS_PER_KILOWATT;
  const hoursBefore = total.hours;
  eachRateRun({ ...prices, ...clipped }, (start, end, rate) => {
    const hours = (end - start) / MS_PER_HOUR;
    total.energy += kilowatts * hours;
    total.cost += kilowatts * hours * (prices.rates.prices[rate] ?? 0);
    total.hours += hours;
    total.flowHours += flow * hours;
  });
  return total.hours - hoursBefore;
}

const useOf = ({ energy, cost, hours, flowHours }: Total): Use => ({
  energy,
  cost,
  hours,
  power: hours === 0 ? 0 : (WATTS_PER_KILOWATT * energy) / hours,
  flow: hours === 0 ? 0 : flowHours / hours,
});

/** What one duty of some power [W] and flow [m3/s] round the clock uses and costs in the interval [ms]. */
export function constantUse(
  { power, flow }: { readonly power: number; readonly flow: number },
  prices: Prices,
  interval: Interval,
): Use {
  const total = emptyTotal();
  for (const [rate, hours] of hoursByRate(prices, interval).entries()) {
    const energy = (power / WATTS_PER_KILOWATT) * hours;
    total.energy += energy;
    total.cost += energy * (prices.rates.prices[rate] ?? 0);
    total.hours += hours;
    total.flowHours += flow * hours;
  }
  return useOf(total);
}
