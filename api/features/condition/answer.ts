/** Answers the condition of a loop from what was found. */
import { civilDate } from '../../../models/calendar/civil-day.ts';
import { textOfDate } from '../../../models/calendar/civil-text.ts';
import type { ConditionReport, NamedCause } from '../../../models/condition/condition-report.ts';
import { type GaugeReport, shareOf } from '../../../models/condition/gauge-report.ts';
import type { Gauge } from '../../../models/readings/measure.ts';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import type { ScheduleRecord } from '../../records/schedule/kind.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { ConditionAnswer } from './answer-schema.ts';
import { baselineAnswer } from './baseline-answer.ts';
import { cautionsOf } from './cautions.ts';
import type { CleaningDue } from './due-for-cleaning.ts';
import { evidenceAnswer, nextReadingAnswer } from './evidence-answer.ts';
import { instantText } from './instant-text.ts';
import type { ConditionAsked, JudgedLoop } from './judge-loop.ts';
import { shortfallAnswer, waitingAnswer } from './outlook-answer.ts';
import { conditionSentence } from './sentence.ts';

export interface AnsweredLoop {
  readonly loop: LoopRecord;
  readonly asked: ConditionAsked;
  readonly system: UnitSystem;
  readonly schedule: ScheduleRecord | null;
  readonly cleaning: CleaningDue | null;
  readonly basis: ConditionAnswer['basis'];
}

const utc = (instant: number): string => new Date(instant).toISOString();

/** Named in an answer. */
const MOST = { cleanings: 50, setAside: 20 } as const;

export function conditionAnswer(judged: JudgedLoop, facts: AnsweredLoop): ConditionAnswer {
  const { report } = judged;
  const { statistic, causePairs, course, cleaningEffect: _, ...rest } = report;
  return {
    verdict: rest.verdict,
    provisional: rest.provisional || undefined,
    summary: conditionSentence(report, {
      ...{ name: facts.loop.document.name, site: judged.site, system: facts.system },
    }),
    causes: rest.causes.map(causeAnswer),
    causePairs: causePairs.length === 0 ? undefined : causePairs.map((pair) => [...pair]),
    statistic: statistic ?? undefined,
    baseline: baselineAnswer(report),
    entries: entriesAnswer(report),
    evidence: rest.gauges.map(evidenceAnswer),
    detectable: rest.detectable.map(({ cause, least }) => ({ cause, ...least })),
    course: course?.kind ?? undefined,
    onset:
      course === null
        ? undefined
        : { earliest: instantText(course.onset.earliest), latest: instantText(course.onset.latest) },
    nextReading: nextReadingAnswer(report),
    shortfallForecast: shortfallAnswer(report),
    waiting: waitingAnswer(judged, facts.asked),
    cleaningTask: taskAnswer(facts.cleaning),
    ...readingsAnswer(judged, facts.asked),
    dataBasis: dataBasisOf(facts.loop),
    cautions: [...cautionsOf(judged, facts)],
    basis: facts.basis,
  };
}

const gaugeOf = ({ measure, outlet }: Gauge) => ({ measure, outlet: outlet ?? undefined });

const causeAnswer = (one: NamedCause): ConditionAnswer['causes'][number] => ({
  ...{ cause: one.cause, probability: one.probability },
  magnitude: one.magnitude ?? undefined,
  interval: one.interval ?? undefined,
  measure: one.gauge?.measure,
  outletNames: outletNamesOf(one),
  slip: one.slip ?? undefined,
  factor: one.factor ?? undefined,
  pumpsRunning: one.pumpsRunning ?? undefined,
});

function outletNamesOf({ outletNames, gauge }: NamedCause): readonly string[] | undefined {
  if (outletNames.length > 0) return outletNames;
  return gauge?.outlet == null ? undefined : [gauge.outlet];
}

const entriesAnswer = ({ entries }: ConditionReport): ConditionAnswer['entries'] => ({
  verdict: entries.verdict,
  differences: entries.differences.map(({ gauge, residual, interval }) => ({
    ...gaugeOf(gauge),
    residual: shareOf(gauge, residual),
    interval: { low: shareOf(gauge, interval.low), high: shareOf(gauge, interval.high) },
  })),
  slip: entries.slip ?? undefined,
});

const taskAnswer = (cleaning: CleaningDue | null): ConditionAnswer['cleaningTask'] =>
  cleaning === null ? undefined : { ...cleaning, nextDue: textOfDate(civilDate(cleaning.nextDue)) };

function readingsAnswer({ report, readings, total, upkeep }: JudgedLoop, { include = [] }: ConditionAsked) {
  const { belowRequired, setAside, counts, gauges } = report;
  const [first, last] = [readings[0], readings.at(-1)];
  const cleanings = upkeep.remedied.filter(
    ({ at }) => first !== undefined && last !== undefined && at > first.time && at <= last.time,
  );
  return {
    belowRequired: belowRequired.length === 0 ? undefined : [...belowRequired],
    setAside:
      setAside.length === 0
        ? undefined
        : setAside
            .toSorted((a, b) => a.time - b.time)
            .slice(-MOST.setAside)
            .map(({ time, gauge, slip, factor }) => ({
              time: instantText(time),
              ...gaugeOf(gauge),
              slip,
              factor,
            })),
    counts: { readings: total, judged: readings.length, ...counts, setAside: setAside.length },
    from: first === undefined ? undefined : utc(first.time),
    to: last === undefined ? undefined : utc(last.time),
    cleanedAt: include.includes('cleanedAt')
      ? cleanings.slice(-MOST.cleanings).map(({ at }) => utc(at))
      : undefined,
    series: include.includes('series') ? gauges.map(seriesAnswer) : undefined,
  };
}

const seriesAnswer = ({ gauge, days, band }: GaugeReport) => ({
  ...gaugeOf(gauge),
  points: days.map(({ time, ...day }) => ({ time: instantText(time), ...day })),
  baseline: band === null ? undefined : { residual: band.level, low: band.low, high: band.high },
});
