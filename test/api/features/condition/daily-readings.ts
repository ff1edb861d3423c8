/** A loop with its pump over HTTP, and readings of it day by day up to the clock of the app. */
import { expect } from 'vitest';
import { z } from 'zod';
import type { Reading } from '../../../../models/readings/reading.ts';
import { FLUME } from '../../../rates/stations.ts';
import { type Case, readingsOf } from '../../../rates/year.ts';
import { type MeasuredLoop, measuredLoop, posted, taken } from '../../records/reading/measured-loop.ts';
import { example, type Json, sent } from '../../requests.ts';
import { answered } from '../../stocked-app.ts';

const DAY = 86_400_000;
/** L/h in a m3/s, Pa in a kPa. */
const FLOW = 3.6e6;
const PRESSURE = 1000;
/** The clock of the app begins at 2026-01-15T12:00Z; the last reading is of that morning. */
const LAST = Date.UTC(2026, 0, 15, 8);

/** Power that rises with the flow, as that of small centrifugal pumps does. */
const POWER_POINTS = FLUME.pump.powerPoints.map(({ flow = 0, power, setting }) => ({
  ...{ flow: flow * FLOW, power, setting },
}));

export const instant = (daysBeforeLast: number): string =>
  new Date(LAST - daysBeforeLast * DAY).toISOString();

/** The flume of the examples with a pump that draws more at larger flows; `change` of the loop. */
export async function flume(change: Json = {}): Promise<MeasuredLoop> {
  const app = await measuredLoop(change);
  const document = { ...example('pump-canister-250.json'), powerPoints: POWER_POINTS };
  const put = await app.call(`/v1/pumps/${app.pumpId}`, sent('PUT', document, { 'If-Match': '*' }));
  expect(put.status).toBe(200);
  return app;
}

const wire = ({ setting, ...one }: Reading, time: string): Json => ({
  ...{ time, setting, power: one.power },
  ...(one.flow === undefined ? {} : { flow: one.flow * FLOW }),
  ...(one.head === undefined ? {} : { head: one.head }),
  ...(one.suctionPressure === undefined ? {} : { suctionPressure: one.suctionPressure / PRESSURE }),
  ...(one.dischargePressure === undefined ? {} : { dischargePressure: one.dischargePressure / PRESSURE }),
});

/** What the meters of the flume show, a reading a day, the last this morning. */
export function daily(facts: Omit<Case, 'site'>, seed = 1): readonly Json[] {
  const readings = readingsOf({ site: FLUME, ...facts }, seed);
  const last = readings.at(-1)?.time ?? 0;
  return readings.map((reading) => wire(reading, new Date(reading.time - last + LAST).toISOString()));
}

export const send = async (app: MeasuredLoop, readings: readonly Json[]): Promise<void> => {
  await taken(await posted(app, app.readings, readings));
};

const interval = z.object({ low: z.number(), high: z.number() });
const instants = z.object({ earliest: z.iso.datetime(), latest: z.iso.datetime() });

/** What the tests read of the answer; its form is checked against the document elsewhere. */
export const conditionBody = z.looseObject({
  verdict: z.string(),
  provisional: z.boolean().optional(),
  summary: z.string(),
  causes: z.array(
    z.looseObject({
      cause: z.string(),
      probability: z.number(),
      magnitude: z.number().optional(),
      measure: z.string().optional(),
      pumpsRunning: z.int().optional(),
    }),
  ),
  causePairs: z.array(z.array(z.string())).optional(),
  statistic: z.object({ value: z.number(), threshold: z.number(), windowDays: z.int() }).optional(),
  course: z.enum(['sudden', 'gradual']).optional(),
  onset: instants.optional(),
  baseline: z
    .looseObject({
      from: z.iso.datetime(),
      to: z.iso.datetime(),
      startedBy: z.string(),
      dayCount: z.int(),
      requiredDayCount: z.int(),
      complete: z.boolean(),
      cleaningEffect: z
        .array(z.looseObject({ measure: z.string(), change: z.number(), wonBack: z.number().optional() }))
        .optional(),
    })
    .optional(),
  entries: z.looseObject({
    verdict: z.string(),
    differences: z.array(z.looseObject({ measure: z.string(), residual: z.number(), interval })),
    slip: z.string().optional(),
  }),
  evidence: z.array(
    z.looseObject({
      measure: z.string(),
      predicted: z.number(),
      baselineValue: z.number().optional(),
      measured: z.number(),
      change: z.number().optional(),
      standardError: z.number().optional(),
      readingCount: z.int(),
    }),
  ),
  detectable: z.array(
    z.object({ cause: z.string(), magnitude: z.number().optional(), flowChange: z.number().optional() }),
  ),
  nextReading: z
    .looseObject({
      measure: z.string(),
      setting: z.number(),
      expected: z.array(z.object({ cause: z.string(), value: z.number() })),
    })
    .optional(),
  shortfallForecast: z
    .looseObject({ outlet: z.string(), earliest: z.iso.datetime(), latest: z.iso.datetime().optional() })
    .optional(),
  waiting: z
    .looseObject({
      annualExcessCost: z.number(),
      nextYearCost: z.number(),
      cheapestInterval: z.looseObject({ costFrom: z.string(), everyDays: z.int() }).optional(),
    })
    .optional(),
  belowRequired: z.array(z.looseObject({ outlet: z.string(), flow: z.number() })).optional(),
  setAside: z.array(z.looseObject({ slip: z.string(), measure: z.string() })).optional(),
  cleaningTask: z.looseObject({ id: z.string(), nextDue: z.iso.date() }).optional(),
  counts: z.looseObject({ readings: z.int(), used: z.int(), setAside: z.int() }),
  cautions: z.array(z.looseObject({ code: z.string(), severity: z.string(), detail: z.string() })),
});

export const conditionOf = async (app: MeasuredLoop, query = '') =>
  await answered(conditionBody, await app.call(`${app.condition}${query}`));
