/** Puts what was judged of a loop into plain data, as it passes from one thread to another. */
import type { Gauge } from '../readings/measure.ts';
import type { Slip } from '../readings/slip.ts';
import { BASELINE, type Baselines } from './baseline.ts';
import type { RankedCause } from './causes.ts';
import type { Condition } from './judge-condition.ts';
import type { CauseName } from './signatures.ts';
import { THRESHOLD } from './statistic.ts';

/** A cause that is named: of a fault its magnitude, of a meter which one. */
export interface NamedCause {
  readonly cause: CauseName;
  readonly probability: number;
  /** Null where the cause has none. */
  readonly magnitude: number | null;
  readonly interval: { readonly low: number; readonly high: number } | null;
  readonly gauge: Gauge | null;
  readonly outletNames: readonly string[];
  readonly slip: Slip | null;
  /** What the meter shows of the true value. */
  readonly factor: number | null;
  readonly pumpsRunning: number | null;
}

/** Instants [days since 1970-01-01T00:00Z]. */
export interface ConditionReport
  extends Pick<
    Condition,
    | 'verdict'
    | 'provisional'
    | 'isStopped'
    | 'cleaningEffect'
    | 'entries'
    | 'gauges'
    | 'belowRequired'
    | 'detectable'
    | 'detectableWithFlow'
    | 'shortfall'
    | 'waiting'
  > {
  readonly setting: number;
  readonly baseline: (Baselines['current'] & { readonly requiredDayCount: number }) | null;
  /** Whether the baseline before a cleaning judges. */
  readonly isByFormer: boolean;
  readonly causes: readonly NamedCause[];
  readonly causePairs: readonly (readonly [CauseName, CauseName])[];
  readonly statistic: {
    readonly value: number;
    readonly threshold: number;
    readonly windowDays: number;
  } | null;
  readonly course: {
    readonly kind: 'sudden' | 'gradual' | null;
    readonly onset: { readonly earliest: number; readonly latest: number };
    /** The last day read. */
    readonly now: number;
  } | null;
  readonly nextReading: {
    readonly gauge: Gauge;
    readonly expected: readonly { readonly cause: CauseName; readonly value: number }[];
  } | null;
  readonly setAside: Condition['usable']['setAside'];
  readonly counts: Condition['usable']['counts'];
  /** Whether a gauge was read that the loop's measures come of: pressures before or behind the pump. */
  readonly lacksGauges: boolean;
}

/** @param lacksGauges whether heads came of pressures at gauges whose bores matter and are not stated. */
export function conditionReport(
  condition: Condition,
  { setting, lacksGauges }: { readonly setting: number; readonly lacksGauges: boolean },
): ConditionReport {
  const { baselines, statistic, course, nextReading, usable } = condition;
  const { verdict, provisional, isStopped, cleaningEffect, entries, gauges, belowRequired } = condition;
  const { detectable, detectableWithFlow, shortfall, waiting } = condition;
  return {
    ...{ verdict, provisional, isStopped, cleaningEffect, entries, gauges, belowRequired },
    ...{ detectable, detectableWithFlow, shortfall, waiting, setting, lacksGauges },
    baseline: baselines === null ? null : { ...baselines.current, requiredDayCount: BASELINE.dayCount },
    isByFormer: baselines !== null && !baselines.current.complete && baselines.former !== null,
    causes: isStopped ? [ALL_STOPPED] : condition.causes.map(namedCause),
    causePairs: pairsOf(condition),
    statistic:
      statistic === null
        ? null
        : { value: statistic.value, threshold: THRESHOLD, windowDays: statistic.window.days },
    course: course === null ? null : { kind: course.kind, onset: course.onset, now: course.now },
    nextReading:
      nextReading === null
        ? null
        : {
            gauge: nextReading.gauge,
            expected: nextReading.expected.map(({ signature, value }) => ({ cause: signature.cause, value })),
          },
    ...{ setAside: usable.setAside, counts: usable.counts },
  };
}

/** A pump that is set to run, and does not. */
const ALL_STOPPED: NamedCause = {
  ...{ cause: 'pump-stopped', probability: 1, magnitude: null, interval: null, gauge: null },
  ...{ outletNames: [], slip: null, factor: null, pumpsRunning: 0 },
};

function namedCause({ signature, probability, magnitude, interval, point }: RankedCause): NamedCause {
  const hasMagnitude = point.magnitude > 0;
  return {
    ...{ cause: signature.cause, probability },
    magnitude: hasMagnitude ? magnitude : null,
    interval: hasMagnitude ? interval : null,
    gauge: signature.gauge ?? null,
    outletNames: signature.fault?.outletNames ?? [],
    slip: signature.slip ?? null,
    factor: point.factor ?? null,
    pumpsRunning: signature.pumpsRunning ?? null,
  };
}

/** Each pair of causes once, whatever branches or meters they are of. */
function pairsOf({ causePairs }: Condition): ConditionReport['causePairs'] {
  const pairs = causePairs.map(([a, b]) => [a.signature.cause, b.signature.cause] as const);
  const key = (pair: readonly CauseName[]) => pair.toSorted().join();
  return pairs.filter((pair, i) => pairs.findIndex((other) => key(other) === key(pair)) === i);
}
