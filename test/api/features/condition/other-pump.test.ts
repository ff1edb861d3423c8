/** Readings that are not about the loop as it stands: of the pump before, with an outlet shut. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { created, example, type Json, sent } from '../../requests.ts';
import { answered, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const duty = z.object({ flow: z.number(), power: z.number(), head: z.number() });
const calibration = z.object({
  parameters: z.array(z.object({ name: z.string(), value: z.number() })),
  counts: z.object({ used: z.int() }),
  from: z.string().optional(),
});
const condition = z.object({
  verdict: z.string(),
  counts: z.object({ closedValve: z.int() }),
});

let app: StockedApp;
let loop: string;
beforeEach(async () => {
  app = await stockedApp();
  const installed = { pump: app.pumpId, count: 1, setting: 80, since: '2026-01-12' };
  loop = `/v1/loops/${await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), installed })}`;
});

const SETTINGS = [60, 70, 80, 90, 100];
const predicted = async (setting: number) =>
  answered(duty, await app.call(`${loop}/duty-point?setting=${setting}`));

/** Readings of a day, times what another pump gave. */
async function day(date: string, times: { flow: number; power: number; head: number }): Promise<Json[]> {
  const readings: Json[] = [];
  for (const [hour, setting] of SETTINGS.entries()) {
    const { flow, power, head } = await predicted(setting);
    readings.push({
      ...{ time: `${date}T0${hour}:00:00Z`, setting },
      ...{ flow: flow * times.flow, power: power * times.power, head: head * times.head },
    });
  }
  return readings;
}

const post = (readings: readonly Json[]) => app.call(`${loop}/readings`, sent('POST', { readings }));

describe('readings of the pump before', () => {
  it('take no part in a calibration', async () => {
    const before = await day('2026-01-10', { flow: 0.9, power: 0.8, head: 0.8 });
    const since = await day('2026-01-13', { flow: 1, power: 1, head: 1 });
    expect((await post([...before, ...since])).status).toBe(201);
    const found = await answered(calibration, await app.call(`${loop}/calibration`, sent('POST', {})));
    expect(found).toMatchObject({ counts: { used: 5 }, from: '2026-01-12T00:00:00.000Z' });
    for (const { value } of found.parameters) expectClose(value, 1, { relative: 1e-4 });
    const apply = sent('POST', { apply: true }, { 'If-Match': '*' });
    expect((await app.call(`${loop}/calibration`, apply)).status).toBe(200);
    const kept = await (await app.call(`${loop}/calibration`)).text();
    // As the answer told.
    expect(kept).toContain('"from":"2026-01-12T00:00:00.000Z"');
  });
});

describe('heads alone', () => {
  it('tell neither friction nor head: what they settle is another combination', async () => {
    const heads = (await day('2026-01-13', { flow: 1, power: 1, head: 0.85 })).map(
      ({ time, setting, head }) => ({
        ...{ time, setting, head },
      }),
    );
    expect((await post(heads)).status).toBe(201);
    const found = await answered(calibration, await app.call(`${loop}/calibration`, sent('POST', {})));
    expect(found.parameters).toEqual([]);
  });
});

describe('readings with an outlet shut', () => {
  it('are no clog: they are left out of the condition', async () => {
    const healthy = await day('2026-01-13', { flow: 1, power: 1, head: 1 });
    const { flow, power } = await predicted(80);
    const shut = Array.from({ length: 10 }, (_, minute) => ({
      ...{ time: `2026-01-14T00:0${minute}:00Z`, setting: 80, flow: 0.76 * flow, power: 0.9 * power },
      outletFlows: { left: 0 },
    }));
    expect((await post([...healthy, ...shut])).status).toBe(201);
    const found = await answered(condition, await app.call(`${loop}/condition`));
    expect(found).toMatchObject({ verdict: 'baseline-forming', counts: { closedValve: 10 } });
  });

  it('are refused where two posts make one without a flow at speed, and the second is not stored', async () => {
    const time = '2026-01-14T00:00:00Z';
    expect((await post([{ time, setting: 0, flow: 0 }])).status).toBe(201);
    const { status, errors } = await refused(await post([{ time, setting: 80 }]));
    expect([status, errors?.[0]?.pointer]).toEqual([422, '/readings']);
    expect(await (await app.call(`${loop}/readings?pointer=/items/0/setting`)).text()).toBe('0');
    expect((await post([{ time, setting: 80, head: 3 }])).status).toBe(201);
  });

  it('are refused where all are, while the pump runs and no head is told', async () => {
    const still = { time: '2026-01-14T00:00:00Z', setting: 80 };
    const outletFlows = { 'far end': 0, left: 0, right: 0 };
    const { status, errors } = await refused(await post([{ ...still, outletFlows }]));
    expect([status, errors?.[0]?.pointer]).toEqual([422, '/readings/0/outletFlows']);
    expect((await post([{ ...still, outletFlows, head: 3 }])).status).toBe(201);
  });
});
