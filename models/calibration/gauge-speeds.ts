/** The true speeds of a pump at settings of its controller, told by gauge readings. */
import { buildSpeedMap, speedRatioAt } from '../../curves/speed-map.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import type { Gauge, Measured } from './measured-rows.ts';

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
  /** Whether a speed that was read differs from that as entered by more than 2.6 of its errors and over 1 %. */
  readonly differs: boolean;
}

/** Several speeds are looked at: each at 99 %, so that one in twenty maps is suspected by chance. */
const SURE = { errors: 2.6, share: 0.01 } as const;

/** What gauges would show with a pump. */
type PredictedWith = (pump: PumpModel) => (gauge: Gauge) => number;

/** The friction of smooth pipes moves by little between one speed and a near one: these settle to the last digits told. */
const PASSES = 3;

/**
 * r = r(max) sqrt(h(s)/h(max)): where water is not lifted every head of one system goes with the square of the speed, and the
 * head at a shut valve does always. As the friction of smooth pipes falls a little short of the square, the ratio is taken
 * against the one that is predicted at the speeds as entered, then at those found. `variance`: relative, of one head reading.
 *
 * Null without heads at the highest setting and another one of the same system, or where they do not rise with the setting.
 */
export function gaugeSpeeds(
  rows: readonly Measured[],
  {
    pump,
    withStaticHead,
    variance,
    predictedWith,
  }: {
    readonly pump: PumpModel;
    readonly withStaticHead: boolean;
    readonly variance: number;
    readonly predictedWith: PredictedWith;
  },
): GaugeSpeeds | null {
  const heads = headsOfOneSystem(rows, { max: pump.entered.settings.max, withStaticHead });
  if (heads.length < 2) return null;
  let [at, found] = [pump, speedsBy(heads, { pump, variance, predicted: predictedWith(pump) })];
  for (let pass = 1; pass < PASSES && found !== null; pass += 1) {
    const map = buildSpeedMap(found, pump.entered.settings);
    if (!map.ok) return null;
    at = { ...pump, fit: { ...pump.fit, speedMap: map.value } };
    found = speedsBy(heads, { pump: at, variance, predicted: predictedWith(at) });
  }
  return found === null ? null : { points: found, differs: differsFrom(pump, found) };
}

const speedAt = ({ fit }: PumpModel, setting: number): number => 100 * speedRatioAt(fit.speedMap, setting);

function differsFrom(pump: PumpModel, points: readonly GaugeSpeed[]): boolean {
  return points.some(({ setting, speed, standardError }) => {
    const off = Math.abs(speed - speedAt(pump, setting));
    return standardError !== null && off > SURE.errors * standardError && off > SURE.share * speed;
  });
}

/** From the speeds that a pump is taken to have; null where they do not rise. */
function speedsBy(
  heads: readonly Measured[],
  {
    pump,
    variance,
    predicted,
  }: {
    readonly pump: PumpModel;
    readonly variance: number;
    readonly predicted: (gauge: Gauge) => number;
  },
): readonly GaugeSpeed[] | null {
  const { min, max } = pump.entered.settings;
  const [lowest, top] = [heads[0], heads.at(-1)];
  if (lowest === undefined || top === undefined) return null;
  const shareOf = (head: Measured) => head.mean / predicted(head);
  const points = heads.map((head): GaugeSpeed => {
    const { setting, count } = head;
    const speed = speedAt(pump, setting) * Math.sqrt(shareOf(head) / shareOf(top));
    const relative = setting === max ? 0 : Math.sqrt(variance / count + variance / top.count) / 2;
    return { setting, speed, standardError: speed * relative };
  });
  const [first] = points;
  if (first === undefined || !isRising(points)) return null;
  if (first.setting === min) return points;
  const below = (speedAt(pump, min) * first.speed) / speedAt(pump, first.setting);
  return [{ setting: min, speed: below, standardError: null }, ...points];
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
