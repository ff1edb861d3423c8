/** What readings say of a loop: one verdict, by thresholds that are stated. */
import type { Assessed } from './assess-series.ts';
import { type MeterSlip, meterSlip } from './meter-error.ts';
import type { PressureGaps } from './pressure-gaps.ts';
import { errorsFor } from './recent-window.ts';

export const VERDICTS = [
  'not-enough-readings',
  'meter-fault',
  'pump-stopped',
  'draws-more-than-its-curve',
  'clogged-intake',
  'clogged-discharge',
  'worn-pump',
  'clogged-branch',
  'clogged',
  'flow-loss',
  'no-known-fault',
  'as-expected',
] as const;

export type Verdict = (typeof VERDICTS)[number];

/** Shares of what is predicted; each must also be told from 0 at 95 %. Gaps are shares of the head. */
export const THRESHOLDS = {
  flowDown: 0.05,
  outletDown: 0.1,
  flowUp: 0.1,
  flowWorn: 0.02,
  powerDown: 0.02,
  powerUp: 0.08,
  powerFarDown: 0.1,
  suctionGap: 0.04,
  dischargeGap: 0.04,
  pumpGap: 0.05,
  headOff: 0.08,
  pressureOff: 0.1,
  stoppedFlow: 0.05,
  stoppedPower: 0.08,
} as const;

export interface Judged {
  readonly verdict: Verdict;
  /** Why meters are doubted; null where they are not. */
  readonly slip: MeterSlip | null;
  /** The outlets of a clogged branch. */
  readonly places: readonly string[];
  /** How many of several pumps run where some stand still; null else. */
  readonly running: number | null;
  /** What pressures show besides a pump that draws more than its curve. */
  readonly also: Verdict | null;
}

/** The residuals that there would be with fewer of the pumps running. */
export interface FewerPumps {
  readonly running: number;
  readonly flow: number;
  readonly power: number;
}

export interface Signs {
  readonly assessed: readonly Assessed[];
  readonly gaps: PressureGaps;
  /** Of one pump: none. */
  readonly fewer: readonly FewerPumps[];
}

const isBelow = (one: Assessed | null, threshold: number): boolean =>
  one !== null && one.residual < -Math.max(threshold, errorsFor(one.present) * one.standardError);

const isAbove = (one: Assessed | null, threshold: number): boolean =>
  one !== null && one.residual > Math.max(threshold, errorsFor(one.present) * one.standardError);

/** The flow that a verdict goes by: the total, else that of the outlet with the median residual. */
export function flowOf(assessed: readonly Assessed[]): Assessed | null {
  const total = assessed.find(({ measure }) => measure === 'flow');
  if (total !== undefined) return total;
  const outlets = assessed
    .filter(({ measure }) => measure === 'outletFlow')
    .toSorted((a, b) => a.residual - b.residual);
  return outlets[Math.floor((outlets.length - 1) / 2)] ?? null;
}

/**
 * Signatures, the first that applies: too few readings; a slip of a meter; flow and power as with fewer pumps; power up (fouled
 * impeller, bearing) unless flow is up too; some outlets down and the others not; flow down with a gap on the suction side, the
 * discharge side or at the pump, the greatest of them; flow down with power, or with a pump that is on its curve; flow down
 * alone, or one outlet's; flow hardly down with a pump below its curve; flow up, power far down, head or pressures elsewhere, which no fault explains.
 */
