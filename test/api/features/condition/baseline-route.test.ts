/** Baselines of a loop by request, and what restarts them. */
import { beforeEach, describe, expect, it } from 'vitest';
import { type MeasuredLoop, measuredLoop } from '../../records/reading/measured-loop.ts';
import { example, jsonOf, sent } from '../../requests.ts';
import { refused } from '../../stocked-app.ts';
import { conditionOf, daily, flume, instant, send } from './daily-readings.ts';

let app: MeasuredLoop;
beforeEach(async () => {
  app = await flume();
  await send(app, daily({ noise: { flow: 0.02, power: 0.01 }, days: 60 }));
});

const request = (body: object) => app.call(`${app.loop}/baseline`, sent('POST', body));
const baselineNow = async () => (await conditionOf(app)).baseline;

describe('a request for a baseline', () => {
  it('begins it now, until it is withdrawn', async () => {
    const response = await request({});
    expect(response.status).toBe(201);
    const body = await jsonOf(response);
    expect(body).toMatchObject({
      ...{ startedBy: 'request', dayCount: 0, requiredDayCount: 8, complete: false },
    });
    const found = await conditionOf(app);
    expect(found.verdict).toBe('baseline-forming');
    expect(found.baseline?.from).toBe(body.from);
    const withdrawn = await app.call(`${app.loop}/baseline`, { method: 'DELETE' });
    expect(withdrawn.status).toBe(204);
    expect(await baselineNow()).toMatchObject({ startedBy: 'first-reading', complete: true });
  });

  it('begins it at the instant that it states, with condition judged by it', async () => {
    const from = instant(40);
    expect(await jsonOf(await request({ from }))).toMatchObject({
      ...{ from, startedBy: 'request', dayCount: 28, complete: true },
    });
    expect((await conditionOf(app)).verdict).toBe('as-expected');
    // The last request is the one that is kept.
    const later = instant(35);
    expect(await jsonOf(await request({ from: later }))).toMatchObject({ from: later });
    expect(await baselineNow()).toMatchObject({ from: later });
  });

  it('is refused in the future, of a loop without a pump, and of none', async () => {
    const ahead = await refused(await request({ from: '2026-02-01T00:00:00Z' }));
    expect(ahead).toMatchObject({ status: 422, errors: [{ pointer: '/from' }] });
    const bare = await measuredLoop({ installed: undefined });
    const refusedBare = await refused(await bare.call(`${bare.loop}/baseline`, sent('POST', {})));
    expect(refusedBare.code).toBe('no-installed-pump');
    const away = await refused(await app.call('/v1/loops/away/baseline', sent('POST', {})));
    expect(away.status).toBe(404);
    const gone = await refused(await app.call('/v1/loops/away/baseline', { method: 'DELETE' }));
    expect(gone.status).toBe(404);
  });
});

describe('what restarts a baseline', () => {
  const put = async (change: object) => {
    const { units: _, ...document } = await jsonOf(await app.call(app.loop));
    const response = await app.call(app.loop, sent('PUT', { ...document, ...change }, { 'If-Match': '*' }));
    expect(response.status).toBe(200);
  };

  it('is another pipework, and no other name', async () => {
    await put({ name: 'Kelp flume, renamed' });
    expect(await baselineNow()).toMatchObject({ startedBy: 'first-reading' });
    await put({ frictionMultiplier: 1.2 });
    expect(await baselineNow()).toMatchObject({ startedBy: 'installation', dayCount: 0, complete: false });
  });

  it('is a pump with other points, and no other price', async () => {
    const { units: _, ...pump } = await jsonOf(await app.call(`/v1/pumps/${app.pumpId}`));
    const write = (document: object) =>
      app.call(`/v1/pumps/${app.pumpId}`, sent('PUT', document, { 'If-Match': '*' }));
    expect((await write({ ...pump, price: 500 })).status).toBe(200);
    expect(await baselineNow()).toMatchObject({ startedBy: 'first-reading' });
    expect((await write({ ...pump, powerPoints: [{ setting: 100, power: 200 }] })).status).toBe(200);
    expect(await baselineNow()).toMatchObject({ startedBy: 'installation', complete: false });
  });

  it('is no calibration', async () => {
    const heads = daily({ noise: { flow: 0.005, head: 0.005 }, days: 30 });
    const { units: _, ...document } = await jsonOf(await app.call(app.loop));
    const meters = ['flow', 'head'].map((measure) => ({ measure, accuracy: 0.002 }));
    await app.call(app.loop, sent('PUT', { ...document, meters }, { 'If-Match': '*' }));
    await send(app, heads);
    const applied = await app.call(
      `${app.loop}/calibration`,
      sent('POST', { apply: true }, { 'If-Match': '*' }),
    );
    expect(applied.status, await applied.text()).toBe(200);
    expect(await baselineNow()).toMatchObject({ startedBy: 'first-reading', complete: true });
  });

  it('is no change before the first reading', async () => {
    const fresh = await flume();
    const { units: _, ...document } = await jsonOf(await fresh.call(fresh.loop));
    const change = { ...document, frictionMultiplier: 1.1 };
    await fresh.call(fresh.loop, sent('PUT', change, { 'If-Match': '*' }));
    await fresh.call(fresh.readings, sent('POST', example('readings.json')));
    expect((await conditionOf(fresh)).baseline).toMatchObject({ startedBy: 'first-reading' });
  });
});
