/** The condition of a loop: what was measured against its data, what that means, and what to expect. */
import { hasStaticHead } from '../has-static-head.ts';
import { type Assessed, assessSeries, ofNow } from './assess-series.ts';
import { predictedAt, type Station } from './predicted.ts';
import { pressureGaps } from './pressure-gaps.ts';
import type { Reading } from './reading.ts';
import { type LeftOut, residualsOf } from './residuals.ts';
import { type Shortfall, shortfall } from './shortfall.ts';
import { flowOf, type Judged, judge } from './verdict.ts';
import { type Waiting, waiting } from './waiting.ts';

export interface ConditionQuestion {
  readonly station: Station;
  /** What the pump is set to usually [%]. */
  readonly setting: number;
  /** In the order of time. */
  readonly readings: readonly Reading[];
  /** Money per kWh; null: not known. */
  readonly price: number | null;
  /** Money for one cleaning; null: not known. */
  readonly cleaningCost: number | null;
}

export interface Condition extends Judged {
  readonly assessed: readonly Assessed[];
  readonly shortfall: Shortfall | null;
  /** Null without a price, or where the drift is not told apart from none. */
  readonly waiting: Waiting | null;
  /** Whether there is static head, with which speed does not win flow back by its power law. */
  readonly hasStaticHead: boolean;
  readonly used: number;
  readonly leftOut: LeftOut;
}

/** Throws `SolveFailure` where the loop is not solved. */
export function conditionOf(question: ConditionQuestion): Condition {
  const { station, readings } = question;
  const residuals = residualsOf(station, readings);
  const assessed = residuals.series.flatMap((series) => assessSeries(series) ?? []);
  const present = ofNow(assessed);
  const judged = judge(present, pressureGaps(station, residuals));
  const expected = predictedAt(station, question.setting);
  // What a doubtful meter says of the future is as doubtful.
  const isTrusted = judged.slip === null && expected !== null;
  const { outlets } = station.loop.system;
  const withStaticHead = hasStaticHead(station.loop);
  return {
    ...judged,
    assessed,
    shortfall: isTrusted ? shortfall({ assessed: present, outlets, predicted: expected.outletFlows }) : null,
    waiting:
      isTrusted && !withStaticHead ? waitingOf(question, { assessed: present, power: expected.power }) : null,
    hasStaticHead: withStaticHead,
    used: residuals.used.length,
    leftOut: residuals.leftOut,
  };
}

const STEADY = { residual: 0, slope: 0 } as const;

/** A trend counts that its interval tells apart from none. */
function drift(one: Assessed | null) {
  if (one === null || one.trend === null) return null;
  const { slope, interval } = one.trend;
  return interval.low > 0 || interval.high < 0 ? { residual: one.residual, slope } : null;
}

function waitingOf(
  { station, price, cleaningCost }: ConditionQuestion,
  { assessed, power }: { readonly assessed: readonly Assessed[]; readonly power: number },
): Waiting | null {
  const flow = drift(flowOf(assessed));
  const drawn = drift(assessed.find(({ measure }) => measure === 'power') ?? null);
  if (price === null || (flow === null && drawn === null)) return null;
  const { exponent } = station.pump.fit.powerLaw;
  const standbyPower = station.count * station.pump.pump.standbyPower;
  return waiting({
    power,
    standbyPower,
    exponent,
    flow: flow ?? STEADY,
    drawn: drawn ?? STEADY,
    price,
    cleaningCost,
  });
}
