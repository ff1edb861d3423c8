/** The picture of the day of a loop. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { exampleJson } from '../../../openapi/read-example.ts';
import { type Picture, readSvg } from '../../drawing/read-svg.ts';
import { refused } from '../../stocked-app.ts';
import { type Facility, facility } from './facility.ts';

async function dayOf({ call, loop }: Facility, query = ''): Promise<Picture> {
  const answer = await call(`/v1/loops/${loop}/day.svg${query}`);
  const text = await answer.text();
  expect(answer.status, text).toBe(200);
  return readSvg(text);
}

const withSchedule = async (site: Facility, schedule: unknown): Promise<Facility> => {
  const written = await site.send('PUT', `/v1/loops/${site.loop}/schedule`, schedule);
  expect(written.status).toBe(201);
  return site;
};

/** Vertices of the path of a line [px]. */
const vertices = (d: string): readonly (readonly [number, number])[] =>
  [...d.matchAll(/([-\d.]+),([-\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);

const linesOf = ({ named }: Picture) =>
  named('path')
    .filter(({ attributes }) => attributes.fill === 'none' && attributes['stroke-dasharray'] === undefined)
    .map(({ attributes }) => vertices(attributes.d ?? ''));

const tickX = ({ named }: Picture, label: string): number =>
  Number(named('text').find(({ text }) => text === label)?.attributes.x);

describe('the picture of a day', () => {
  it('changes the setting at the wall-clock time of each phase', async () => {
    const picture = await dayOf(
      await withSchedule(await facility(), exampleJson('schedule.json')),
      '?date=2026-06-10',
    );
    const [setting] = linesOf(picture);
    const [left, right] = [tickX(picture, '00:00'), tickX(picture, '24:00')];
    const hour = (right - left) / 24;
    // The example's phases: from 07:00, over a ramp of 10 minutes, and from 22:00.
    const places = (setting ?? []).map(([x]) => (x - left) / hour);
    expectClose(places[0] ?? -1, 0, { absolute: 0.001 });
    expectClose(places[1] ?? -1, 7, { absolute: 0.001 });
    expectClose(places.at(-2) ?? -1, 22, { absolute: 0.001 });
    expectClose(places.at(-1) ?? -1, 24, { absolute: 0.001 });
    expect(picture.words).toContain('\u2068night\u2069');
  });

  it.each([
    ['2026-03-29', '23 hours', '06:00', 5],
    ['2026-10-25', '25 hours', '06:00', 7],
  ])('has as many hours as the clocks give it: %s', async (date, told, label, hoursBefore) => {
    const picture = await dayOf(await facility(), `?date=${date}`);
    expect(picture.words.join('\n')).toContain(told);
    const [left, right] = [tickX(picture, '00:00'), tickX(picture, '24:00')];
    const hours = Number(told.split(' ')[0]);
    expectClose((tickX(picture, label) - left) / ((right - left) / hours), hoursBefore, { absolute: 0.001 });
  });

  it('draws the price of each hour, and tells what the day uses and costs', async () => {
    const site = await facility();
    const tariff = (await (await site.send('POST', '/v1/tariffs', exampleJson('tariff.json'))).json()).id;
    await withSchedule(site, { tariff, phases: [{ name: 'all', from: '00:00', factor: 1 }] });
    const picture = await dayOf(site, '?date=2026-01-15');
    const prices = linesOf(picture).at(-1) ?? [];
    const [left, right] = [tickX(picture, '00:00'), tickX(picture, '24:00')];
    const hours = [...new Set(prices.map(([x]) => Math.round(((x - left) / (right - left)) * 24)))];
    // The example's tariff on a Thursday in January: night to 06:00, base, peak 17:00 to 21:00, base, night from 23:00.
    expect(hours).toEqual([0, 6, 17, 21, 23, 24]);
    const { power } = await (await site.send('GET', `/v1/loops/${site.loop}/setpoint`)).json();
    const energy = (24 * power) / 1000;
    const cost = (power / 1000) * (6 * 0.11 + 11 * 0.15 + 4 * 0.32 + 2 * 0.15 + 1 * 0.11);
    const figures = /([\d.]+) kWh and ([\d.]+) EUR/.exec(picture.words[1] ?? '');
    expectClose(Number(figures?.[1]), energy, { relative: 1e-3 });
    expectClose(Number(figures?.[2]), cost, { relative: 1e-3 });
    expect(picture.words).toContain('price [EUR/kWh]');
  });

  it('marks what is not enough, and keeps to its frame', async () => {
    const phases = [
      { name: 'flood', from: '06:00', factor: 9 },
      { name: 'rest', from: '08:00', factor: 1 },
    ];
    const picture = await dayOf(await withSchedule(await facility(), { tariff: null, phases }));
    expect(picture.words).toContain('no setting is feasible');
  });

  it('shows a pump that may stop, pulses and hostile names', async () => {
    const phases = [
      { name: '<script>x</script>', from: '06:00', volume: { perDay: 20_000, floor: 0, mayStop: true } },
      {
        name: '"&\u202E',
        from: '18:00',
        factor: 0.6,
        pulse: { otherFactor: 0.4, periodMinutes: 15, share: 0.5 },
      },
    ];
    const picture = await dayOf(await withSchedule(await facility(), { tariff: null, phases }));
    expect(picture.words.join('\n')).toContain('<script>x</script>');
  });

  it('is in the units in force', async () => {
    const { words } = await dayOf(await facility(), '?units=us');
    expect(words).toContain('flow [gal/h]');
    expect(words).toContain('setting [%]');
  });

  it('has no price where none is set', async () => {
    const site = await facility();
    const { price, ...unpriced } = await (await site.send('GET', '/v1/site')).json();
    expect(
      (await site.send('PUT', '/v1/site', { ...unpriced, price: null }, { 'if-match': '*' })).status,
    ).toBe(200);
    const { words } = await dayOf(site);
    expect(words).toContain('No price is set.');
    expect(words.join('\n')).not.toContain('price [');
  });
});

describe('the route', () => {
  it('is of today on the clocks of the site', async () => {
    const clock = () => new Date('2026-01-15T12:00:00Z');
    const west = await facility({
      zone: 'Pacific/Honolulu',
      change: { clock: () => new Date('2026-01-15T05:00:00Z') },
    });
    expect((await dayOf(west)).words[0]).toContain('2026-01-14');
    expect((await dayOf(await facility({ change: { clock } }))).words[0]).toContain('2026-01-15');
  });

  it('answers 304 all day, and anew on the next', async () => {
    let now = '2026-01-15T12:00:00Z';
    const { call, loop } = await facility({ change: { clock: () => new Date(now) } });
    const path = `/v1/loops/${loop}/day.svg`;
    const etag = (await call(path)).headers.get('etag') ?? '';
    now = '2026-01-15T23:59:00Z';
    expect((await call(path, { headers: { 'If-None-Match': etag } })).status).toBe(304);
    now = '2026-01-16T00:01:00Z';
    expect((await call(path, { headers: { 'If-None-Match': etag } })).status).toBe(200);
  });

  it.each(['2026-02-30', '26-01-01', '', '1960-01-01', '2300-01-01', 'today'])(
    'refuses the date %s',
    async (date) => {
      const { call, loop } = await facility();
      const { status, errors } = await refused(await call(`/v1/loops/${loop}/day.svg?date=${date}`));
      expect(status).toBe(422);
      expect(errors?.[0]?.parameter).toBe('date');
    },
  );

  it('says what a loop without a pump lacks', async () => {
    const { call, send } = await facility();
    const { id } = await (await send('POST', '/v1/loops', exampleJson('loop-kelp-flume.json'))).json();
    const { code, errors } = await refused(await call(`/v1/loops/${id}/day.svg`));
    expect([code, errors]).toEqual(['no-installed-pump', undefined]);
    expect((await call('/v1/loops/none/day.svg')).status).toBe(404);
  });
});