export function judge({ assessed, gaps, fewer }: Signs): Judged {
  const of = (wanted: Assessed['measure']) => assessed.find(({ measure }) => measure === wanted) ?? null;
  const [flow, power, head] = [flowOf(assessed), of('power'), of('head')];
  const verdict = (one: Verdict, more: Partial<Judged> = {}): Judged => ({ ...PLAIN, verdict: one, ...more });
  if (flow === null && power === null) return verdict('not-enough-readings');
  const slip = meterSlip({ flow, power, head }, gaps);
  if (slip !== null) return verdict('meter-fault', { slip });
  const stopped = fewer.find((one) => isAs(one, flow, power));
  if (stopped !== undefined) return verdict('pump-stopped', { running: stopped.running });
  const isMore = isAbove(flow, THRESHOLDS.flowUp);
  // Where few flows leave it in doubt, pressures that show where it is lost take the doubt away.
  const isDown = flow !== null && flow.residual < -THRESHOLDS.flowDown;
  const isShown = isDown && flow.present >= SHOWN_LEAST && placeOf(gaps) !== null;
  const isLess = isBelow(flow, THRESHOLDS.flowDown) || isShown;
  if (isAbove(power, THRESHOLDS.powerUp) && !isMore) {
    return verdict('draws-more-than-its-curve', { also: isLess ? placeOf(gaps) : null });
  }
  const places = cloggedOutlets(assessed);
  if (places.length > 0) return verdict('clogged-branch', { places });
  if (isLess) return verdict(lessBecause(power, gaps));
  if (assessed.some((one) => one.measure === 'outletFlow' && isBelow(one, THRESHOLDS.outletDown))) {
    return verdict('flow-loss');
  }
  if (isMore || isBelow(power, THRESHOLDS.powerFarDown)) {
    return verdict(flow === null ? 'flow-loss' : 'no-known-fault');
  }
  // Wear takes head first, and flow only by half as much on a loop without static head.
  if (isBelow(flow, THRESHOLDS.flowWorn) && wornOf(gaps) !== null) return verdict('worn-pump');
  const isElsewhere =
    !isDown &&
    (isOff(head, THRESHOLDS.headOff) ||
      [of('suctionPressure'), of('dischargePressure')].some((one) => isOff(one, THRESHOLDS.pressureOff)));
  return verdict(isElsewhere ? 'no-known-fault' : 'as-expected');
}

/** Readings at which pressures show what flows leave in doubt. */
const SHOWN_LEAST = 4;

const PLAIN = { slip: null, places: [], running: null, also: null } as const;

const isOff = (one: Assessed | null, threshold: number): boolean =>
  isAbove(one, threshold) || isBelow(one, threshold);

const isAs = (one: FewerPumps, flow: Assessed | null, power: Assessed | null): boolean =>
  flow !== null &&
  power !== null &&
  Math.abs(flow.residual - one.flow) < THRESHOLDS.stoppedFlow &&
  Math.abs(power.residual - one.power) < THRESHOLDS.stoppedPower;

/** Outlets that give less while those measured besides do not; none where all are alike. */
function cloggedOutlets(assessed: readonly Assessed[]): readonly string[] {
  const outlets = assessed.filter(({ measure }) => measure === 'outletFlow');
  const down = outlets.filter((one) => isBelow(one, THRESHOLDS.outletDown));
  const others = outlets.filter((one) => !down.includes(one));
  const isApart = others.length > 0 && others.every((one) => !isBelow(one, THRESHOLDS.flowDown));
  return isApart ? down.flatMap(({ outlet }) => outlet ?? []) : [];
}

function lessBecause(power: Assessed | null, gaps: PressureGaps): Verdict {
  // A clog takes power with the flow: where power is seen to rise, pressures alone do not place one.
  const found = isAbove(power, THRESHOLDS.powerDown) ? wornOf(gaps) : placeOf(gaps);
  if (found !== null) return found;
  const isSound = gaps.pump !== null && gaps.pump > -THRESHOLDS.pumpGap;
  return isSound || isBelow(power, THRESHOLDS.powerDown) ? 'clogged' : 'flow-loss';
}

const wornOf = ({ pump }: PressureGaps): Verdict | null =>
  (pump ?? 0) < -THRESHOLDS.pumpGap ? 'worn-pump' : null;

function placeOf({ suction, discharge, pump }: PressureGaps): Verdict | null {
  const [first] = [
    { verdict: 'clogged-intake', over: -(suction ?? 0) / THRESHOLDS.suctionGap } as const,
    { verdict: 'clogged-discharge', over: (discharge ?? 0) / THRESHOLDS.dischargeGap } as const,
    { verdict: 'worn-pump', over: -(pump ?? 0) / THRESHOLDS.pumpGap } as const,
  ]
    .filter(({ over }) => over > 1)
    .toSorted((a, b) => b.over - a.over);
  return first?.verdict ?? null;
}
