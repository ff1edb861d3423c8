/** Reads the true speeds of a pump at settings of its controller off the heads at its gauges. */

import { buildSpeedMap, speedRatioAt } from '../../curves/speed-map.ts';
import { median } from '../../curves/theil-sen.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import type { Gauge, Row } from './row-collector.ts';

export interface MeasuredSpeed {
  readonly setting: number;
  /** [% of full] */
  readonly speed: number;
  /** Of the speed; null where the row is carried on from the one above. */
  readonly standardError: number | null;
}

export interface MeasuredSpeeds {
  /** By rising setting, from the lowest to the highest of the controller: a speed map of the pump. */
  readonly points: readonly MeasuredSpeed[];
  /** Whether a speed that was read differs from that as entered by more than 2.6 of its errors and over 1 %. */
  readonly differs: boolean;
}

/** Several speeds are looked at: each at 99 %, so that one in twenty maps is suspected by chance. */
const SURE = { errors: 2.6, share: 0.01 } as const;
/** The friction of smooth pipes moves by little between one speed and a near one: these settle to the last digits stated. */
const PASSES = 3;

interface Question {
  readonly pump: PumpModel;
  readonly withStaticHead: boolean;
  /** Standard deviation of one head reading over itself. */
  readonly scale: number;
  /** What gauges would show with a pump. */
  readonly predictedWith: (pump: PumpModel) => (gauge: Gauge) => number;
}

/**
 * r = r(max) sqrt(h(s)/h(max)): where water is not lifted every head of one system goes with the square of the speed, and the
 * head at a closed valve does always. As the friction of smooth pipes falls a little short of the square, the ratio is taken
 * against the one that is predicted at the speeds as entered, then at those found.
 *
 * Null without heads at the highest setting and another one of the same system, or where they do not rise with the setting.
 */
export function measuredSpeeds(rows: readonly Row[], question: Question): MeasuredSpeeds | null {
  const { pump } = question;
  const heads = headsOfOneSystem(rows, {
    max: pump.entered.settings.max,
    withStaticHead: question.withStaticHead,
  });
  let [at, points]: [PumpModel, readonly MeasuredSpeed[]] = [pump, []];
  for (let pass = 0; pass < PASSES; pass += 1) {
    points = speedsBy(heads, at, question);
    const map = points.length < 2 ? null : buildSpeedMap(points, pump.entered.settings);
    if (map === null || !map.ok) return null;
    at = { ...pump, fit: { ...pump.fit, speedMap: map.value } };
  }
  const differs = points.some(({ setting, speed, standardError }) => {
    const off = Math.abs(speed - speedAt(pump, setting));
    return standardError !== null && off > SURE.errors * standardError && off > SURE.share * speed;
  });
  return { points, differs };
}

const speedAt = ({ fit }: PumpModel, setting: number): number => 100 * speedRatioAt(fit.speedMap, setting);

/** From the speeds that a pump is taken to have. */
function speedsBy(
  heads: readonly Row[],
  pump: PumpModel,
  { scale, predictedWith }: Question,
): readonly MeasuredSpeed[] {
  const { min, max } = pump.entered.settings;
  const predicted = predictedWith(pump);
  const shareOf = (head: Row) => median(head.values) / predicted(head);
  const top = heads.at(-1);
  if (top === undefined) return [];
  const points = heads.map((head): MeasuredSpeed => {
    const speed = speedAt(pump, head.setting) * Math.sqrt(shareOf(head) / shareOf(top));
    const relative = (scale * Math.sqrt(1 / head.values.length + 1 / top.values.length)) / 2;
    return { setting: head.setting, speed, standardError: head.setting === max ? 0 : speed * relative };
  });
  const [first] = points;
  if (first === undefined || first.setting === min) return points;
  const below = (speedAt(pump, min) * first.speed) / speedAt(pump, first.setting);
  return [{ setting: min, speed: below, standardError: null }, ...points];
}

/** The heads, by rising setting, of the state of the valves that has most of them, the highest setting included. */
function headsOfOneSystem(
  rows: readonly Row[],
  { max, withStaticHead }: { readonly max: number; readonly withStaticHead: boolean },
): readonly Row[] {
  const systems = new Map<string, Row[]>();
  for (const row of rows) {
    if (row.measure !== 'head' || (withStaticHead && !row.zeroFlow)) continue;
    const key = JSON.stringify([row.zeroFlow, row.shut, row.meter]);
    systems.set(key, [...(systems.get(key) ?? []), row]);
  }
  const whole = [...systems.values()].filter((heads) => heads.some(({ setting }) => setting === max));
  const [most = []] = whole.toSorted((a, b) => b.length - a.length);
  return most.length < 2 ? [] : most.toSorted((a, b) => a.setting - b.setting);
}
