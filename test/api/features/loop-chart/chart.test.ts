/** The picture of a pump on a loop. */
import { beforeAll, describe, expect, it } from 'vitest';
import { INKS } from '../../../../api/drawing/kit/palette.ts';
import { expectClose } from '../../../expect-close.ts';
import { axisScale, marksOf, type Picture, readSvg } from '../../drawing/read-svg.ts';
import { created, example, type Json, jsonOf } from '../../requests.ts';
import { refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

let app: StockedApp;
beforeAll(async () => {
  app = await stockedApp();
});

async function pictureAt(path: string): Promise<Picture> {
  const answer = await app.call(path);
  const text = await answer.text();
  expect(answer.status, text).toBe(200);
  return readSvg(text);
}

const FLUME = example('loop-kelp-flume.json');
const stored = (loop: Json) => created(app, '/v1/loops', loop);

describe('the picture of a loop', () => {
  it('marks the duty point where the axes say, at the figures of the recommendation', async () => {
    const picture = await pictureAt(`${app.loop}/chart.svg?pump=${app.pumpId}`);
    const flow = axisScale(picture, { along: 'x', labels: ['0', '8000'] });
    const head = axisScale(picture, { along: 'y', labels: ['0.5', '2'] });
    // 7533.14 L/h at 1.57140 m: the worked example of the kelp flume, by a solution apart.
    const duty = marksOf(picture).find(({ fill }) => fill === INKS.ink);
    expectClose(duty?.x ?? 0, flow(7533.14), { absolute: 0.6 });
    expectClose(duty?.y ?? 0, head(1.5714), { absolute: 0.6 });
    expect(picture.words.join('\n')).toContain('duty point: 7533 L/h at 1.571 m, drawing 85.7 W');
    expect(picture.words.join('\n')).toContain('at setting 70 %, as recommended');
  });

  it('has its axes in US units where they are in force', async () => {
    const { words } = await pictureAt(`${app.loop}/chart.svg?pump=${app.pumpId}&units=us`);
    expect(words).toContain('total flow [gal/h]');
    expect(words).toContain('head [ft]');
    // 7533.14 L/h / 3.785411784 and 1.57140 m / 0.3048.
    expect(words.join('\n')).toContain('1990 gal/h at 5.156 ft');
  });

  it('shows the installed pump as installed, another as recommended, any as asked for', async () => {
    const installed = { pump: app.pumpId, count: 1, setting: 80, checkValves: true };
    const id = await stored({ ...FLUME, installed });
    const weak = await created(app, '/v1/pumps', example('pump-inline-60.json'));
    const subtitle = async (query: string) => (await pictureAt(`/v1/loops/${id}/chart.svg${query}`)).words[1];
    expect(await subtitle('')).toContain('at setting 80 %, as installed');
    expect(await subtitle('?setting=75.5')).toContain('at setting 75.5 %, as asked for');
    expect(await subtitle(`?pump=${weak}`)).toContain('at setting 100 %, the highest');
    expect(await subtitle(`?pump=${weak}&count=3`)).toContain('3 x \u2068Inline 60\u2069');
  });

  it('shows what the duty point tells of the same question', async () => {
    const query = `pump=${app.pumpId}&setting=55&count=2`;
    const duty = await jsonOf(await app.call(`${app.loop}/duty-point?${query}`));
    const { words } = await pictureAt(`${app.loop}/chart.svg?${query}`);
    expect(words.join('\n')).toContain(`duty point: ${Number(Number(duty.flow).toPrecision(4))} L/h`);
  });
});

describe('a loop at the edge', () => {
  it.each<[string, Json]>([
    [
      'without any requirement',
      { ...FLUME, discharge: { run: [{ pipe: 'sch80 2', length: 3 }], outlet: { name: 'open' } } },
    ],
    [
      'that passes no water',
      {
        ...FLUME,
        discharge: { run: [{ valve: 'ball', opening: 0, diameter: 40 }], outlet: { name: 'shut' } },
      },
    ],
    ['that the pump cannot lift to', { ...FLUME, staticHead: 30 }],
    ['that sinks', { ...FLUME, staticHead: -1 }],
    ['that is known by a curve alone', example('loop-system-curve.json')],
    ['with a hostile name', { ...FLUME, name: '"/><script>' }],
  ])('still has its picture: %s', async (_, loop) => {
    const id = await stored(loop);
    const { words } = await pictureAt(`/v1/loops/${id}/chart.svg?pump=${app.pumpId}`);
    expect(words).toContain('total flow [L/h]');
  });

  it('shows the system alone where no pump is installed or serves', async () => {
    const id = await stored({ ...FLUME, staticHead: 30 });
    const { words } = await pictureAt(`/v1/loops/${id}/chart.svg`);
    expect(words[1]).toContain('No pump is installed');
    expect(words.join('\n')).not.toContain('duty point');
  });

  it('marks where a drooping curve meets the system again', async () => {
    const drooping = {
      ...example('pump-canister-250.json'),
      name: 'Drooping',
      headPoints: [
        { flow: 0, head: 3 },
        { flow: 3000, head: 3.9 },
        { flow: 6000, head: 3.6 },
        { flow: 9000, head: 2.6 },
        { flow: 12_000, head: 0.8 },
      ],
    };
    const pump = await created(app, '/v1/pumps', drooping);
    const id = await stored({ ...FLUME, staticHead: 2.95 });
    const { intersections } = await jsonOf(
      await app.call(`/v1/loops/${id}/duty-point?pump=${pump}&setting=100`),
    );
    expect(intersections).toHaveLength(1);
    const lifted = await stored({ ...FLUME, staticHead: 3.05 });
    const { words } = await pictureAt(`/v1/loops/${lifted}/chart.svg?pump=${pump}&setting=100`);
    expect(words.join('\n')).toContain('where the curves meet again');
  });
});

describe('the route', () => {
  it('answers 304 until the pump, the loop or the site moves', async () => {
    const path = `${app.loop}/chart.svg?pump=${app.pumpId}`;
    const etag = (await app.call(path)).headers.get('etag') ?? '';
    expect((await app.call(path, { headers: { 'If-None-Match': etag } })).status).toBe(304);
    const other = (await app.call(`${path}&setting=80`)).headers.get('etag');
    expect(other).not.toBe(etag);
  });

  it.each([
    ['pump=none', '/v1/loops/{id}/chart.svg', 422, 'pump'],
    ['setting=0', '/v1/loops/{id}/chart.svg', 422, 'setting'],
    ['count=0', '/v1/loops/{id}/chart.svg', 422, 'count'],
    ['x=1', '/v1/loops/{id}/chart.svg', 422, 'x'],
  ])('names what is wrong: %s', async (query, path, status, parameter) => {
    const answer = await refused(await app.call(`${path.replace('{id}', app.loopId)}?${query}`));
    expect(answer.status).toBe(status);
    expect(answer.errors?.[0]?.parameter).toBe(parameter);
  });

  it('refuses a setting beyond those of the pump', async () => {
    const answer = await refused(await app.call(`${app.loop}/chart.svg?pump=${app.pumpId}&setting=20`));
    expect(answer.errors?.[0]?.parameter).toBe('setting');
  });
});
