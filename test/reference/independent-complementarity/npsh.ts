/** Net positive suction head of a pump, and what a gauge before it reads. */
import { GRAVITY } from '../independent/losses.ts';

/** Vapour pressure [Pa] of fresh water at a temperature [degC] (Wagner and Pruss 2002, eq. 2.5). */
export function vapourPressure(temperature: number): number {
  const tau = 1 - (temperature + 273.15) / 647.096;
  const terms: readonly (readonly [number, number])[] = [
    [-7.85951783, 1],
    [1.84408259, 1.5],
    [-11.7866497, 3],
    [22.6807411, 3.5],
    [-15.9618719, 4],
    [1.80122502, 7.5],
  ];
  const sum = terms.reduce((total, [factor, power]) => total + factor * tau ** power, 0);
  return 22.064e6 * Math.exp((sum * 647.096) / (temperature + 273.15));
}

const EARTH = 6_356_766;

/** Pressure [Pa] of the standard atmosphere of 1976 at a geometric elevation [m] below 11 km. */
export function atmosphere(elevation: number): number {
  const height = (EARTH * elevation) / (EARTH + elevation);
  return 101_325 * (1 - (0.0065 * height) / 288.15) ** 5.255876;
}

/** What a pump sucks from: elevations, losses and velocity head in m, pressures in Pa, density in kg/m3. */
export interface Suction {
  readonly density: number;
  readonly pumpElevation: number;
  readonly loss: number;
  readonly velocityHead: number;
}

export const available = (
  { density, pumpElevation, loss }: Suction,
  water: { readonly temperature: number; readonly elevation: number },
): number =>
  (atmosphere(water.elevation) - vapourPressure(water.temperature)) / (density * GRAVITY) -
  pumpElevation -
  loss;

/** Gauge pressure [Pa] at the centreline. */
export const suctionPressure = ({ density, pumpElevation, loss, velocityHead }: Suction): number =>
  density * GRAVITY * (-pumpElevation - loss - velocityHead);

export interface NpshPoint {
  readonly flow: number;
  readonly head: number;
}

const LEAST_SPEED = 0.8;

/** NPSH required at full speed: lines between the points, held below them, rising with the square of flow beyond. */
function atFullSpeed(points: readonly NpshPoint[], flow: number): number {
  const sorted = [...points].sort((a, b) => a.flow - b.flow);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined) throw new Error('no NPSH points');
  if (flow <= first.flow) return first.head;
  if (flow >= last.flow) return last.head * (flow / last.flow) ** 2;
  const index = sorted.findIndex((point) => point.flow > flow);
  const [low, high] = [sorted[index - 1] ?? first, sorted[index] ?? last];
  return low.head + ((high.head - low.head) * (flow - low.flow)) / (high.flow - low.flow);
}

/** NPSH required [m] at a speed ratio and a flow [m3/s] of one pump; the head does not fall further below 80 % of speed. */
export const required = (points: readonly NpshPoint[], at: { ratio: number; flow: number }): number =>
  Math.max(at.ratio, LEAST_SPEED) ** 2 * atFullSpeed(points, at.flow / at.ratio);
