/** Names what the control chart of a loop shows, and takes it from what was found. */
import { PERCENT } from '../../../curves/percent.ts';
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import type { GaugeReport } from '../../../models/condition/gauge-report.ts';
import { type Gauge, isPressure } from '../../../models/readings/measure.ts';
import { isolatedName } from '../../drawing/markup/name-text.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { JudgedLoop } from './judge-loop.ts';
import { conditionSentence } from './sentence.ts';

/** Measured against predicted, % of what the series is measured against. */
export interface ChartedPoint {
  readonly time: number;
  readonly percent: number;
}

export interface ChartedSeries {
  /** What was measured: `flow`, `electrical power`. */
  readonly name: string;
  /** `% of predicted`. */
  readonly unit: string;
  readonly points: readonly ChartedPoint[];
  /** Of the baseline; null where it holds too few readings. */
  readonly band: { readonly level: number; readonly low: number; readonly high: number } | null;
}

export interface ChartedEvent {
  readonly at: number;
  readonly kind: 'cleaning' | 'service' | 'change';
}

/** Instants in ms. */
export interface ConditionFigures {
  readonly loopName: string;
  /** What is found, in a word or two, and in sentences. */
  readonly verdict: string;
  readonly summary: string;
  readonly from: number;
  readonly until: number;
  /** Null without one. */
  readonly baseline: { readonly from: number; readonly until: number } | null;
  readonly events: readonly ChartedEvent[];
  readonly series: readonly ChartedSeries[];
}

/** More plots than these are not looked at: outlets come last. */
const SHOWN_MOST = 6;

const NAMES = {
  flow: 'flow',
  power: 'electrical power',
  head: 'head',
  suctionPressure: 'suction pressure',
  dischargePressure: 'discharge pressure',
  outletFlow: 'flow of',
} as const satisfies Record<Gauge['measure'], string>;

const inMs = (days: number): number => Math.round(days * MS_PER_DAY);

function seriesOf({ gauge, days, band }: GaugeReport): ChartedSeries {
  const name = NAMES[gauge.measure];
  return {
    name: gauge.outlet === null ? name : `${name} ${isolatedName(gauge.outlet)}`,
    unit: isPressure(gauge.measure) ? '% of predicted head' : '% of predicted',
    points: days.map(({ time, residual }) => ({ time: inMs(time), percent: PERCENT * residual })),
    band:
      band === null
        ? null
        : { level: PERCENT * band.level, low: PERCENT * band.low, high: PERCENT * band.high },
  };
}

export function chartedCondition(
  { report, site, upkeep }: JudgedLoop,
  { name, system }: { readonly name: string; readonly system: UnitSystem },
): ConditionFigures {
  const { baseline, course, gauges, verdict } = report;
  const series = gauges
    .toSorted((a, b) => Number(a.gauge.outlet !== null) - Number(b.gauge.outlet !== null))
    .slice(0, SHOWN_MOST)
    .map(seriesOf);
  const times = series.flatMap(({ points }) => points.map(({ time }) => time));
  const from = times.reduce((least, time) => Math.min(least, time), times[0] ?? 0);
  const until = times.reduce((most, time) => Math.max(most, time), times[0] ?? 0);
  const change: readonly ChartedEvent[] =
    course === null ? [] : [{ at: inMs((course.onset.earliest + course.onset.latest) / 2), kind: 'change' }];
  const events = [...upkeep.remedied.map(({ at, remedy }) => ({ at, kind: remedy })), ...change];
  return {
    ...{ loopName: name, from, until, series },
    verdict: verdict.replaceAll('-', ' '),
    summary: conditionSentence(report, { name, site, system }),
    baseline: baseline === null ? null : { from: inMs(baseline.from), until: inMs(baseline.to) },
    events: events.filter(({ at }) => at >= from && at <= until),
  };
}
