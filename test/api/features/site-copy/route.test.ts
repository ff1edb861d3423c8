/** A site out as one document, and into an empty one. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { appUnderTest } from '../../app-under-test.ts';
import { type CheckAnswer, documentValidator } from '../../document-validator.ts';
import { created, example, type Json, jsonOf, sent } from '../../requests.ts';
import { exported, imported, type StockedSite, stockedSite } from './stocked-site.ts';

let source: StockedSite;
let check: CheckAnswer;

beforeAll(async () => {
  source = await stockedSite();
  check = await documentValidator(source);
});

describe('an export', () => {
  it.each(['metric', 'us'])('is the same after a round trip, in %s units', async (units) => {
    const text = await exported(source, units);
    const target = await appUnderTest();
    const response = await imported(target, text, units);
    expect(JSON.parse(await response.text())).toMatchObject({ tariffs: 1, pumps: 4, loops: 4, schedules: 1 });
    expect([response.status, response.headers.get('location')]).toEqual([201, '/v1/site']);
    expect(await exported(target, units)).toBe(text);
    const other = units === 'us' ? 'metric' : 'us';
    for (const path of ['/v1/site', '/v1/pumps', '/v1/loops', '/v1/tariffs']) {
      const [before, after] = await Promise.all(
        [source, target].map((app) => app.call(`${path}?units=${other}`)),
      );
      expect(await after?.text()).toBe(await before?.text());
    }
  });

  it('is as the document describes it', async () => {
    const copy = JSON.parse(await exported(source));
    expect(check({ path: '/v1/export', method: 'get', status: 200 }, copy)).toBe('');
    expect(copy).toMatchObject({ format: 'loopwright-site', formatVersion: 1, units: { flow: 'L/h' } });
  });

  it('gives one value of it where a pointer asks', async () => {
    const response = await source.call('/v1/export?pointer=/pumps/0/name');
    expect(await response.text()).toBe('Inline 60');
  });

  it('of an empty site can go into an empty site', async () => {
    const [one, other] = [await appUnderTest(), await appUnderTest()];
    const response = await imported(other, await exported(one));
    expect(JSON.parse(await response.text())).toMatchObject({ tariffs: 0, pumps: 0, loops: 0, schedules: 0 });
  });
});

describe('what was imported', () => {
  it('answers every question as the site it came from', async () => {
    const target = await appUnderTest();
    await imported(target, await exported(source));
    const loops = source.loopIds.flatMap((id) =>
      ['', '/recommendation', '/duty-point', '/system-curve', '/setpoint?at=2026-03-01T12:00:00Z'].map(
        (rest) => `/v1/loops/${id}${rest}`,
      ),
    );
    for (const path of [
      '/v1/site',
      '/v1/pumps',
      '/v1/tariffs',
      `/v1/loops/${source.loopIds[0]}/schedule`,
      ...loops,
    ]) {
      const [before, after] = await Promise.all([source.call(path), target.call(path)]);
      expect(await after.text(), path).toBe(await before.text());
      expect(after.headers.get('etag'), path).toBe(before.headers.get('etag'));
    }
  });

  it('is of the document, not of what bore its ids before', async () => {
    const target = await appUnderTest();
    const copy = JSON.parse(await exported(source));
    await imported(target, JSON.stringify(copy));
    const [loop] = source.loopIds;
    const before = await (await target.call(`/v1/loops/${loop}/recommendation?pointer=/best/flow`)).text();
    const any = { method: 'DELETE', headers: { 'If-Match': '*' } };
    for (const { id } of copy.loops) await target.call(`/v1/loops/${id}`, any);
    for (const { id } of copy.pumps) await target.call(`/v1/pumps/${id}`, any);
    await target.call('/v1/site', sent('PUT', { ...copy.site, tariff: null }, { 'If-Match': '*' }));
    for (const { id } of copy.tariffs) await target.call(`/v1/tariffs/${id}`, any);
    const changed = copy.loops.map((one: Json) =>
      one.id === loop ? { ...one, frictionMultiplier: 2 } : one,
    );
    expect((await imported(target, JSON.stringify({ ...copy, loops: changed }))).status).toBe(201);
    const after = await (await target.call(`/v1/loops/${loop}/recommendation?pointer=/best/flow`)).text();
    expect(after).not.toBe(before);
  });

  it('gets ids, versions and times of its own where it states none', async () => {
    const target = await appUnderTest();
    const site = example('site.json');
    const pumps = [example('pump-inline-60.json'), example('pump-canister-250.json')];
    const copy = { format: 'loopwright-site', formatVersion: 1, site, pumps };
    expect((await imported(target, JSON.stringify(copy))).status).toBe(201);
    const list = await jsonOf(await target.call('/v1/pumps'));
    expect(list.items).toMatchObject([
      { name: 'Inline 60', version: 1 },
      { name: 'Canister 250', version: 1 },
    ]);
  });

  it('keeps any numbers, entered in either system, for good', async () => {
    const positive = (max: number) => fc.double({ min: 1e-3, max, noNaN: true });
    const pump = fc.tuple(positive(100), positive(1), positive(2000), positive(30));
    await fc.assert(
      fc.asyncProperty(pump, fc.constantFrom('metric', 'us'), async ([head, share, flow, power], units) => {
        const one = await appUnderTest();
        await one.call('/v1/site', sent('PUT', example('site.json'), { 'If-Match': '*' }));
        const points = [0, 0.3, 0.6, 1].map((x) => ({
          flow: flow * x,
          head: head * (1 - share * 0.9 * x * x),
        }));
        const document = {
          name: 'Random',
          headPoints: points,
          powerPoints: [{ setting: 100, power }],
          price: power,
        };
        await created(one, `/v1/pumps?units=${units}`, document);
        const text = await exported(one);
        const other = await appUnderTest();
        expect((await imported(other, text)).status).toBe(201);
        expect(await exported(other)).toBe(text);
      }),
      { seed: 1, numRuns: 30 },
    );
  });
});

describe('a large site', () => {
  it('goes out and in beyond the limit of other bodies', async () => {
    const target = await appUnderTest();
    const copy = JSON.parse(await exported(source));
    const pumps = Array.from({ length: 1300 }, (_, n) => ({
      ...copy.pumps[n % 4],
      id: `more-${n}`,
      key: `more-${n}`,
    }));
    const text = JSON.stringify({ ...copy, pumps: [...copy.pumps, ...pumps] });
    expect(text.length).toBeGreaterThan(1024 * 1024);
    const response = await imported(target, text);
    expect(await response.text()).toContain('"pumps":1304');
    expect(JSON.parse(await exported(target)).pumps).toHaveLength(1304);
  });

  it('lets others be served meanwhile', async () => {
    const copy = JSON.parse(await exported(source));
    const pumps = Array.from({ length: 1000 }, (_, n) => ({ ...copy.pumps[n % 4], id: `more-${n}` }));
    const target = await appUnderTest();
    let served = 0;
    const underWay = imported(target, JSON.stringify({ ...copy, pumps: [...copy.pumps, ...pumps] }));
    let isDone = false;
    void underWay.then(() => {
      isDone = true;
    });
    while (!isDone) {
      await target.call('/healthz');
      await new Promise(setImmediate);
      served += 1;
    }
    expect(served).toBeGreaterThan(20);
  });
});
