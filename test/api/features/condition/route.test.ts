/** The answer about the condition of a loop: what it rests on, its forms, what it refuses. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { type MeasuredLoop, measuredLoop, posted, taken } from '../../records/reading/measured-loop.ts';
import { created, example, jsonOf, sent } from '../../requests.ts';
import { answered, refused } from '../../stocked-app.ts';
import { conditionOf, daily, flume, instant, send } from './daily-readings.ts';

const METERS = { flow: 0.02, power: 0.01 };
const HEALTHY = { noise: METERS, days: 60 };

let app: MeasuredLoop;
beforeEach(async () => {
  app = await flume();
});

describe('the condition of a loop', () => {
  it('predicts what the duty point gives', async () => {
    await send(app, daily(HEALTHY));
    const duty = z.object({ flow: z.number(), power: z.number() });
    const { flow, power } = await answered(duty, await app.call(`${app.loop}/duty-point?setting=80`));
    const { evidence } = await conditionOf(app);
    const predicted = (name: string) => evidence.find(({ measure }) => measure === name)?.predicted ?? 0;
    expectClose(predicted('flow'), flow, { relative: 1e-5 });
    expectClose(predicted('power'), power, { relative: 1e-5 });
  });

  it('states a change as measured over the baseline', async () => {
    await send(app, daily(HEALTHY));
    for (const { measured, baselineValue, change } of (await conditionOf(app)).evidence) {
      expectClose(change ?? 0, measured / (baselineValue ?? Number.NaN) - 1, { absolute: 1e-5 });
    }
  });

  it('without readings says that there are not enough', async () => {
    const found = await conditionOf(app);
    expect(found).toMatchObject({ verdict: 'not-enough-readings', causes: [], evidence: [] });
    expect(found.entries).toMatchObject({ verdict: 'not-determined', differences: [] });
    expect(found.counts).toMatchObject({ readings: 0, judged: 0, used: 0 });
    expect(found.baseline).toBeUndefined();
    expect(found.summary).toMatch(/^Loop "Kelp flume" has too few readings to judge/);
  });

  it('is judged as of the instant that is asked about', async () => {
    await send(app, daily(HEALTHY));
    const before = await conditionOf(app, `?to=${instant(40)}`);
    expect(before.verdict).toBe('baseline-forming');
    expect(before.counts.readings).toBe(19);
    expect((await conditionOf(app, `?from=${instant(9)}`)).counts.readings).toBe(10);
  });

  it('begins no earlier than the pump was there', async () => {
    const installed = { pump: app.pumpId, count: 1, setting: 80, since: '2025-12-01' };
    const id = await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), installed });
    const other = { ...app, readings: `/v1/loops/${id}/readings`, condition: `/v1/loops/${id}/condition` };
    await send(other, daily(HEALTHY));
    const { baseline } = await conditionOf(other);
    expect(baseline).toMatchObject({ startedBy: 'installation', from: '2025-12-01T00:00:00.000Z' });
  });

  it('is surer with better meters', async () => {
    await send(app, daily(HEALTHY));
    const least = async () =>
      (await conditionOf(app)).detectable.find(({ cause }) => cause === 'clogged-intake')?.magnitude ?? 1;
    const assumed = await least();
    const { units: _, ...document } = await jsonOf(await app.call(app.loop));
    const meters = [{ measure: 'flow', accuracy: 0.1 }];
    const put = (change: object) =>
      app.call(app.loop, sent('PUT', { ...document, ...change }, { 'If-Match': '*' }));
    expect((await put({ meters })).status).toBe(200);
    expect(await least()).toBeGreaterThan(assumed);
    expect(await jsonOf(await app.call(app.loop))).toMatchObject({ meters });
    const twice = await refused(await put({ meters: [...meters, ...meters] }));
    expect(twice).toMatchObject({ status: 422, errors: [{ pointer: '/meters/1/measure' }] });
  });

  it('answers in the units that are asked for, by pointer, as a table, with parts, and 304 while nothing changed', async () => {
    await send(app, daily(HEALTHY));
    const metric = (await conditionOf(app)).evidence[0]?.predicted ?? 0;
    const us = (await conditionOf(app, '?units=us')).evidence[0]?.predicted ?? 0;
    expectClose(us * 3.785411784, metric, { relative: 1e-5 });
    expect(await (await app.call(`${app.condition}?pointer=/verdict`)).text()).toBe('as-expected');
    const table = await (await app.call(`${app.condition}?format=csv`)).text();
    expect(table.split('\r\n')[0]).toBe(
      'measure,outlet,change,standardError,trendPerYear,trendLow,trendHigh,readingCount',
    );
    const whole = z.looseObject({ series: z.array(z.looseObject({ points: z.array(z.unknown()) })) });
    const { series } = await answered(whole, await app.call(`${app.condition}?include=series,cleanedAt`));
    expect(series.map(({ points }) => points.length)).toEqual([60, 60]);
    const etag = (await app.call(app.condition)).headers.get('etag') ?? '';
    const again = { headers: { 'If-None-Match': etag } };
    expect((await app.call(app.condition, again)).status).toBe(304);
    await taken(await posted(app, app.readings, [{ time: instant(-0.1), setting: 80, flow: 6700 }]));
    expect((await app.call(app.condition, again)).status).toBe(200);
  });

  it('names outlets of readings that the loop no longer has', async () => {
    await taken(await app.call(app.readings, sent('POST', example('readings.json'))));
    await taken(
      await posted(app, app.readings, [{ time: instant(1), setting: 80, outletFlows: { 'far end': 3000 } }]),
    );
    const { units: _, ...entered } = await jsonOf(await app.call(app.loop));
    const text = JSON.stringify(entered).replaceAll('"far end"', '"far wall"');
    const put = await app.call(app.loop, { ...sent('PUT', {}, { 'If-Match': '*' }), body: text });
    expect(put.status).toBe(200);
    const caution = (await conditionOf(app)).cautions.find(({ code }) => code === 'condition-former-outlets');
    expect(caution?.detail).toContain('far end');
  });

  it('warns where a schedule throttles outlets', async () => {
    await send(app, daily(HEALTHY));
    const codes = async () => (await conditionOf(app)).cautions.map(({ code }) => code);
    expect(await codes()).not.toContain('condition-openings');
    const phases = [{ name: 'night', from: '22:00', factor: 0.6, openings: { left: 0 } }];
    const put = await app.call(`${app.loop}/schedule`, sent('PUT', { tariff: null, phases }));
    expect(put.status).toBe(201);
    expect(await codes()).toContain('condition-openings');
  });

  it('takes the cost of a cleaning from the task that cleans the screen', async () => {
    const magnitude = (day: number) => Math.max(0, day - 45) * 0.004;
    const clogged = { ...HEALTHY, noise: { ...METERS, pressures: 0.01 }, days: 80 };
    await send(app, daily({ ...clogged, fault: { cause: 'clogged-intake' }, magnitude }));
    const task = { ...example('maintenance-task.json'), loop: app.loopId, minutes: 20, parts: 2 };
    await created(app, '/v1/maintenance-tasks', task);
    // 20 minutes at the 30 EUR an hour of the site's example, and parts for 2.
    expect((await conditionOf(app)).waiting?.cheapestInterval).toMatchObject({
      ...{ action: 'cleaning', cost: 12, costFrom: 'maintenance-task' },
    });
  });
});

describe('a question for the condition', () => {
  it('of a loop without a pump cannot be answered', async () => {
    const bare = await measuredLoop({ installed: undefined });
    expect((await refused(await bare.call(bare.condition))).code).toBe('no-installed-pump');
  });

  it('of a loop that is not there is 404', async () => {
    expect((await refused(await app.call('/v1/loops/away/condition'))).status).toBe(404);
  });

  it.each([
    ['?from=2026-01-02T00:00:00Z&to=2026-01-02T00:00:00Z', 'to'],
    ['?from=yesterday', 'from'],
    ['?cleaningCost=0', 'cleaningCost'],
    ['?cleaningCost=cheap', 'cleaningCost'],
    ['?price=1e9', 'price'],
    ['?include=everything', 'include'],
    ['?verdict=clogged', 'verdict'],
  ])('as %s is refused at %s', async (query, parameter) => {
    const problem = await refused(await app.call(`${app.condition}${query}`));
    expect(problem).toMatchObject({ status: 422, errors: [{ parameter }] });
  });
});
