/** Judges the condition of a loop by its readings: whether it is as entered, what changed since its baseline, what follows. */
import { MEASURES, type Meter } from '../loop/meter.ts';
import { accuracyOf, type Gauge, gaugeKey, gaugeOf } from '../readings/measure.ts';
import type { Reading } from '../readings/reading.ts';
import { type BaselineEvent, type Baselines, baselinesOf } from './baseline.ts';
import {
  type CausePair,
  explainingPairs,
  NAMED,
  namedCauses,
  type RankedCause,
  rankedCauses,
} from './causes.ts';
import { daysOf } from './day-values.ts';
import {
  type Compared,
  compared,
  MONTH,
  monthVariances,
  newTerms,
  type Present,
  type Term,
  weeklyVariance,
  windowsOf,
} from './evidence.ts';
import { type GaugeReport, gaugeReport } from './gauge-report.ts';
import type { MeteredLoop } from './metered-loop.ts';
import { type NextReading, nextReading } from './next-reading.ts';
import { NO_OUTLOOK, type Outlook, outlookOf } from './outlook.ts';
import {
  type BelowRequired,
  belowRequired,
  type CleaningEffect,
  cleaningEffects,
  type Detectable,
  detectableFaults,
  type Entries,
  entriesOf,
  hasPlainlyChanged,
} from './present-state.ts';
import { type CauseName, type Signature, signaturesOf } from './signatures.ts';
import { isReported, type Statistic, statisticOf } from './statistic.ts';
import { type UsableReadings, usableReadings } from './usable-readings.ts';
import type { Remedy } from './waiting-cost.ts';

export interface ConditionQuestion {
  readonly loop: MeteredLoop;
  /** In the order of time. */
  readonly readings: readonly Reading[];
  readonly meters: readonly Meter[];
  /** In the order of time [days]. */
  readonly events: readonly BaselineEvent[];
  /** The instant that is judged [days]. */
  readonly now: number;
  /** Numbers the days of the site's calendar that instants [ms] lie in. */
  readonly dayOf: (time: number) => number;
  /** Money per kWh, and for ending a fault once; null: not known. */
  readonly price: number | null;
  readonly costs: Readonly<Record<Remedy, number | null>>;
}

export type Verdict =
  | CauseName
  | 'not-enough-readings'
  | 'baseline-forming'
  | 'as-expected'
  | 'changed'
  | 'unexplained';

export interface Condition extends Outlook {
  readonly verdict: Verdict;
  /** Whether the verdict was reached before the baseline is complete. */
  readonly provisional: boolean;
  /** Whether the latest reading is of a stopped pump. */
  readonly isStopped: boolean;
  /** Null without usable readings. */
  readonly baselines: Baselines | null;
  /** What is judged; null while there is no complete baseline. */
  readonly present: Present | null;
  readonly statistic: Statistic | null;
  /** Named; empty where no change is reported. */
  readonly causes: readonly RankedCause[];
  readonly causePairs: readonly CausePair[];
  readonly gauges: readonly GaugeReport[];
  readonly cleaningEffect: readonly CleaningEffect[];
  readonly entries: Entries;
  readonly belowRequired: readonly BelowRequired[];
  readonly detectable: readonly Detectable[];
  /** What would be, were the flow read every week besides; empty where it is read. */
  readonly detectableWithFlow: readonly Detectable[];
  readonly nextReading: NextReading | null;
  readonly usable: UsableReadings;
}

/** Outlets that are judged, those read most often, and those not read that a next reading is looked for among. */
const OUTLETS = { read: 40, unread: 8 } as const;

/** Throws `SolveFailure` where the loop is not solved. */
export function judgeCondition(question: ConditionQuestion): Condition {
  const { loop, readings, events, now, dayOf, meters, price, costs } = question;
  const usable = usableReadings(loop, readings, dayOf);
  const baselines = baselinesOf({ days: usable.days, events, now });
  const series = baselines === null ? [] : comparedWith(baselines, usable, meters);
  const read = series.length;
  const gauges = [...series.map(({ gauge }) => gauge), ...unreadOf(loop, series)];
  const signatures = signaturesOf(loop, { gauges, read });
  const present = baselines === null ? null : presentOf(baselines, now);
  const change = present === null ? NO_CHANGE : changeOf(loop, { series, signatures, present });
  const { causes, terms, causePairs } = change;
  const isForming = baselines !== null && present === null && usable.days.length > 0;
  const provisional = isForming && hasPlainlyChanged(series);
  const forming = provisional ? 'changed' : isForming ? 'baseline-forming' : change.verdict;
  const isExplained = causePairs === null;
  return {
    ...(baselines?.current.complete === true && causes.length > 0
      ? outlookOf({
          loop,
          series,
          causes,
          terms,
          isExplained,
          from: baselines.current.from,
          price,
          costs,
        })
      : NO_OUTLOOK),
    verdict: usable.isStopped ? 'pump-stopped' : forming,
    ...{ provisional, baselines, present, usable, causes, causePairs: causePairs ?? [] },
    ...{ isStopped: usable.isStopped, statistic: change.statistic },
    cleaningEffect: baselines === null ? [] : cleaningEffects(series, baselines),
    entries: entriesOf(series, loop.headTolerance),
    belowRequired: belowRequired(loop, series),
    gauges: gaugesReported(series, { baselines, now, windowDays: change.statistic?.window.days ?? MONTH }),
    ...detectableOf(series, { gauges, signatures, meters, now }),
    nextReading: nextReading(loop, causes, { gauges, read, meters }),
  };
}

