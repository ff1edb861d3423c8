/** Judges the settings of a pump's grid on one loop, each worked out once. */
import type { DutyFigures, ExactDuty } from '../duty/duty-point.ts';
import { estimateDuty, exactDuty, type SampledLoop } from '../duty/sampled-loop.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import { type Criterion, holds } from '../selection/criterion.ts';
import { CLOSE } from '../selection/grid-search.ts';

/** Places [-] count from 0, the lowest setting. */
export interface SettingGrid {
  /** [-] */
  readonly size: number;
  /** [% of full] */
  settingAt(index: number): number;
  movesWater(index: number): boolean;
  /** Whether the duty at a place meets a criterion. */
  keeps(index: number, criterion: Criterion): boolean;
  dutyAt(index: number): ExactDuty;
}

/**
 * The grid of a pump on a loop, judged on samples, and on the exact duty where a limit is near.
 *
 * @param sampled asked for with the first duty.
 * @param station pumps of one kind, `count` [-] in parallel.
 * Errors: what it answers throws `SolveFailure` where network or search reach a limit.
 */
export function settingGrid(
  sampled: () => SampledLoop,
  { pump, count }: { readonly pump: PumpModel; readonly count: number },
): SettingGrid {
  const { settings } = pump.entered;
  const pumpAt = (index: number) => pumpAtSetting(pump, { setting: settingAt(settings, index), count });
  let guess: number | undefined;
  const estimated = remembered((index): DutyFigures => {
    const duty = estimateDuty(sampled(), pumpAt(index), guess);
    // Settings are mostly looked at side by side.
    if (duty.flow > 0) guess = duty.flow;
    return duty;
  });
  const exact = remembered((index) => exactDuty(sampled(), pumpAt(index), estimated(index)));
  return {
    size: gridSize(settings),
    settingAt: (index) => settingAt(settings, index),
    movesWater: (index) => !estimated(index).deadHead,
    keeps(index, criterion) {
      const judgement = criterion.judge(estimated(index));
      return holds(Math.abs(judgement.clearance) < CLOSE ? criterion.judge(exact(index)) : judgement);
    },
    dutyAt: exact,
  };
}

function remembered<T>(compute: (index: number) => T): (index: number) => T {
  const known = new Map<number, T>();
  return (index) => {
    const before = known.get(index);
    if (before !== undefined) return before;
    const value = compute(index);
    known.set(index, value);
    return value;
  };
}
