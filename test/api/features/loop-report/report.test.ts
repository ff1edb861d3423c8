/** The printable report of a loop. */
import { beforeAll, describe, expect, it } from 'vitest';
import { inertPage, readable } from '../../drawing/read-page.ts';
import { created, example, type Json, sent } from '../../requests.ts';
import { refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

let app: StockedApp;
beforeAll(async () => {
  app = await stockedApp();
});

/** The text of a page, which must be one, complete and inert. */
async function pageAt(path: string): Promise<string> {
  const answer = await app.call(path);
  const text = await answer.text();
  expect(answer.status, text).toBe(200);
  expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
  return inertPage(text);
}

const FLUME = example('loop-kelp-flume.json');

describe('the report of a loop', () => {
  it('has the answer first: pump, setting, cost', async () => {
    const text = readable(await pageAt(`${app.loop}/report`));
    // The worked example of the kelp flume at 0.21 EUR: setting 70, 85.7042 W, 750.769 kWh, 157.661 EUR a year.
    const answer = text.slice(text.indexOf('Answer'), text.indexOf('Outlets'));
    expect(answer).toContain('Run Canister 250 at setting 70 %');
    expect(answer).toContain('85.7 W, 750.8 kWh a year, EUR 157.66 a year');
  });

  it('tells what each outlet gets of what it needs', async () => {
    const text = readable(await pageAt(`${app.loop}/report`));
    expect(text).toContain('far end (limits) 3028 L/h 3000 L/h 0.949 % 4.76 m/s');
    expect(text).toContain('left 2252 L/h 2000 L/h 12.6 %');
  });

  it('is in US units where they are in force, on other paper', async () => {
    const page = await pageAt(`${app.loop}/report?units=us`);
    const text = readable(page);
    // 3028.46 and 3000 L/h / 3.785411784; 25 degC.
    expect(text).toContain('far end (limits) 800 gal/h 792.5 gal/h');
    expect(text).toContain('77 degF');
    expect(text).not.toContain('L/h');
    expect(page).toContain('size: letter');
    expect(await pageAt(`${app.loop}/report`)).toContain('size: A4');
  });

  it('carries the uncertainty, cautions with their sources, assumptions, date, versions and words of safety', async () => {
    const text = readable(await pageAt(`${app.loop}/report`));
    expect(text).toContain('By ISO 9906 grade 2B');
    expect(text).toContain('Mains electricity near water');
    expect(text).toContain('40 CFR 125.84');
    expect(text).toContain('Price of electricity 0.21 EUR per kWh');
    expect(text).toContain('2026-01-15');
    expect(text).toContain(`Loop ${app.loopId} version 1`);
    expect(text).toContain(`Pumps ${app.pumpId} version 1`);
    expect(text).toContain("never replace the limits that a pump's maker states, local code");
  });

  it('has the picture of the duty, and of the day where there is a schedule', async () => {
    const installed = { pump: app.pumpId, count: 1, setting: 80, checkValves: true };
    const id = await created(app, '/v1/loops', { ...FLUME, installed });
    expect((await pageAt(`/v1/loops/${id}/report`)).match(/<svg [^>]*role="img"/g)).toHaveLength(1);
    await app.call(`/v1/loops/${id}/schedule`, sent('PUT', example('schedule.json')));
    const page = await pageAt(`/v1/loops/${id}/report`);
    expect(page.match(/<svg [^>]*role="img"/g)).toHaveLength(2);
    const text = readable(page);
    expect(text).toContain('Now: Canister 250 80 %');
    expect(text).toContain('Recommended: Canister 250 70 %');
  });

  it('tells what was measured, and is anew once more is', async () => {
    const installed = { pump: app.pumpId, count: 1, setting: 80, checkValves: true };
    const id = await created(app, '/v1/loops', { ...FLUME, installed });
    const report = `/v1/loops/${id}/report`;
    expect(readable(await pageAt(report))).not.toContain('As measured');
    await app.call(`/v1/loops/${id}/readings`, sent('POST', example('readings.json')));
    const text = readable(await pageAt(report));
    expect(text).toContain('As measured Loop "Kelp flume" has changed since its baseline');
    expect(text).toContain(
      '12 readings, 2025-10-23 to 2026-01-08. The recommendation assumes the loop as it was: remedy what was found',
    );
  });

  it('says plainly that no pump serves, and why', async () => {
    const id = await created(app, '/v1/loops', { ...FLUME, staticHead: 30 });
    const text = readable(await pageAt(`/v1/loops/${id}/report?pump=${app.pumpId}`));
    expect(text).toContain('No pump that was judged serves Kelp flume');
    expect(text).toContain('Pumps that serve at no setting');
  });

  it('chooses among the pumps that are named', async () => {
    const weak = await created(app, '/v1/pumps', example('pump-inline-60.json'));
    const text = readable(await pageAt(`${app.loop}/report?pump=${weak},${app.pumpId}`));
    expect(text).toContain('Run Canister 250');
    expect(text).toContain('Inline 60 Outlet "far end" receives at most');
    expect(readable(await pageAt(`${app.loop}/report?pump=${weak}&count=3`))).toContain('3 x Inline 60');
  });
});

describe('a name that a user gave', () => {
  it.each([
    '<script>alert(1)</script>',
    '"><img src=x onerror=alert(1)>',
    "' onmouseover='x",
    '</title></style></svg>',
    'حوض',
    '\u202Ea\u2069b',
    'x'.repeat(120),
  ])('stays a name: %s', async (name) => {
    const renamed: Json = JSON.parse(
      JSON.stringify({ ...FLUME, name }).replaceAll('"far end"', JSON.stringify(name)),
    );
    const id = await created(app, '/v1/loops', renamed);
    const text = readable(await pageAt(`/v1/loops/${id}/report`));
    expect(text).toContain(name.replace(/[\u202E\u2069]/g, ''));
  });
});

describe('the route', () => {
  it('answers 304 all day, and anew on the next or in other units', async () => {
    let now = '2026-01-15T10:00:00Z';
    const { call, loop } = await stockedApp({ clock: () => new Date(now) });
    const etag = (await call(`${loop}/report`)).headers.get('etag') ?? '';
    const again = { headers: { 'If-None-Match': etag } };
    expect((await call(`${loop}/report`, again)).status).toBe(304);
    expect((await call(`${loop}/report?units=us`, again)).status).toBe(200);
    now = '2026-01-16T10:00:00Z';
    expect((await call(`${loop}/report`, again)).status).toBe(200);
  });

  it('says what is wrong with a question', async () => {
    expect((await refused(await app.call('/v1/loops/none/report'))).status).toBe(404);
    expect((await refused(await app.call(`${app.loop}/report?pump=none`))).errors).toMatchObject([
      { parameter: 'pump' },
    ]);
    expect((await refused(await app.call(`${app.loop}/report?count=0`))).errors).toMatchObject([
      { parameter: 'count' },
    ]);
    const open = { run: [{ pipe: 'sch80 2', length: 3 }], outlet: { name: 'open' } };
    const id = await created(app, '/v1/loops', { ...FLUME, discharge: open });
    expect((await refused(await app.call(`/v1/loops/${id}/report`))).code).toBe('no-requirement');
    expect((await app.call(`${app.loop}/report`, { headers: { Accept: 'application/json' } })).status).toBe(
      406,
    );
  });
});