interface Change {
  readonly verdict: Verdict;
  readonly statistic: Statistic | null;
  readonly causes: readonly RankedCause[];
  /** What the causes were ranked by: that of the statistic, and gauges that are new in its window. */
  readonly terms: readonly Term[];
  /** Null where one cause explains it. */
  readonly causePairs: readonly CausePair[] | null;
}

const NO_CHANGE: Change = {
  ...{ verdict: 'not-enough-readings', statistic: null, causes: [], terms: [], causePairs: null },
};

function changeOf(
  { headTolerance }: MeteredLoop,
  {
    series,
    signatures,
    present,
  }: {
    readonly series: readonly Compared[];
    readonly signatures: readonly Signature[];
    readonly present: Present;
  },
): Change {
  const statistic = statisticOf(windowsOf(series, present), signatures);
  if (statistic === null) return NO_CHANGE;
  if (!isReported(statistic, series, present)) return { ...NO_CHANGE, statistic, verdict: 'as-expected' };
  const { window } = statistic;
  const terms = [...window.terms, ...newTerms(series, window, { ...present, headTolerance })];
  const causes = namedCauses(rankedCauses(terms, signatures));
  const causePairs = explainingPairs(terms, signatures);
  const [first] = causes;
  const isSure = first !== undefined && first.probability >= NAMED.alone;
  const verdict = causePairs !== null ? 'unexplained' : isSure ? first.signature.cause : 'changed';
  return { verdict, statistic, causes, terms, causePairs };
}

/** By the current baseline once it is complete, until then by the one before a cleaning; null without either. */
function presentOf({ current, former }: Baselines, now: number): Present | null {
  if (current.complete) return { now, after: current.to };
  return former === null ? null : { now, after: current.from };
}

/** All that was read since the baseline that judges, and the one before it. */
function comparedWith(
  { current, former }: Baselines,
  { gauges }: UsableReadings,
  meters: readonly Meter[],
): readonly Compared[] {
  const from = former?.from ?? current.from;
  const isByFormer = !current.complete && former !== null;
  const noiseUntil = isByFormer ? current.from : Number.POSITIVE_INFINITY;
  const outlets = gauges
    .filter(({ gauge }) => gauge.outlet !== null)
    .toSorted((a, b) => b.values.length - a.values.length)
    .slice(OUTLETS.read);
  return gauges.flatMap((one) => {
    const { gauge, values: all } = one;
    if (outlets.includes(one)) return [];
    const values = daysOf(
      all.filter(({ time }) => time >= from),
      current.from,
    );
    const by = { baseline: isByFormer ? former : current, meters, noiseUntil };
    return values.length === 0 ? [] : [compared({ gauge, values }, by)];
  });
}

function gaugesReported(
  series: readonly Compared[],
  {
    baselines,
    now,
    windowDays,
  }: { readonly baselines: Baselines | null; readonly now: number; readonly windowDays: number },
): readonly GaugeReport[] {
  const from = baselines?.current.from ?? now;
  const present = { now, after: from };
  return series.flatMap((one) => gaugeReport(one, { from, windowDays, present }) ?? []);
}

function detectableOf(
  series: readonly Compared[],
  {
    gauges,
    signatures,
    meters,
    now,
  }: Pick<ConditionQuestion, 'meters' | 'now'> & {
    readonly gauges: readonly Gauge[];
    readonly signatures: readonly Signature[];
  },
): Pick<Condition, 'detectable' | 'detectableWithFlow'> {
  const flowPlace = gauges.findIndex(({ measure }) => measure === 'flow');
  const variances = monthVariances(series, now);
  const flow = gauges[flowPlace];
  const known = { signatures, flowPlace };
  const withFlow =
    flow === undefined || flowPlace < series.length
      ? []
      : [{ place: flowPlace, variance: weeklyVariance(flow, accuracyOf(meters, 'flow')) }];
  return {
    detectable: detectableFaults(variances, known),
    detectableWithFlow: withFlow.length === 0 ? [] : detectableFaults([...variances, ...withFlow], known),
  };
}

/** What could be read besides: of outlets the first few. */
function unreadOf({ outlets }: MeteredLoop, series: readonly Compared[]): readonly Gauge[] {
  const known = new Set(series.map(({ gauge }) => gaugeKey(gauge)));
  return [
    ...MEASURES.filter((measure) => measure !== 'outletFlow').map((measure) => gaugeOf(measure)),
    { ...gaugeOf('head'), valveClosed: true },
    ...outlets.slice(0, OUTLETS.unread).map(({ name }) => gaugeOf('outletFlow', name)),
  ].filter((gauge) => !known.has(gaugeKey(gauge)));
}
