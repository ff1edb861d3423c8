/** Readings that a meter, or the unit that it was read in, explains better than the loop does. */
import type { Assessed } from './assess-series.ts';
import { cameAbout, cameGradually } from './onset.ts';
import type { PressureGaps } from './pressure-gaps.ts';

/** What is measured by a meter that may be in error. */
export const METERS = ['flow', 'power', 'head'] as const;

/** Two units that are mixed up, or apparent power taken for active power. */
export const UNIT_MIX_UPS = [
  'gallons-and-litres',
  'hours-and-minutes',
  'watts-and-kilowatts',
  'apparent-power',
  'feet-and-metres',
  'kilopascals-and-metres',
  'psi-and-kilopascals',
  'psi-and-metres',
] as const;

/** What the readings differ by: flow, power or head measured is about `factor` times what it should be. */
export interface MeterSlip {
  readonly meter: (typeof METERS)[number];
  readonly likely: (typeof UNIT_MIX_UPS)[number] | null;
  /** The known factor that it comes close to; null where there is none. */
  readonly factor: number | null;
}

type Level = Pick<Assessed, 'residual' | 'standardError' | 'points'>;

interface Levels {
  readonly flow: Level | null;
  readonly power: Level | null;
  readonly head: Level | null;
}

interface KnownFactor {
  readonly factor: number;
  readonly likely: MeterSlip['likely'];
  /** How near a ratio must come to it, in its logarithm. */
  readonly near?: number;
}

/** Psi and feet in a metre of water, kilopascals in a psi, kilopascals in a metre. */
const HEAD_FACTORS: readonly KnownFactor[] = [
  { factor: 1.42, likely: 'psi-and-metres', near: 0.05 },
  { factor: 3.2808, likely: 'feet-and-metres' },
  { factor: 6.895, likely: 'psi-and-kilopascals' },
  { factor: 10, likely: 'kilopascals-and-metres' },
];
/** Share of the head by which a reading lies off a curve. */
const OFF_CURVES = 0.08;

/** Litres in a US and in an imperial gallon, minutes in an hour, watts in a kilowatt. */
const FLOW_FACTORS: readonly KnownFactor[] = [
  { factor: 3.785, likely: 'gallons-and-litres' },
  { factor: 4.546, likely: 'gallons-and-litres' },
  { factor: 60, likely: 'hours-and-minutes' },
  { factor: 60 * 3.785, likely: null },
];
const POWER_FACTORS: readonly KnownFactor[] = [{ factor: 1000, likely: 'watts-and-kilowatts' }];
const UNKNOWN = { likely: null, factor: null } as const;
/** How near a ratio comes to a factor that states no other, in its logarithm. */
const NEAR = 0.15;
/** Flow at a setting cannot be so far above what the pump's curve gives; nor so far below while power stays. */
const FLOW_RATIO = { most: 1.5, least: 0.1 } as const;
/** Power as it should be, beside a flow that is not. */
const POWER_AS_EXPECTED = 0.25;
/** Volt-amperes over watts of small drives (power factors of 0.43 to 0.74); flow as it should be. */
const APPARENT = { least: 1.35, most: 2.3, flow: 0.05 } as const;

/** The factor, or one over it, that a ratio comes nearest to; null where it comes near none. */
function nearest(
  ratio: number,
  factors: readonly KnownFactor[],
): Pick<MeterSlip, 'factor' | 'likely'> | null {
  if (ratio <= 0) return null;
  const off = ({ factor }: KnownFactor) => Math.abs(Math.log(ratio / factor));
  const [first] = factors
    .flatMap((known) => [known, { ...known, factor: 1 / known.factor }])
    .filter((known) => off(known) < (known.near ?? NEAR))
    .toSorted((a, b) => off(a) - off(b));
  return first === undefined ? null : { factor: first.factor, likely: first.likely };
}

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
  return { meter: 'head', ...(nearest(1 + head.residual, HEAD_FACTORS) ?? UNKNOWN) };
}

/** A head below the pump's curve and above the loop's at the measured flow, from the first reading on: the flow reads low. */
function flowBesideHead(
  flow: Level | null,
  { pump, system }: Pick<PressureGaps, 'pump' | 'system'>,
): MeterSlip | null {
  if (flow === null || pump === null || system === null || cameAbout(flow)) return null;
  const isBetween = pump < -OFF_CURVES && system > OFF_CURVES;
  return isBetween ? { meter: 'flow', ...UNKNOWN } : null;
}

function flowSlip(flow: Level | null, power: Level | null): MeterSlip | null {
  if (flow === null) return null;
  const ratio = 1 + flow.residual;
  // A loop changes little by little; a unit is wrong from the first reading on, or from one reading to the next.
  const powerStays =
    power === null ? !cameAbout(flow) : !cameGradually(flow) && Math.abs(power.residual) < POWER_AS_EXPECTED;
  const known = powerStays ? nearest(ratio, FLOW_FACTORS) : null;
  if (known !== null) return { meter: 'flow', ...known };
  const isImpossible = ratio > FLOW_RATIO.most || (power !== null && powerStays && ratio < FLOW_RATIO.least);
  return isImpossible ? { meter: 'flow', ...UNKNOWN } : null;
}

function powerSlip(flow: Level | null, power: Level | null): MeterSlip | null {
  if (power === null) return null;
  const ratio = 1 + power.residual;
  const known = nearest(ratio, POWER_FACTORS);
  if (known !== null) return { meter: 'power', ...known };
  const flowStays = flow !== null && Math.abs(flow.residual) < APPARENT.flow;
  const isApparent = ratio > APPARENT.least && ratio < APPARENT.most;
  if (flowStays && isApparent && !cameAbout(power)) {
    return { meter: 'power', likely: 'apparent-power', factor: ratio };
  }
  const isImpossible = ratio > APPARENT.most || (flowStays && ratio < 1 / APPARENT.most);
  return isImpossible ? { meter: 'power', ...UNKNOWN } : null;
}
