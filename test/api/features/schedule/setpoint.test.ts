import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { exampleJson } from '../../../openapi/read-example.ts';
import { type Facility, facility } from './facility.ts';

const SCHEDULE = {
  phases: [
    { name: 'day', from: '07:00', factor: 1 },
    { name: 'night', from: '22:00', factor: 0.6 },
  ],
};

let lab: Facility;
let path: string;
let now = Date.UTC(2026, 0, 15, 12);
beforeEach(async () => {
  now = Date.UTC(2026, 0, 15, 12);
  lab = await facility({ change: { clock: () => new Date(now) } });
  path = `/v1/loops/${lab.loop}/setpoint`;
});

const schedule = (body: unknown, headers: Record<string, string> = {}) =>
  lab.send('PUT', `/v1/loops/${lab.loop}/schedule`, body, headers);
const settingAt = async (at: string): Promise<string> =>
  (await lab.send('GET', `${path}?pointer=/setting&at=${encodeURIComponent(at)}`)).text();

describe('the setpoint', () => {
  it('is without a schedule that of the recommendation for the installed pump', async () => {
    const body = await (await lab.send('GET', path)).json();
    expect(body).toMatchObject({
      setting: 70,
      feasible: true,
      phase: null,
      fallback: { setting: 70, requiredFlowsMet: true, phasesBelowRequired: [] },
    });
    expect(body.outlets[0]).not.toHaveProperty('shortage');
    for (const name of ['reason', 'step', 'limitedBy', 'latestReading'])
      expect(body).not.toHaveProperty(name);
  });

  it('is that of the phase, since and until when by the clocks of the site', async () => {
    await schedule(SCHEDULE);
    expect(await (await lab.send('GET', path)).json()).toMatchObject({
      setting: 70,
      phase: 'day',
      from: '2026-01-15T07:00:00.000+00:00',
      until: '2026-01-15T22:00:00.000+00:00',
    });
    const summer = await (await lab.send('GET', `${path}?at=2026-07-01T21:30:00Z`)).json();
    expect(summer).toMatchObject({ phase: 'night', from: '2026-07-01T22:00:00.000+01:00' });
  });

  it('is one plain number for a script, with a plus that was not encoded too', async () => {
    await schedule(SCHEDULE);
    const plain = await lab.send('GET', `${path}?pointer=/setting`);
    expect([plain.headers.get('content-type'), await plain.text()]).toEqual([
      'text/plain; charset=utf-8',
      '70',
    ]);
    expect(await settingAt('2026-07-01T12:00:00+01:00')).toBe('70');
    expect((await lab.send('GET', `${path}?at=2026-07-01T12:00:00+01:00`)).status).toBe(200);
  });

  it('is answered by 304 while it holds, and anew once its phase, loop or schedule has changed', async () => {
    await schedule(SCHEDULE);
    const ask = (etag: string) => lab.send('GET', path, undefined, { 'if-none-match': etag });
    const first = await lab.send('GET', path);
    expect(first.headers.get('cache-control')).toBe('private, no-cache');
    const etag = first.headers.get('etag') ?? '';
    for (let minute = 0; minute < 60; minute++) {
      now += 60_000;
      expect((await ask(etag)).status).toBe(304);
    }
    now = Date.UTC(2026, 0, 15, 22);
    const night = await ask(etag);
    expect([night.status, (await night.json()).phase]).toEqual([200, 'night']);
    now = Date.UTC(2026, 0, 15, 12);
    expect((await ask(etag)).status).toBe(304);
    await schedule({ phases: [SCHEDULE.phases[0]] }, { 'if-match': '*' });
    expect((await ask(etag)).status).toBe(200);
  });

  it('follows a schedule that was deleted and made again, and the pump', async () => {
    await schedule(SCHEDULE);
    expect(await settingAt('2026-01-15T23:00:00Z')).not.toBe('70');
    await lab.send('DELETE', `/v1/loops/${lab.loop}/schedule`, undefined, { 'if-match': '*' });
    now += 1;
    await schedule({ phases: [SCHEDULE.phases[0]] });
    expect(await settingAt('2026-01-15T23:00:00Z')).toBe('70');
    const pump = { ...exampleJson('pump-canister-250.json'), settings: { min: 30, max: 100, step: 7 } };
    await lab.send('PUT', `/v1/pumps/${lab.pump}`, pump, { 'if-match': '*' });
    expect(await settingAt('2026-01-15T23:00:00Z')).toBe('72');
  });

  it('is never an error where a phase is infeasible', async () => {
    await schedule({ phases: [{ name: 'storm', from: '00:00', factor: 5 }] });
    const response = await lab.send('GET', path);
    expect(response.status).toBe(200);
    const body = await response.json();
    expect(body).toMatchObject({
      ...{ setting: 83, feasible: false, reason: 'not-enough-head', step: 2 },
      limitedBy: ['screen-velocity'],
      fallback: { setting: 83, requiredFlowsMet: false, phasesBelowRequired: ['storm'] },
    });
    for (const { flow, requiredFlow, shortage } of body.outlets) {
      expectClose(shortage, requiredFlow - flow, { relative: 1e-5 });
    }
    expect(body.cautions).toContainEqual(
      expect.objectContaining({ code: 'phase-infeasible', severity: 'danger' }),
    );
  });

  it('stands at 0 where a volume lets the pump stop', async () => {
    const price = { name: 'nights', periods: [{ name: 'dear', price: 9, from: '06:00', to: '23:00' }] };
    const tariff = { ...price, otherwise: { name: 'cheap', price: 0.01 } };
    const { id } = await (await lab.send('POST', '/v1/tariffs', tariff)).json();
    const volume = { perDay: 20_000, mayStop: true };
    await schedule({ tariff: id, phases: [{ name: 'all', from: '00:00', volume }] });
    const body = await (await lab.send('GET', path)).json();
    expect(body).toMatchObject({ setting: 0, feasible: true, flow: 0, power: 3 });
    expect(Number(await settingAt('2026-01-15T03:00:00Z'))).toBeGreaterThan(0);
    // Alone, the pump must not stand still.
    expect(body.fallback.setting).toBeGreaterThan(0);
  });

  it.each([
    ['2026-03-29T00:59:59Z', 'before'],
    ['2026-03-29T01:00:00Z', 'skipped'],
    ['2026-10-25T00:29:59Z', 'before'],
    ['2026-10-25T00:30:00Z', 'skipped'],
    ['2026-10-25T01:10:00Z', 'skipped'],
  ])('at %s, when clocks change, is that of %s', async (at, phase) => {
    await schedule({
      phases: [
        { name: 'before', from: '23:00', factor: 0.6 },
        { name: 'skipped', from: '01:30', factor: 1 },
      ],
    });
    expect(await (await lab.send('GET', `${path}?pointer=/phase&at=${at}`)).text()).toBe(phase);
  });

  it('is 404 of an unknown loop, 422 without an installed pump or a requirement', async () => {
    expect((await lab.send('GET', '/v1/loops/none/setpoint')).status).toBe(404);
    const { installed, ...bare } = await (await lab.send('GET', `/v1/loops/${lab.loop}`)).json();
    await lab.send('PUT', `/v1/loops/${lab.loop}`, bare, { 'if-match': '*' });
    const response = await lab.send('GET', path);
    expect([response.status, (await response.json()).code]).toEqual([422, 'no-installed-pump']);
  });

  it.each(['2026-01-15', '2026-01-15T12:00:00', 'now', '1066-10-14T09:00:00Z', '9999-01-01T00:00:00Z'])(
    'at %s is refused',
    async (at) => {
      const response = await lab.send('GET', `${path}?at=${at}`);
      expect([response.status, (await response.json()).errors[0].parameter]).toEqual([422, 'at']);
    },
  );
});

describe('the setpoints of 24 hours', () => {
  it('meet end to end and reach to the end of them', async () => {
    await schedule(SCHEDULE);
    const { items } = await (await lab.send('GET', `/v1/loops/${lab.loop}/setpoints`)).json();
    expect(items.map((item: { phase: string }) => item.phase)).toEqual(['day', 'night', 'day']);
    expect(items[1].from).toBe(items[0].until);
    expect(Date.parse(items.at(-1).until)).toBeGreaterThanOrEqual(now + 86_400_000);
  });

  it('come as a table', async () => {
    await schedule(SCHEDULE);
    const csv = await lab.send('GET', `/v1/loops/${lab.loop}/setpoints`, undefined, { accept: 'text/csv' });
    const [header, first] = (await csv.text()).split('\r\n');
    expect(header).toBe('from,until,phase,setting [%],feasible,power [W],flow [L/h]');
    expect(first).toMatch(/^2026-01-15T07:00:00\.000\+00:00,2026-01-15T22:00:00\.000\+00:00,day,70,true,/);
  });
});
