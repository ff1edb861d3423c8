/** The true speeds of a pump at settings of its controller, told by gauge readings. */
import { speedRatioAt } from '../../curves/speed-map.ts';
import type { PumpModel } from '../pump-model.ts';
import type { Gauge, Measured } from './measured.ts';

export interface GaugeSpeed {
  readonly setting: number;
  /** [% of full] */
  readonly speed: number;
  /** Of the speed; null where the row is carried on from the one above. */
  readonly standardError: number | null;
}

export interface GaugeSpeeds {
  /** By rising setting, from the lowest to the highest of the controller: a speed map of the pump. */
  readonly points: readonly GaugeSpeed[];
  /** Whether a speed differs from that as entered by more than twice its error and over 1 %. */
  readonly differs: boolean;
}

const SURE = { errors: 2, share: 0.01 } as const;

/**
 * r = r(max) sqrt(h(s)/h(max)): where water is not lifted every head of one system goes with the square of the speed, and the
 * head at a shut valve does always. As the friction of smooth pipes falls a little short of the square, the ratio is taken
 * against the one that is `predicted` with the speeds as entered. `variance`: relative, of one head reading.
 *
 * Null without heads at the highest setting and another one of the same system, or where they do not rise with the setting.
 */
export function gaugeSpeeds(
  rows: readonly Measured[],
  {
    pump: { pump, fit },
    withStaticHead,
    variance,
    predicted,
  }: {
    readonly pump: PumpModel;
    readonly withStaticHead: boolean;
    readonly variance: number;
    readonly predicted: (gauge: Gauge) => number;
  },
): GaugeSpeeds | null {
  const { min, max } = pump.settings;
  const heads = headsOfOneSystem(rows, { max, withStaticHead });
  const top = heads.at(-1);
  if (top === undefined || heads.length < 2) return null;
  const enteredAt = (setting: number) => 100 * speedRatioAt(fit.speedMap, setting);
  const shareOf = (head: Measured) => head.mean / predicted(head);
  const points = heads.map((head): GaugeSpeed => {
    const { setting, count } = head;
    const speed = enteredAt(setting) * Math.sqrt(shareOf(head) / shareOf(top));
    const relative = setting === max ? 0 : Math.sqrt(variance / count + variance / top.count) / 2;
    return { setting, speed, standardError: speed * relative };
  });
  const [lowest] = points;
  if (lowest === undefined || !isRising(points)) return null;
  const below: readonly GaugeSpeed[] =
    lowest.setting === min
      ? []
      : [
          {
            setting: min,
            speed: (enteredAt(min) * lowest.speed) / enteredAt(lowest.setting),
            standardError: null,
          },
        ];
  const differs = points.some(({ setting, speed, standardError }) => {
    const off = Math.abs(speed - enteredAt(setting));
    return off > SURE.errors * (standardError ?? 0) && off > SURE.share * speed;
  });
  return { points: [...below, ...points], differs };
}

const isRising = (points: readonly GaugeSpeed[]): boolean =>
  points.every(({ speed }, index) => index === 0 || speed > (points[index - 1]?.speed ?? 0));

/** The heads, by rising setting, of the state of the valves that has most of them, the highest setting included. */
function headsOfOneSystem(
  rows: readonly Measured[],
  { max, withStaticHead }: { readonly max: number; readonly withStaticHead: boolean },
): readonly Measured[] {
  const systems = new Map<string, Measured[]>();
  for (const row of rows) {
    if (row.measure !== 'head' || (withStaticHead && !row.zeroFlow)) continue;
    const key = JSON.stringify([row.zeroFlow, row.shut]);
    systems.set(key, [...(systems.get(key) ?? []), row]);
  }
  const whole = [...systems.values()].filter((heads) => heads.some(({ setting }) => setting === max));
  const [most = []] = whole.toSorted((a, b) => b.length - a.length);
  return most.toSorted((a, b) => a.setting - b.setting);
}
