/** Computes the figures of a schedule for a year of the calendar, and those of constant settings. */
import type { Result } from '../../../curves/result.ts';
import { civilYear } from '../../../models/calendar/civil-year.ts';
import { solving, type Unsolved } from '../../../models/network/solve-failure.ts';
import { newMemory } from '../../../models/schedule/run-blocks.ts';
import { volumeGap } from '../../../models/schedule/volume-gap.ts';
import { constantUse, type PhaseUse, scheduleUse, type Use } from '../../../models/schedule/year-use.ts';
import { zoneAround } from '../../clock/zone.ts';
import type { PlannedLoop } from './planned-loop.ts';

export interface ConstantRunning {
  readonly setting: number;
  readonly use: Use;
}

export interface YearFigures {
  readonly year: number;
  readonly hours: number;
  readonly total: { readonly energy: number; readonly cost: number };
  readonly phases: readonly (PhaseUse & { readonly feasible: boolean; readonly gap: number | null })[];
  readonly constantHighest: ConstantRunning;
  readonly installed: ConstantRunning;
}

export function scheduleYear(
  planned: Pick<PlannedLoop, 'plan' | 'rates' | 'sources'>,
  year: number,
): Result<YearFigures, Unsolved> {
  const { plan, rates, sources } = planned;
  const zone = zoneAround(sources.site.document.timeZone, year);
  const calendar = { phases: plan.phases.map(({ phase }) => phase), holidays: rates.holidays, zone };
  const prices = { rates, zone };
  const interval = civilYear(zone, year);
  const memory = newMemory();
  return solving(() => {
    const uses = scheduleUse(plan, calendar, prices, interval, memory);
    const constant = (setting: number): ConstantRunning => {
      return { setting, use: constantUse(plan.dutyAt(setting), prices, interval) };
    };
    const highest = Math.max(...uses.map(({ highestSetting }) => highestSetting));
    return {
      year,
      hours: uses.reduce((sum, use) => sum + use.hours, 0),
      total: {
        energy: uses.reduce((sum, use) => sum + use.energy, 0),
        cost: uses.reduce((sum, use) => sum + use.cost, 0),
      },
      phases: uses.map((use, place) => {
        const one = plan.phases[place];
        if (one === undefined) throw new Error(`invariant: there is no phase ${place}`);
        if (one.volume === null) {
          return { ...use, feasible: one.own.feasible && one.other?.feasible !== false, gap: null };
        }
        return { ...use, ...volumeGap(one, place, { calendar, prices, interval, memory }) };
      }),
      constantHighest: constant(highest > 0 ? highest : plan.station.pump.entered.settings.min),
      installed: constant(sources.installed.setting),
    };
  });
}
