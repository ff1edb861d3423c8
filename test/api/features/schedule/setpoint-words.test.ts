/** The sentences of a setpoint, and what it says of the latest reading. */
import { beforeEach, describe, expect, it } from 'vitest';
import { type Facility, facility } from './facility.ts';

const NOON = Date.UTC(2026, 0, 15, 12);
const DAY = { name: 'day', from: '07:00', factor: 1 };
const NIGHT = { name: 'night', from: '22:00', factor: 0.6 };

let now = NOON;
let lab: Facility;
let loop: string;
beforeEach(async () => {
  now = NOON;
  lab = await facility({ change: { clock: () => new Date(now) } });
  loop = `/v1/loops/${lab.loop}`;
});

const schedule = (...phases: readonly object[]) => lab.send('PUT', `${loop}/schedule`, { phases }, {});
const answer = async (query = '') => (await lab.send('GET', `${loop}/setpoint${query}`)).json();
const summary = async (query = ''): Promise<string> => (await answer(query)).summary;
const read = async (...readings: readonly object[]) => {
  const posted = await lab.send('POST', `${loop}/readings`, { readings });
  expect(posted.status).toBe(201);
};
const at = (minute: number) => new Date(NOON + minute * 60_000).toISOString();

describe('the sentence of a setpoint', () => {
  it('says what to set, until when, in which phase', async () => {
    expect(await summary()).toBe('Set 70 % until 2026-01-16 00:00.');
    await schedule(DAY, NIGHT);
    expect(await summary()).toBe('Set 70 % until 22:00 (phase "day").');
    expect(await summary('?at=2026-01-15T23:00:00Z')).toMatch(
      /^Set \d+ % until 2026-01-16 07:00 \(phase "night"\)\.$/,
    );
  });

  it('says where none is feasible which is set, what limits it, and what an outlet receives', async () => {
    await schedule({ ...DAY, factor: 1.3 });
    const words = await summary();
    expect(words).toMatch(
      /^Danger: No setting is feasible in phase "day"\. Set 83 %, the highest within the screen limit\. Outlet "far end" receives 3\d\d0 L\/h, required 3900 L\/h \(-\d\.\d %\)\.$/,
    );
    expect(await summary('?units=us')).toMatch(/receives \d+ gal\/h, required 1030\.\d+ gal\/h/);
  });
});

describe('the latest reading', () => {
  it('is absent without one of the last quarter of an hour', async () => {
    await read({ time: at(-16), setting: 70, power: 85 });
    expect(await answer()).not.toHaveProperty('latestReading');
    now = NOON - 2 * 60_000;
    expect(await answer()).toHaveProperty('latestReading');
  });

  it('shows a pump that is stopped: a danger, said first', async () => {
    await read({ time: at(-5), setting: 70, power: 85 }, { time: at(-3), setting: 70, power: 0.5 });
    const body = await answer();
    expect(body.latestReading).toEqual({ time: at(-3), setting: 70, power: 0.5, state: 'stopped' });
    expect(body.summary).toMatch(/^Danger: The pump is stopped although it is set to run/);
    expect(body.summary).toMatch(/ At 11:57 the pump was stopped: 0\.5 W at 70 %\.$/);
    expect(body.cautions[0]).toMatchObject({ code: 'pump-stopped', severity: 'danger' });
  });

  it('shows another setting than was due at its time, not now', async () => {
    await schedule({ ...DAY, from: '11:50' }, { ...NIGHT, from: '08:00' });
    await read({ time: at(-12), setting: 70, power: 85 });
    expect((await answer()).latestReading.state).toBe('other-setting');
    expect(await summary()).toMatch(/ At 11:48 the setting was 70 %, due \d\d %\.$/);
    await read({ time: at(-2), setting: 70, power: 85 });
    expect((await answer()).latestReading.state).toBe('as-set');
  });

  it('shows a power or flow that differs, and one that does not', async () => {
    await read({ time: at(-3), setting: 70, power: 60, flow: 7500 });
    expect(await summary()).toMatch(/ At 11:57 the power was 60 W, predicted 85\.7 W \(-30 %\) at 70 %\.$/);
    await read({ time: at(-2), setting: 70, power: 86, flow: 7500 });
    expect(await summary()).toMatch(/ At 11:58 the pump ran at 70 % as set\.$/);
  });

  it('is part of what If-None-Match compares', async () => {
    const path = `${loop}/setpoint`;
    const etag = (await lab.send('GET', path)).headers.get('etag') ?? '';
    const again = () => lab.send('GET', path, undefined, { 'if-none-match': etag });
    expect((await again()).status).toBe(304);
    await read({ time: at(-1), setting: 70, power: 85 });
    expect((await again()).status).toBe(200);
    now += 20 * 60_000;
    expect((await again()).status).toBe(304);
  });

  it('is that of the instant asked about, and found among many', async () => {
    const many = Array.from({ length: 2500 }, (_, place) => ({
      time: new Date(NOON - 5 * 60_000 + place * 100).toISOString(),
      ...{ setting: 70, power: 85 },
    }));
    await read(...many);
    expect((await answer()).latestReading.time).toBe(many.at(-1)?.time);
    const early = many[100]?.time ?? '';
    expect((await answer(`?at=${early}`)).latestReading.time).toBe(early);
  });
});
