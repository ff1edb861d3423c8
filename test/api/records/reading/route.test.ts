import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { readingRows } from '../../../../api/records/reading/schema.ts';
import { schemaContext } from '../../../../api/units/schema-context.ts';
import { expectClose } from '../../../expect-close.ts';
import { example, exampleText, jsonOf, sent } from '../../requests.ts';
import { answered, refused } from '../../stocked-app.ts';
import { type MeasuredLoop, measuredLoop, posted, table, taken } from './measured-loop.ts';

const page = z.object({
  items: z.array(z.record(z.string(), z.unknown())),
  next: z.string().nullable(),
  units: z.record(z.string(), z.string()),
});

/** Of readings that are as predicted, more or less. */
const UNSUSPECTED = { cautions: [], units: {} };

let app: MeasuredLoop;

beforeEach(async () => {
  app = await measuredLoop();
});

const listed = async (query = '') => await answered(page, await app.call(`${app.readings}${query}`));

describe('readings', () => {
  it('are taken in, one or many, and read back in the order of time', async () => {
    const response = await app.call(app.readings, sent('POST', example('readings.json')));
    expect(response.headers.get('location')).toBe(app.readings);
    expect(await taken(response)).toEqual({ accepted: 12, merged: 0, ...UNSUSPECTED });
    await taken(await posted(app, app.readings, [{ time: '2025-10-13T11:00:00+01:00', setting: '70 %' }]));
    const { items, next, units } = await listed();
    expect(next).toBeNull();
    expect(units).toMatchObject({ flow: 'L/h', head: 'm', pressure: 'kPa' });
    expect(items[0]).toEqual({ time: '2025-10-13T10:00:00.000Z', setting: 70 });
    expect(items[12]).toEqual({
      time: '2026-01-08T10:00:00.000Z',
      setting: 80,
      power: 114,
      flow: 6730,
      suctionPressure: -7.7,
      dischargePressure: 17.6,
      outletFlows: { 'far end': 2710 },
    });
  });

  it('of one instant are merged: what is stated later wins, what is left out stays', async () => {
    const time = '2026-01-15T10:00:00Z';
    await taken(await posted(app, app.readings, [{ time, setting: 80, power: 120, flow: 8000 }]));
    const again = [
      { time, setting: 79, flow: 8100, outletFlows: { left: 2000 } },
      { time, setting: 79, outletFlows: { right: 2100 } },
    ];
    expect(await taken(await posted(app, app.readings, again))).toEqual({
      accepted: 2,
      merged: 2,
      ...UNSUSPECTED,
    });
    const { items } = await listed();
    expect(items).toEqual([
      {
        time: '2026-01-15T10:00:00.000Z',
        setting: 79,
        power: 120,
        flow: 8100,
        outletFlows: { left: 2000, right: 2100 },
      },
    ]);
  });

  it('come in units of the request, of a string and of a header, and go out in those asked for', async () => {
    const body = [
      { time: '2026-01-15T10:00:00Z', setting: 80, flow: 2000, head: '20 kPa', suctionPressure: '-1 psi' },
    ];
    await taken(await app.call(`${app.readings}?units=us`, sent('POST', { readings: body })));
    const text = 'Time,flow [gal/min],setting,far end [gal/h]\r\n2026-01-15T10:01:00Z,30,80,500\r\n';
    await taken(await table(app, app.readings, text));
    const { items } = await listed('?units=us');
    expectClose(Number(items[0]?.flow), 2000, { relative: 1e-9 });
    expectClose(Number(items[0]?.suctionPressure), -1, { relative: 1e-9 });
    // 20 kPa of this water, 1023.34 kg/m3, in feet.
    expectClose(Number(items[0]?.head), 20_000 / (1023.343 * 9.80665 * 0.3048), { relative: 1e-6 });
    expectClose(Number(items[1]?.flow), 1800, { relative: 1e-9 });
    const outlets = z.record(z.string(), z.number()).parse(items[1]?.outletFlows);
    expectClose(outlets['far end'] ?? Number.NaN, 500, { relative: 1e-9 });
  });

  it('go out as CSV and come in again as they are', async () => {
    await taken(await app.call(app.readings, sent('POST', example('readings.json'))));
    const text = await (await app.call(`${app.readings}?format=csv`)).text();
    expect(text.split('\r\n')[0]).toBe(
      'time,setting [%],power [W],flow [L/h],head [m],suctionPressure [kPa],dischargePressure [kPa],outletFlows/far end [L/h]',
    );
    const other = await measuredLoop();
    expect(await taken(await table(other, other.readings, text))).toEqual({
      accepted: 12,
      merged: 0,
      ...UNSUSPECTED,
    });
    expect(await (await other.call(other.readings)).text()).toBe(await (await app.call(app.readings)).text());
  });

  it('in the documented table are accepted', async () => {
    expect(await taken(await table(app, app.readings, exampleText('readings.csv')))).toEqual({
      accepted: 2,
      merged: 0,
      ...UNSUSPECTED,
    });
  });

  it('are read by range and page by page', async () => {
    const minute = (i: number) => `2026-01-15T10:0${i}:00Z`;
    const many = Array.from({ length: 7 }, (_, i) => ({ time: minute(i), setting: 80, power: i }));
    await taken(await posted(app, app.readings, many));
    const range = `?from=${minute(1)}&to=${minute(6)}&limit=2`;
    const powers: unknown[] = [];
    let cursor = '';
    for (let pages = 0; pages < 5; pages += 1) {
      const { items, next } = await listed(`${range}${cursor}`);
      powers.push(...items.map(({ power }) => power));
      if (next === null) break;
      cursor = `&cursor=${next}`;
    }
    expect(powers).toEqual([1, 2, 3, 4, 5]);
  });

  it('of a loop without a pump are taken at any setting', async () => {
    const bare = await measuredLoop({ installed: undefined });
    await taken(await posted(bare, bare.readings, [{ time: '2026-01-15T10:00:00Z', setting: 5, flow: 100 }]));
  });

  it('that together say no flow at speed are refused, whichever came first', async () => {
    const time = '2026-01-15T10:00:00Z';
    const rest = { 'far end': 0, left: 0 };
    await taken(await posted(app, app.readings, [{ time, setting: 80, power: 120, outletFlows: rest }]));
    const last = [{ time, setting: 80, outletFlows: { right: 0 } }];
    const problem = await refused(await posted(app, app.readings, last));
    expect(problem).toMatchObject({ status: 422, errors: [{ pointer: '/readings' }] });
    expect((await listed()).items[0]).toMatchObject({ outletFlows: rest });
  });

  it('are deleted by a stretch of time, with the ETag of the loop', async () => {
    await taken(await app.call(app.readings, sent('POST', example('readings.json'))));
    const range = '?from=2025-10-01T00:00:00Z&to=2025-11-01T00:00:00Z';
    const remove = (query: string, headers: Record<string, string>) =>
      app.call(`${app.readings}${query}`, { method: 'DELETE', headers });
    expect((await refused(await remove(range, {}))).status).toBe(428);
    expect((await refused(await remove(range, { 'If-Match': '"9-metric"' }))).status).toBe(412);
    expect((await refused(await remove('?from=2025-10-01T00:00:00Z', { 'If-Match': '*' }))).status).toBe(422);
    const before = (await listed()).items.length;
    const early = (await listed(range)).items.length;
    expect(early).toBeGreaterThan(0);
    const tag = (await app.call(app.loop)).headers.get('etag') ?? '';
    expect((await remove(range, { 'If-Match': tag })).status).toBe(204);
    expect((await listed()).items).toHaveLength(before - early);
    expect((await listed(range)).items).toEqual([]);
  });

  it('against a shut valve state a flow of 0 beside a head', async () => {
    const time = '2026-01-15T10:00:00Z';
    await taken(await posted(app, app.readings, [{ time, setting: 80, flow: 0, head: 3.2 }]));
    await taken(await posted(app, app.readings, [{ time, setting: 0, flow: 0 }]));
  });
});

