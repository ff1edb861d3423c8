/** The condition of a loop: what was measured against its data, what that means, and what to expect. */
import { hasStaticHead } from '../network/has-static-head.ts';
import { lacksGauges } from '../readings/gauges.ts';
import type { Reading } from '../readings/reading.ts';
import { type Assessed, assessSeries } from './assess-series.ts';
import { ofNow } from './current-series.ts';
import { leadingTrend } from './extrapolated-trend.ts';
import { type Predicted, predictedAt, type Station } from './predicted.ts';
import { pressureGaps } from './pressure-gaps.ts';
import { errorsFor } from './recent-window.ts';
import { isSure, onTrend } from './residual-trend.ts';
import { type LeftOut, residualsOf } from './residuals.ts';
import { type Shortfall, shortfall } from './shortfall.ts';
import { type FewerPumps, flowOf, type Judged, judge, type Verdict } from './verdict.ts';
import { type Waiting, waiting } from './waiting.ts';

/** What ends a drift: a cleaning of the loop, a service of its pump. */
export type Remedy = 'cleaning' | 'service';

export interface ConditionQuestion {
  readonly station: Station;
  /** What the pump is set to usually [%]. */
  readonly setting: number;
  /** In the order of time. */
  readonly readings: readonly Reading[];
  /** Instants [ms], rising, at which loop or pump were cleaned: what had grown until then begins anew. */
  readonly cleanings: readonly number[];
  /** Money per kWh; null: not known. */
  readonly price: number | null;
  /** Money for each once; null: not known. */
  readonly costs: Readonly<Record<Remedy, number | null>>;
}

export interface Condition extends Judged {
  readonly assessed: readonly Assessed[];
  readonly shortfall: Shortfall | null;
  /** Null without a price, where the drift is not told apart from none, or where nothing that drifts is at fault. */
  readonly waiting: Waiting | null;
  /** What would end the drift. */
  readonly remedy: Remedy;
  /** Whether there is static head, with which speed does not win flow back by its power law. */
  readonly hasStaticHead: boolean;
  /** Whether pressures came of gauges whose bores would matter and are not stated. */
  readonly lacksGauges: boolean;
  readonly used: number;
  readonly leftOut: LeftOut;
}

/** Throws `SolveFailure` where the loop is not solved. */
export function conditionOf(question: ConditionQuestion): Condition {
  const { station, setting, readings, cleanings } = question;
  const { system } = station.loop;
  const withStaticHead = hasStaticHead(station.loop);
  const residuals = residualsOf(station, readings);
  const assessed = residuals.series.flatMap((series) => assessSeries(series, cleanings) ?? []);
  const present = ofNow(assessed);
  const since = Math.max(0, ...present.map((one) => one.since));
  const predicted = predictedAt(station, setting);
  const fewer = predicted === null ? [] : fewerPumps(station, setting, predicted);
  const judged = judge({ assessed: present, gaps: pressureGaps(station, residuals, since), fewer });
  const remedy = remedyOf(judged.verdict);
  // What a doubtful meter says of the future is as doubtful.
  const isTrusted = judged.slip === null && predicted !== null;
  const short = isTrusted ? shortfall({ assessed: present, system, predicted }) : null;
  const isDrift = isTrusted && !withStaticHead && judged.running === null;
  const drifting = { assessed: present, power: predicted?.power ?? 0, remedy, longest: short?.years ?? null };
  return {
    ...judged,
    assessed,
    shortfall: short,
    waiting: isDrift ? waitingOf(question, drifting) : null,
    remedy,
    hasStaticHead: withStaticHead,
    lacksGauges:
      predicted !== null &&
      present.some(({ measure }) => measure === 'suctionPressure' || measure === 'dischargePressure') &&
      lacksGauges(station.loop, predicted),
    used: residuals.used.length,
    leftOut: residuals.leftOut,
  };
}

const remedyOf = (verdict: Verdict): Remedy =>
  verdict === 'worn-pump' || verdict === 'draws-more-than-its-curve' ? 'service' : 'cleaning';

/** More pumps do not stop at once unseen. */
const STOPPED_MOST = 3;

/** What would be measured with some of several pumps standing still, behind check valves. */
function fewerPumps(station: Station, setting: number, all: Predicted): readonly FewerPumps[] {
  const stopped = Array.from({ length: Math.min(STOPPED_MOST, station.count - 1) }, (_, i) => i + 1);
  return stopped.flatMap((still) => {
    const running = station.count - still;
    const some = predictedAt({ ...station, count: running }, setting);
    if (some === null) return [];
    return [{ running, flow: some.flow / all.flow - 1, power: some.power / all.power - 1 }];
  });
}

/** Where a measure stands at the last reading, 0 where that is not told from it, and how it goes on, where that is sure. */
function courseOf(one: Assessed | null): { readonly residual: number; readonly slope: number } {
  if (one === null) return { residual: 0, slope: 0 };
  const leading = leadingTrend(one);
  const last = leading?.points.at(-1);
  if (leading !== null && last !== undefined && isSure(leading.trend)) {
    return { residual: onTrend(leading.trend, last.time), slope: leading.trend.slope };
  }
  const isTold = Math.abs(one.residual) > errorsFor(one.present) * one.standardError;
  return { residual: isTold ? one.residual : 0, slope: 0 };
}

interface Drifting {
  readonly assessed: readonly Assessed[];
  readonly power: number;
  readonly remedy: Remedy;
  readonly longest: number | null;
}

function waitingOf(
  { station, price, costs }: ConditionQuestion,
  { assessed, power, remedy, longest }: Drifting,
): Waiting | null {
  const flow = courseOf(flowOf(assessed));
  const drawn = courseOf(assessed.find(({ measure }) => measure === 'power') ?? null);
  if (price === null || (flow.slope === 0 && drawn.slope === 0)) return null;
  const { exponent, standbyPower, fixedPower } = station.pump.fit.powerLaw;
  return waiting({
    power,
    // A fixed loss of the motor is drawn at any speed as standby power is.
    standbyPower: station.count * (standbyPower + fixedPower),
    exponent,
    ...{ flow, drawn, price },
    cleaningCost: costs[remedy],
    longest,
  });
}
