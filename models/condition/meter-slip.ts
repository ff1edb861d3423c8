/** Readings that a meter, or the unit that it was read in, explains better than the loop does. */
import { type Assessed, cameAbout } from './assess-series.ts';
import type { PressureGaps } from './pressure-gaps.ts';

/** What the readings differ by: flow, power or head measured is about `factor` times what it should be. */
export interface MeterSlip {
  readonly meter: 'flow' | 'power' | 'head';
  readonly likely:
    | 'gallons-and-litres'
    | 'hours-and-minutes'
    | 'watts-and-kilowatts'
    | 'apparent-power'
    | 'feet-and-metres'
    | 'kilopascals-and-metres'
    | null;
  /** The known factor that it comes close to; null where there is none. */
  readonly factor: number | null;
}

type Level = Pick<Assessed, 'residual' | 'trend' | 'points'>;

interface Levels {
  readonly flow: Level | null;
  readonly power: Level | null;
  readonly head: Level | null;
}

/** Feet in a metre, kilopascals in a metre of water. */
const HEAD_FACTORS = [
  { factor: 3.2808, likely: 'feet-and-metres' },
  { factor: 10, likely: 'kilopascals-and-metres' },
] as const;
/** Share of the head by which a reading lies off a curve. */
const OFF_CURVES = 0.08;

/** Litres in a US gallon, minutes in an hour, watts in a kilowatt. */
const FLOW_FACTORS = [
  { factor: 3.785, likely: 'gallons-and-litres' },
  { factor: 60, likely: 'hours-and-minutes' },
  { factor: 60 * 3.785, likely: null },
] as const;
const KILO = 1000;
/** How near a ratio comes to a factor, in its logarithm. */
const NEAR = 0.15;
/** Flow at a setting cannot be so far above what the pump's curve gives; nor so far below while power stays. */
const FLOW_RATIO = { most: 1.5, least: 0.1 } as const;
/** Power as it should be, beside a flow that is not. */
const POWER_AS_EXPECTED = 0.25;
/** Volt-amperes over watts of small drives (power factors of 0.43 to 0.74); flow as it should be. */
const APPARENT = { least: 1.35, most: 2.3, flow: 0.05 } as const;

const isNear = (ratio: number, factor: number): boolean => Math.abs(Math.log(ratio / factor)) < NEAR;

/** Null where the readings may well be right. */
export function meterSlip(
  { flow, power, head }: Levels,
  gaps: Pick<PressureGaps, 'pump' | 'system'>,
): MeterSlip | null {
  return (
    flowSlip(flow, power) ?? powerSlip(flow, power) ?? headSlip(head, gaps) ?? flowBesideHead(flow, gaps)
  );
}

/** A head off both curves at the measured flow, the pump's and the loop's, on one side: neither wear nor a clog does that. */
function headSlip(
  head: Level | null,
  { pump, system }: Pick<PressureGaps, 'pump' | 'system'>,
): MeterSlip | null {
  if (head === null || pump === null || system === null) return null;
  if (Math.min(Math.abs(pump), Math.abs(system)) < OFF_CURVES || pump * system < 0) return null;
  const ratio = 1 + head.residual;
  for (const { factor, likely } of HEAD_FACTORS) {
    if (ratio > 0 && isNear(ratio, factor)) return { meter: 'head', likely, factor };
    if (ratio > 0 && isNear(ratio, 1 / factor)) return { meter: 'head', likely, factor: 1 / factor };
  }
  return { meter: 'head', likely: null, factor: null };
}

/** A head below the pump's curve and above the loop's at the measured flow, from the first reading on: the flow reads low. */
function flowBesideHead(
  flow: Level | null,
  { pump, system }: Pick<PressureGaps, 'pump' | 'system'>,
): MeterSlip | null {
  if (flow === null || pump === null || system === null || cameAbout(flow)) return null;
  const isBetween = pump < -OFF_CURVES && system > OFF_CURVES;
  return isBetween ? { meter: 'flow', likely: null, factor: null } : null;
}

function flowSlip(flow: Level | null, power: Level | null): MeterSlip | null {
  if (flow === null) return null;
  const ratio = 1 + flow.residual;
  // A loop changes in time; a unit is wrong from the first reading on.
  const powerStays = power === null ? !cameAbout(flow) : Math.abs(power.residual) < POWER_AS_EXPECTED;
  if (ratio > 0 && powerStays) {
    for (const { factor, likely } of FLOW_FACTORS) {
      if (isNear(ratio, factor)) return { meter: 'flow', likely, factor };
      if (isNear(ratio, 1 / factor)) return { meter: 'flow', likely, factor: 1 / factor };
    }
  }
  const isImpossible = ratio > FLOW_RATIO.most || (power !== null && powerStays && ratio < FLOW_RATIO.least);
  return isImpossible ? { meter: 'flow', likely: null, factor: null } : null;
}

function powerSlip(flow: Level | null, power: Level | null): MeterSlip | null {
  if (power === null) return null;
  const ratio = 1 + power.residual;
  for (const factor of [KILO, 1 / KILO]) {
    if (ratio > 0 && isNear(ratio, factor)) return { meter: 'power', likely: 'watts-and-kilowatts', factor };
  }
  const flowStays = flow !== null && Math.abs(flow.residual) < APPARENT.flow;
  const isApparent = ratio > APPARENT.least && ratio < APPARENT.most;
  if (flowStays && isApparent && !cameAbout(power)) {
    return { meter: 'power', likely: 'apparent-power', factor: ratio };
  }
  const isImpossible = ratio > APPARENT.most || (flowStays && ratio < 1 / APPARENT.most);
  return isImpossible ? { meter: 'power', likely: null, factor: null } : null;
}
