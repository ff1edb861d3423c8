/** What readings say of a loop: one verdict, by thresholds that are stated. */
import type { Assessed } from './assess-series.ts';
import { type MeterSlip, meterSlip } from './meter-slip.ts';
import type { PressureGaps } from './pressure-gaps.ts';

export const VERDICTS = [
  'not-enough-readings',
  'meter-doubtful',
  'draws-more-than-its-curve',
  'clogged-intake',
  'clogged-discharge',
  'worn-pump',
  'clogged',
  'less-flow',
  'entries-doubtful',
  'as-expected',
] as const;

export type Verdict = (typeof VERDICTS)[number];

/** Shares of what is predicted; each must also be over two standard errors away from 0. Gaps are shares of the head. */
export const THRESHOLDS = {
  flowDown: 0.05,
  outletDown: 0.1,
  flowUp: 0.1,
  powerDown: 0.02,
  powerUp: 0.08,
  powerFarDown: 0.1,
  suctionGap: 0.04,
  dischargeGap: 0.04,
  pumpGap: 0.05,
} as const;

const ERRORS = 2;

export interface Judged {
  readonly verdict: Verdict;
  /** Why meters are doubted; null where they are not. */
  readonly slip: MeterSlip | null;
}

const isBelow = (one: Assessed | null, threshold: number): boolean =>
  one !== null && one.residual < -Math.max(threshold, ERRORS * one.standardError);

const isAbove = (one: Assessed | null, threshold: number): boolean =>
  one !== null && one.residual > Math.max(threshold, ERRORS * one.standardError);

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
 * Signatures, the first that applies: too few readings; a slip of a meter; power up (fouled impeller, bearing) unless flow is
 * up too; flow down with a gap on the suction side, the discharge side or at the pump, the greatest of them; flow down with
 * power, or with a pump that is on its curve; flow down alone, or one outlet's; flow up or power far down, which no fault explains.
 */
export function judge(assessed: readonly Assessed[], gaps: PressureGaps): Judged {
  const flow = flowOf(assessed);
  const power = assessed.find(({ measure }) => measure === 'power') ?? null;
  const verdict = (one: Verdict): Judged => ({ verdict: one, slip: null });
  if (flow === null && power === null) return verdict('not-enough-readings');
  const head = assessed.find(({ measure }) => measure === 'head') ?? null;
  const slip = meterSlip({ flow, power, head }, gaps);
  if (slip !== null) return { verdict: 'meter-doubtful', slip };
  const isMore = isAbove(flow, THRESHOLDS.flowUp);
  if (isAbove(power, THRESHOLDS.powerUp) && !isMore) return verdict('draws-more-than-its-curve');
  if (isBelow(flow, THRESHOLDS.flowDown)) {
    // A clog takes power with the flow: where power is seen to rise, pressures alone do not place one.
    const found = placeOf(gaps, !isAbove(power, THRESHOLDS.powerDown));
    const isSound = gaps.pump !== null && gaps.pump > -THRESHOLDS.pumpGap;
    return verdict(found ?? (isSound || isBelow(power, THRESHOLDS.powerDown) ? 'clogged' : 'less-flow'));
  }
  if (assessed.some((one) => one.measure === 'outletFlow' && isBelow(one, THRESHOLDS.outletDown))) {
    return verdict('less-flow');
  }
  if (isMore || isBelow(power, THRESHOLDS.powerFarDown)) {
    return verdict(flow === null ? 'less-flow' : 'entries-doubtful');
  }
  return verdict('as-expected');
}

function placeOf({ suction, discharge, pump }: PressureGaps, mayBeClog: boolean): Verdict | null {
  const clogs = [
    { verdict: 'clogged-intake', over: -(suction ?? 0) / THRESHOLDS.suctionGap },
    { verdict: 'clogged-discharge', over: (discharge ?? 0) / THRESHOLDS.dischargeGap },
  ] as const;
  const worn = { verdict: 'worn-pump', over: -(pump ?? 0) / THRESHOLDS.pumpGap } as const;
  const [first] = [...(mayBeClog ? clogs : []), worn]
    .filter(({ over }) => over > 1)
    .toSorted((a, b) => b.over - a.over);
  return first?.verdict ?? null;
}
