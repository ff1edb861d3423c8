/** The picture and the report of a stored comparison, over HTTP. */
import { beforeAll, describe, expect, it } from 'vitest';
import { inertPage, readable } from '../../../drawing/read-page.ts';
import { readSvg } from '../../../drawing/read-svg.ts';
import { created, example, type Json, jsonOf, sent } from '../../../requests.ts';
import { refused, type StockedApp, stockedApp } from '../../../stocked-app.ts';

let app: StockedApp;
let path: string;
let answer: Json;
beforeAll(async () => {
  app = await stockedApp();
  const id = await created(app, '/v1/comparisons', example('comparison-seahorse-bank.json'));
  path = `/v1/comparisons/${id}`;
  answer = await jsonOf(await app.call(path));
});

const textOf = async (address: string): Promise<string> => {
  const response = await app.call(address);
  const text = await response.text();
  expect(response.status, text).toBe(200);
  return text;
};

describe('a stored comparison', () => {
  it('has its picture, with every option', async () => {
    const { words } = readSvg(await textOf(`${path}/chart.svg`));
    expect(words[0]).toContain(String(answer.name));
    for (const name of ['energy', 'maintenance', 'downtime']) expect(words).toContain(name);
  });

  it('has its report, with the figures of the answer', async () => {
    const text = readable(inertPage(await textOf(`${path}/report`)));
    expect(text).toContain(`${answer.name} : cost comparison`);
    expect(text).toContain('costs least');
    expect(text).toContain('2026-01-15');
    expect(text).not.toContain('Out of date');
  });

  it('gives 304 while nothing has moved', async () => {
    for (const page of [`${path}/chart.svg`, `${path}/report`]) {
      const etag = (await app.call(page)).headers.get('etag') ?? '';
      expect((await app.call(page, { headers: { 'If-None-Match': etag } })).status).toBe(304);
    }
  });

  it('says in its report that what it rests on has moved', async () => {
    const loop = await created(app, '/v1/loops', example('loop-kelp-flume.json'));
    const option = { name: 'As it is', assemblies: [{ loop, pump: app.pumpId }] };
    const id = await created(app, '/v1/comparisons', { years: 5, options: [option] });
    const report = `/v1/comparisons/${id}/report`;
    const etag = (await app.call(report)).headers.get('etag') ?? '';
    const changed = { ...example('loop-kelp-flume.json'), frictionMultiplier: 1.2 };
    expect((await app.call(`/v1/loops/${loop}`, sent('PUT', changed, { 'If-Match': '*' }))).status).toBe(200);
    expect((await app.call(report, { headers: { 'If-None-Match': etag } })).status).toBe(200);
    expect(readable(inertPage(await textOf(report)))).toContain('Out of date');
  });

  it('is not there without its id, and knows no other query', async () => {
    for (const page of ['chart.svg', 'report']) {
      expect((await refused(await app.call(`/v1/comparisons/none/${page}`))).status).toBe(404);
      expect((await refused(await app.call(`${path}/${page}?x=1`))).status).toBe(422);
    }
  });
});
