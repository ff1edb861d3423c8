/** Finds the one setting that serves every phase, for a controller that has lost its connection. */
import { SECONDS_PER_MINUTE } from '../calendar/time-factors.ts';

import { gridSize, settingAt } from '../pump/settings-grid.ts';
import { criteriaFor } from '../selection/criteria.ts';
import { holds } from '../selection/grid-search.ts';
import { minutesToNext } from './phase-length.ts';
import type { PhasePlan, SchedulePlan } from './phase-plan.ts';

/**
 * The one setting [% of full] for a controller that has lost its connection.
 *
 * The smallest grid setting, from the highest of all phases up, at which the criteria of every phase hold; the
 * highest of all phases where none is. A volume is served by the setting that moves it steadily in the time to the
 * next start.
 */
export function fallbackSetting({ phases, station }: SchedulePlan): number {
  const starts = phases.map(({ phase }) => phase.from);
  const least = Math.max(
    ...phases.map((plan) =>
      plan.volume === null
        ? Math.max(plan.own.setting, plan.other?.setting ?? 0)
        : steadySetting(plan, minutesToNext(plan.phase.from, starts)),
    ),
  );
  const { settings } = station.pump.entered;
  const judged = phases.map((plan) => ({ plan, criteria: criteriaFor({ ...station, loop: plan.loop }) }));
  const serves = (setting: number) =>
    judged.every(
      ({ plan, criteria }) =>
        !isServed(plan) || criteria.every((one) => holds(one.judge(plan.dutyAt(setting)))),
    );
  for (let index = 0; index < gridSize(settings); index++) {
    const setting = settingAt(settings, index);
    if (setting >= least && serves(setting)) return setting;
  }
  return Math.max(least, settings.min);
}

/** A phase that no setting serves has no say in which serves the others. */
const isServed = ({ own, volume }: PhasePlan): boolean => volume !== null || own.feasible;

function steadySetting({ volume, own }: PhasePlan, minutes: number): number {
  if (volume === null) return own.setting;
  const { demand, choices } = volume;
  const running = choices.filter(({ setting }) => setting > 0).toSorted((a, b) => a.setting - b.setting);
  const needed = demand.perDay / (minutes * SECONDS_PER_MINUTE);
  return (running.find(({ flow }) => flow >= needed) ?? own).setting;
}
