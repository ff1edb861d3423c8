/** Gives the true speed of a pump at a setting of its controller. */
import { PERCENT } from './percent.ts';
import { failed, type Result, success } from './result.ts';

/** Pairs of setting [%] and true speed [% of full], strictly rising in both. Made by `buildSpeedMap` alone. */
export interface SpeedMap {
  readonly settings: readonly number[];
  readonly speeds: readonly number[];
}

/** Why points make no speed map: index [-] of a point in the list given; needed setting [%]. */
export type SpeedMapFailure =
  | { readonly code: 'speed-map-not-rising'; readonly index: number; readonly member: 'setting' | 'speed' }
  | {
      readonly code: 'speed-map-too-short';
      /** The end point that does not reach `needed` [-]. */
      readonly index: number;
      readonly needed: number;
    };

const IDENTITY: SpeedMap = { settings: [0, PERCENT], speeds: [0, PERCENT] };

/**
 * The speed map through some points, in the order given; without points speed equals setting.
 *
 * @param points setting [%] and true speed [% of full].
 * @param settings lowest and highest setting of the pump [%].
 * Errors: `speed-map-not-rising` names the first point that does not exceed the one before it; `speed-map-too-short`
 *   the end that does not reach min or max.
 */
export function buildSpeedMap(
  points: readonly { readonly setting: number; readonly speed: number }[] | undefined,
  { min, max }: { readonly min: number; readonly max: number },
): Result<SpeedMap, SpeedMapFailure> {
  if (points === undefined) return success(IDENTITY);
  for (const [index, point] of points.entries()) {
    const before = index === 0 ? undefined : points[index - 1];
    if (before === undefined) continue;
    if (!(point.setting > before.setting))
      return failed({ code: 'speed-map-not-rising', index, member: 'setting' });
    if (!(point.speed > before.speed))
      return failed({ code: 'speed-map-not-rising', index, member: 'speed' });
  }
  const settings = points.map((point) => point.setting);
  const last = settings.length - 1;
  if (!((settings[0] ?? Infinity) <= min))
    return failed({ code: 'speed-map-too-short', index: 0, needed: min });
  if (!((settings[last] ?? -Infinity) >= max))
    return failed({ code: 'speed-map-too-short', index: last, needed: max });
  return success({ settings, speeds: points.map((point) => point.speed) });
}

/**
 * The speed ratio r [-], 0 or more, at a setting [%]: linear between the points of the map.
 *
 * Beyond its ends, where only entered points can lie, the end pieces go on, not below a stopped pump; a map of one
 * point holds its speed.
 */
export function speedRatioAt({ settings, speeds }: SpeedMap, setting: number): number {
  const above = settings.findIndex((entry) => entry >= setting);
  const last = settings.length - 1;
  const high = Math.min(last, Math.max(1, above < 0 ? last : above));
  const low = Math.max(0, high - 1);
  const [from = 0, to = from] = [settings[low], settings[high]];
  const [start = 0, end = start] = [speeds[low], speeds[high]];
  if (setting === to || to === from) return end / PERCENT;
  return Math.max(0, start + (setting - from) * ((end - start) / (to - from))) / PERCENT;
}