describe('means of readings', () => {
  it('are of hours by UTC and of days by the clocks of the site', async () => {
    // The site is in Lisbon; in Kiribati the day begins fourteen hours earlier.
    const site = await jsonOf(await app.call('/v1/site'));
    await app.call('/v1/site', sent('PUT', { ...site, timeZone: 'Pacific/Kiritimati' }, { 'If-Match': '*' }));
    const many = [
      ['2026-01-14T09:59:59Z', 70, 100],
      ['2026-01-14T10:00:00Z', 80, 110],
      ['2026-01-14T10:59:00Z', 80, 130],
      ['2026-01-14T11:00:00Z', 60, 60],
    ].map(([time, setting, power]) => ({ time, setting, power, outletFlows: { left: power } }));
    await taken(await posted(app, app.readings, many));
    const hours = (await listed('?by=hour')).items;
    expect(hours.map(({ from, readings, power }) => [from, readings, power])).toEqual([
      ['2026-01-14T09:00:00.000Z', 1, 100],
      ['2026-01-14T10:00:00.000Z', 2, 120],
      ['2026-01-14T11:00:00.000Z', 1, 60],
    ]);
    const days = (await listed('?by=day')).items;
    expect(days.map(({ from, until, day, power }) => [from, until, day, power])).toEqual([
      ['2026-01-13T10:00:00.000Z', '2026-01-14T10:00:00.000Z', '2026-01-14', 100],
      ['2026-01-14T10:00:00.000Z', '2026-01-15T10:00:00.000Z', '2026-01-15', 100],
    ]);
    expect(days[1]).toMatchObject({ setting: 73.3333, flow: null, outletFlows: { left: 100 } });
  });

  it('leave out days without readings, over years too, and go on page by page', async () => {
    const days = ['2019-03-30', '2019-03-31', '2021-07-01', '2025-12-31', '2026-01-15'];
    await taken(
      await posted(
        app,
        app.readings,
        days.map((day) => ({ time: `${day}T10:00:00Z`, setting: 80 })),
      ),
    );
    const found: unknown[] = [];
    let cursor = '';
    for (let pages = 0; pages < 5; pages += 1) {
      const { items, next } = await listed(`?by=day&limit=2${cursor}`);
      found.push(...items.map(({ day }) => day));
      if (next === null) break;
      cursor = `&cursor=${next}`;
    }
    expect(found).toEqual(days);
    const text = await (await app.call(`${app.readings}?by=day&format=csv`)).text();
    expect(text.split('\r\n')[0]).toMatch(/^from,until,day,readings,setting \[%\],power \[W\]/);
  });
});

