/** A loop as entered, with readings of what it truly does: a twin of it resists more and has a weaker pump. */
import { expect } from 'vitest';
import { z } from 'zod';
import { created, example, type Json, jsonOf, sent } from '../../requests.ts';
import { answered, type StockedApp, stockedApp } from '../../stocked-app.ts';

export interface Truth {
  readonly friction: number;
  readonly head: number;
  readonly power: number;
}

const duty = z.looseObject({
  flow: z.number(),
  head: z.number(),
  power: z.number(),
  outlets: z.array(z.looseObject({ name: z.string(), flow: z.number() })),
});

export type Duty = z.infer<typeof duty>;

export interface CalibratedLoop extends StockedApp {
  readonly calibration: string;
  /** The duty of the twin. */
  readonly truly: (setting: number) => Promise<Duty>;
  readonly taken: (readings: readonly Json[]) => Promise<void>;
}

const point = z.looseObject({ head: z.number() });
const powerPoint = z.looseObject({ power: z.number() });
const pumpPoints = z.looseObject({
  headPoints: z.array(point),
  powerPoints: z.array(powerPoint),
  standbyPower: z.number(),
});

const worn = (document: Json, { head, power }: Truth): Json => {
  const { headPoints, powerPoints, standbyPower } = pumpPoints.parse(document);
  return {
    ...document,
    headPoints: headPoints.map((one) => ({ ...one, head: head * one.head })),
    powerPoints: powerPoints.map((one) => ({ ...one, power: power * one.power })),
    standbyPower: power * standbyPower,
  };
};

/** The clock of the app begins at 2026-01-15T12:00Z. */
const FIRST = Date.UTC(2026, 0, 10);

export const at = (minute: number): string => new Date(FIRST + 60_000 * minute).toISOString();

export async function calibratedLoop(truth: Truth, change: Json = {}): Promise<CalibratedLoop> {
  const app = await stockedApp();
  const entered = { ...example('loop-kelp-flume.json'), ...change };
  const installed = { pump: app.pumpId, count: 1, setting: 80 };
  const loopId = await created(app, '/v1/loops', { ...entered, installed });
  const pump = await created(app, '/v1/pumps', worn(example('pump-canister-250.json'), truth));
  const twin = await created(app, '/v1/loops', { ...entered, frictionMultiplier: truth.friction });
  const loop = `/v1/loops/${loopId}`;
  return {
    ...app,
    ...{ loopId, loop, calibration: `${loop}/calibration` },
    truly: async (setting) =>
      answered(duty, await app.call(`/v1/loops/${twin}/duty-point?pump=${pump}&setting=${setting}`)),
    taken: async (readings) => {
      const timed = readings.map((reading, minute) => ({ time: at(minute), ...reading }));
      const response = await app.call(`${loop}/readings`, sent('POST', { readings: timed }));
      expect(response.status, JSON.stringify(await jsonOf(response))).toBe(201);
    },
  };
}

const interval = z.strictObject({ low: z.number(), high: z.number() });
const parameter = z.strictObject({
  name: z.string(),
  value: z.number(),
  standardError: z.number(),
  interval,
});
const doubt = z.strictObject({ standardError: z.number(), interval: interval.nullable() });

export const calibrationAnswer = z.looseObject({
  parameters: z.array(parameter),
  notIdentifiable: z.array(
    z.looseObject({ name: z.string(), reason: z.string(), helpfulReadings: z.array(z.string()) }),
  ),
  smallestMargin: z.looseObject({
    outlet: z.string().nullable(),
    margin: z.number().nullable(),
    uncertainty: doubt.nullable(),
  }),
  nextReadings: z.array(
    z.looseObject({
      measure: z.enum(['flow', 'outletFlow', 'head', 'power']),
      setting: z.number(),
      outlet: z.string().nullable(),
      closedOutlets: z.array(z.string()),
      valveClosed: z.boolean(),
      predicted: z.strictObject({
        flow: z.number().nullable(),
        head: z.number().nullable(),
        power: z.number().nullable(),
      }),
      remainingUncertainty: doubt.nullable(),
      expectedParameters: z.array(parameter),
    }),
  ),
  measuredSpeedMap: z
    .looseObject({
      differs: z.boolean(),
      points: z.array(z.looseObject({ setting: z.number(), speed: z.number() })),
    })
    .nullable(),
  readings: z.looseObject({ used: z.number(), rows: z.number() }),
  applied: z.boolean(),
  dataBasis: z.enum(['entered', 'calibrated']),
  summary: z.string(),
  cautions: z.array(z.looseObject({ code: z.string() })),
  basis: z.looseObject({ loop: z.looseObject({ version: z.number() }) }),
});

export type CalibrationAnswer = z.infer<typeof calibrationAnswer>;

export const calibrate = async (
  { call, calibration }: CalibratedLoop,
  body: Json = {},
  headers: Record<string, string> = {},
): Promise<CalibrationAnswer> =>
  answered(calibrationAnswer, await call(calibration, sent('POST', body, headers)));
