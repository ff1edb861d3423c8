/** The picture of the condition of a loop, over HTTP. */
import { beforeAll, describe, expect, it } from 'vitest';
import { marksOf, readSvg } from '../../drawing/read-svg.ts';
import { created, example, jsonOf, sent } from '../../requests.ts';
import { refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const DAYS = 12;

let app: StockedApp;
let path: string;
beforeAll(async () => {
  app = await stockedApp();
  const installed = { pump: app.pumpId, count: 1, setting: 80, checkValves: true };
  const loop = await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), installed });
  path = `/v1/loops/${loop}`;
  const { flow, power } = await jsonOf(await app.call(`${path}/duty-point`));
  // One hundredth of the flow less each day.
  const readings = Array.from({ length: DAYS }, (_, day) => ({
    time: `2026-01-${String(day + 1).padStart(2, '0')}T06:00:00Z`,
    setting: 80,
    flow: Number(flow) * (1 - day / 100),
    power,
  }));
  const taken = await app.call(`${path}/readings`, sent('POST', { readings }));
  expect(taken.status, await taken.text()).toBe(201);
});

describe('the picture of a condition', () => {
  it('shows the departures that the answer tells, and what is found', async () => {
    const answer = await jsonOf(await app.call(`${path}/condition`));
    const text = await (await app.call(`${path}/condition/chart.svg`)).text();
    const picture = readSvg(text);
    expect(picture.words[1]).toBe(`Found: ${String(answer.verdict).replaceAll('-', ' ')}`);
    // Flow and power of each day, and one of the legend.
    expect(marksOf(picture)).toHaveLength(2 * DAYS + 1);
    expect(picture.words).toContain('flow, departure [% of predicted]');
    expect(picture.words).toContain('electrical power, departure [% of predicted]');
  });

  it('keeps to the range that is asked about', async () => {
    const from = '2026-01-05T00:00:00Z';
    const picture = readSvg(await (await app.call(`${path}/condition/chart.svg?from=${from}`)).text());
    expect(marksOf(picture)).toHaveLength(2 * (DAYS - 4) + 1);
  });

  it('is drawn without readings too', async () => {
    const installed = { pump: app.pumpId, count: 1, setting: 80 };
    const loop = await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), installed });
    const picture = readSvg(await (await app.call(`/v1/loops/${loop}/condition/chart.svg`)).text());
    expect(picture.words).toContain('There are no readings to compare.');
  });

  it('answers 304 until a reading comes', async () => {
    const etag = (await app.call(`${path}/condition/chart.svg`)).headers.get('etag') ?? '';
    const again = { headers: { 'If-None-Match': etag } };
    expect((await app.call(`${path}/condition/chart.svg`, again)).status).toBe(304);
    const reading = { time: '2026-01-14T06:00:00Z', setting: 80, flow: 7000 };
    await app.call(`${path}/readings`, sent('POST', { readings: [reading] }));
    expect((await app.call(`${path}/condition/chart.svg`, again)).status).toBe(200);
  });

  it('says what is wrong with a question', async () => {
    expect((await refused(await app.call(`${app.loop}/condition/chart.svg`))).code).toBe('no-installed-pump');
    expect((await refused(await app.call('/v1/loops/none/condition/chart.svg'))).status).toBe(404);
    expect((await refused(await app.call(`${path}/condition/chart.svg?from=never`))).errors).toMatchObject([
      { parameter: 'from' },
    ]);
  });
});