describe('many readings', () => {
  const START = Date.UTC(2025, 11, 1);
  const many = (count: number) =>
    Array.from({ length: count }, (_, i) => ({
      time: new Date(START + i * 60_000).toISOString(),
      setting: 80,
      power: 118 + (i % 5),
      flow: 8200,
    }));

  it('are taken in up to 50,000 a request, in a body larger than others may be', async () => {
    const list = many(50_000);
    expect(JSON.stringify(list).length).toBeGreaterThan(1024 * 1024);
    expect(await taken(await posted(app, app.readings, list))).toEqual({
      accepted: 50_000,
      merged: 0,
      ...UNSUSPECTED,
    });
    const { items } = await listed('?by=day');
    expect(items).toHaveLength(35);
    const problem = await refused(await posted(app, app.readings, [...list, list[0]]));
    expect(problem).toMatchObject({ code: 'limit-exceeded', limit: 50_000, actual: 50_001 });
  });

  it('are refused beyond 8 MiB', async () => {
    const body = ' '.repeat(8 * 1024 * 1024 + 1);
    const response = await app.call(app.readings, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', 'Content-Length': String(body.length) },
      body,
    });
    expect((await refused(response)).code).toBe('body-too-large');
  });

  it('are told by ten faults at most', () => {
    const context = schemaContext({ system: 'metric', side: 'request' });
    const faults = readingRows(context).safeParse(many(1_000).map((one) => ({ ...one, flow: 'much' })));
    expect(faults.error?.issues.length).toBe(10);
  });
});
