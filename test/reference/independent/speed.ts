/** True speed ratio of a pump at a setting, and the settings its controller offers. */
import type { Pump } from '../../../models/pump/pump.ts';

/** Straight lines between the entered (setting, speed) pairs; without them speed equals setting. */
export function speedRatio(pump: Pump, setting: number): number {
  const map = [...(pump.speedMap ?? [])].sort((a, b) => a.setting - b.setting);
  if (map.length === 0) return setting / 100;
  for (const [index, low] of map.entries()) {
    const high = map[index + 1];
    if (high === undefined || setting < low.setting || setting > high.setting) continue;
    const share = (setting - low.setting) / (high.setting - low.setting);
    return (low.speed * (1 - share) + high.speed * share) / 100;
  }
  throw new Error(`setting ${setting} lies outside the speed map`);
}

/** min + i step up to max, and max itself. */
export function settingsGrid({ min, max, step }: Pump['settings']): readonly number[] {
  const count = Math.floor((max - min) / step + 1e-9);
  const grid = Array.from({ length: count + 1 }, (_, index) => min + index * step);
  const last = grid.at(-1) ?? min;
  return max - last > 1e-9 * max ? [...grid, max] : [...grid.slice(0, -1), max];
}
