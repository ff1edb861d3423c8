/** Lists the settings at which a phase may move its volume. */

import { estimateDuty, type SampledLoop } from '../duty/sampled-loop.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import type { Settings } from '../pump/pump.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import { criteriaFor } from '../selection/criteria.ts';
import { EQUAL, holds } from '../selection/criterion.ts';
import type { Station } from './phase-duty.ts';
import type { VolumeDemand } from './schedule.ts';
import type { Choice } from './volume/volume-plan.ts';

/** A setting that a volume may be moved at. */
export interface VolumeChoice extends Choice {
  /** [% of full]; 0 is stopped. */
  readonly setting: number;
}

/** Settings of a grid that a volume chooses among at most; finer grids are taken at even strides. */
const CHOICES_MOST = 1001;

/**
 * How many settings of the grid [-], from the highest down, a volume goes on by from one choice to the next; 1: all
 * are choices.
 */
export const volumeStride = (settings: Settings): number => Math.ceil(gridSize(settings) / CHOICES_MOST);

/**
 * The settings with flows [m3/s] between floor and ceiling at which all criteria hold, by their duties on the samples
 * of the loop.
 */
export function volumeChoices(
  sampled: SampledLoop,
  loop: CompiledLoop,
  station: Station,
  { floor = 0, ceiling = Number.POSITIVE_INFINITY, mayStop }: VolumeDemand,
): readonly VolumeChoice[] {
  const { pump, count } = station;
  const { settings, standbyPower } = pump.entered;
  const criteria = criteriaFor({ ...station, loop });
  const size = gridSize(settings);
  const stride = volumeStride(settings);
  const choices: VolumeChoice[] = [];
  let guess: number | undefined;
  for (let index = size - 1; index >= 0; index -= stride) {
    const setting = settingAt(settings, index);
    const duty = estimateDuty(sampled, pumpAtSetting(pump, { setting, count }), guess);
    const { flow, power, deadHead } = duty;
    if (!deadHead) guess = flow;
    const inside = flow >= floor * (1 - EQUAL) && flow <= ceiling * (1 + EQUAL);
    if (deadHead || !inside || !criteria.every((one) => holds(one.judge(duty)))) continue;
    choices.push({ setting, flow, power });
  }
  if (mayStop) choices.push({ setting: 0, flow: 0, power: count * standbyPower });
  return choices;
}
