/** Answers the condition of a loop from its figures. */
import type { z } from '@hono/zod-openapi';
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import type { Caution } from '../../../models/cautions/catalogue.ts';
import { conditionCautions } from '../../../models/cautions/condition.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import type { Assessed } from '../../../models/condition/assess-series.ts';
import type { Condition } from '../../../models/condition/condition.ts';
import { lastCycle, ofNow } from '../../../models/condition/current-series.ts';
import { cameAbout } from '../../../models/condition/onset.ts';
import { onTrend } from '../../../models/condition/residual-trend.ts';
import { flowOf, THRESHOLDS } from '../../../models/condition/verdict.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import type { ScheduleRecord } from '../../records/schedule/kind.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { conditionSchema } from './answer-schema.ts';
import { conditionSentence, dateOf } from './sentence.ts';

type Answer = WithoutUnits<z.output<ReturnType<typeof conditionSchema>>>;

export type RemedySource = 'asked' | 'maintenance-task' | 'pump-service';

interface Facts {
  readonly model: CompiledLoop;
  readonly figures: Condition;
  readonly readings: readonly Reading[];
  /** In the range, judged or not. */
  readonly total: number;
  /** Where the cost of the remedy comes from; null without one. */
  readonly source: RemedySource | null;
  /** Instants [ms] of the cleanings within the readings. */
  readonly cleanings: readonly number[];
  readonly site: SiteRecord;
  readonly loop: LoopRecord;
  readonly pump: PumpRecord;
  readonly schedule: ScheduleRecord | null;
  readonly basis: Answer['basis'];
}

const utc = (instant: number): string => new Date(instant).toISOString();

function evidenceOf({ measure, outlet, trend, ...one }: Assessed): Answer['evidence'][number] {
  const figures = {
    outlet,
    predicted: one.predicted,
    measured: one.measured,
    residual: one.residual,
    since: utc(one.since),
    standardError: one.standardError,
    trendPerYear: trend?.slope ?? null,
    interval: trend === null ? null : { ...trend.interval },
    readings: one.readings,
  };
  // Each measure has a quantity of its own.
  switch (measure) {
    case 'flow':
    case 'outletFlow':
      return { measure, ...figures };
    case 'power':
      return { measure, ...figures };
    case 'head':
      return { measure, ...figures };
    case 'suctionPressure':
    case 'dischargePressure':
      return { measure, ...figures };
  }
}

function seriesOf(one: Assessed): Answer['series'][number] {
  const { measure, outlet, points, trend } = one;
  const [first, last] = [lastCycle(one)[0], points.at(-1)];
  const onLine = (time: number) => ({
    time: utc(time),
    residual: trend === null ? 0 : onTrend(trend, time),
  });
  return {
    measure,
    outlet,
    points: points.map(({ time, residual, readings }) => ({ time: utc(time), residual, readings })),
    line:
      trend === null || first === undefined || last === undefined
        ? null
        : { from: onLine(first.time), to: onLine(last.time) },
  };
}

/** Cleanings named in an answer. */
const CLEANINGS_MOST = 50;

/** Outlets that readings name and the loop does not have. */
function formerOutlets({ system }: CompiledLoop, readings: readonly Reading[]): readonly string[] {
  const known = new Set(system.outlets.map(({ name }) => name));
  const named = new Set(readings.flatMap(({ outletFlows = {} }) => Object.keys(outletFlows)));
  return [...named].filter((name) => !known.has(name));
}

function cautionsOf({ model, figures, readings, total, schedule }: Facts): readonly Caution[] {
  const { verdict, assessed, shortfall, used } = figures;
  const flow = flowOf(assessed);
  const [first, last] = [readings[0], readings.at(-1)];
  const days = first === undefined || last === undefined ? 0 : (last.time - first.time) / MS_PER_DAY;
  const power = ofNow(assessed).find(({ measure }) => measure === 'power');
  const isSteady =
    verdict === 'draws-more-than-its-curve'
      ? power !== undefined && !cameAbout(power)
      : flow !== null && Math.abs(flow.residual) > THRESHOLDS.flowDown && !cameAbout(flow);
  const ofCondition = conditionCautions({
    ...{ used, days, isSteady },
    isPlaceOpen: verdict === 'clogged' || verdict === 'less-flow',
    hasStaticHead: figures.hasStaticHead,
    lacksGauges: figures.lacksGauges,
    throttles: schedule?.document.phases.some(({ openings }) => openings !== undefined) ?? false,
    formerOutlets: formerOutlets(model, readings),
    isSampled: total > readings.length,
    hasDate: shortfall !== null,
    asksForService: verdict !== 'as-expected' && verdict !== 'not-enough-readings',
  });
  return [...ofCondition, ...loopCautions(model)];
}

function waitingOf({ figures: { waiting, remedy }, source, site }: Facts): Answer['waiting'] {
  if (waiting === null) return null;
  const cheapest = waiting.cleaning;
  return {
    currency: site.document.currency,
    residuals: { flow: waiting.flow, power: waiting.drawn },
    excessCost: waiting.excessCost,
    growthPerYear: waiting.growthPerYear,
    costOfAYear: waiting.costOfAYear,
    cleaning:
      cheapest === null || source === null
        ? null
        : {
            ...{ remedy, source },
            cost: cheapest.cost,
            everyDays: Math.max(1, Math.round(365.25 * cheapest.everyYears)),
            annualCost: cheapest.annualCost,
            endsAtShortfall: cheapest.endsAtShortfall,
          },
  };
}

export function conditionAnswer(facts: Facts): Answer {
  const { figures, readings, total, cleanings, loop, site, basis } = facts;
  const { verdict, slip, places, running, also, assessed, shortfall, used, leftOut } = figures;
  const [first, last] = [readings[0], readings.at(-1)];
  const { name } = loop.document;
  return {
    verdict,
    summary: conditionSentence(figures, { name, currency: site.document.currency }),
    evidence: assessed.map(evidenceOf),
    meterSlip: slip === null ? null : { ...slip },
    places: [...places],
    pumpsRunning: running,
    also,
    shortfall:
      shortfall === null
        ? null
        : {
            outlet: shortfall.outlet,
            date: dateOf(shortfall.at),
            interval: {
              earliest: dateOf(shortfall.interval.earliest),
              latest: shortfall.interval.latest === null ? null : dateOf(shortfall.interval.latest),
            },
          },
    waiting: waitingOf(facts),
    dataBasis: loop.calibration === null ? 'entered' : 'calibrated',
    cleanings: cleanings.slice(-CLEANINGS_MOST).map(utc),
    from: first === undefined ? null : utc(first.time),
    to: last === undefined ? null : utc(last.time),
    readings: { total, judged: readings.length, used, leftOut: { ...leftOut } },
    thresholds: { ...THRESHOLDS },
    series: assessed.map(seriesOf),
    cautions: [...cautionsOf(facts)],
    basis,
  };
}
