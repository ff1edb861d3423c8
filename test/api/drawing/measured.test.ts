/** What was measured, in the picture of a loop. */
import { beforeAll, describe, expect, it } from 'vitest';
import { INKS } from '../../../api/drawing/kit/palette.ts';
import { expectClose } from '../../expect-close.ts';
import { created, example, sent } from '../requests.ts';
import { type StockedApp, stockedApp } from '../stocked-app.ts';
import { axisScale, marksOf, readSvg } from './read-svg.ts';

let app: StockedApp;
let path: string;
beforeAll(async () => {
  app = await stockedApp();
  const installed = { pump: app.pumpId, count: 1, setting: 80, checkValves: true };
  const loop = await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), installed });
  path = `/v1/loops/${loop}`;
});

const pictureOf = async (query = '') => {
  const answer = await app.call(`${path}/chart.svg${query}`);
  return readSvg(await answer.text());
};

const take = async (readings: readonly object[]): Promise<void> => {
  const answer = await app.call(`${path}/readings`, sent('POST', { readings }));
  expect(answer.status, await answer.text()).toBe(201);
};

const day = (number: number) => `2026-01-${String(number).padStart(2, '0')}T06:00:00Z`;

describe('readings', () => {
  it('are no part of the picture before there are any', async () => {
    expect((await pictureOf()).words.join('\n')).not.toContain('measured');
  });

  it('are marked where the axes say, by whether they are of the setting that is shown', async () => {
    const etag = (await app.call(`${path}/chart.svg`)).headers.get('etag') ?? '';
    await take([
      { time: day(1), setting: 80, flow: 8000, head: 2.1 },
      { time: day(2), setting: 60, flow: 6000, head: 1.1 },
      { time: day(3), setting: 80, flow: 8100 },
      { time: day(4), setting: 60, flow: 6100 },
    ]);
    expect((await app.call(`${path}/chart.svg`, { headers: { 'If-None-Match': etag } })).status).toBe(200);
    const picture = await pictureOf();
    expect(picture.words).toContain('measured at this setting');
    expect(picture.words).toContain('measured at other settings');
    expect(picture.words).toContain('flow measured at this setting without a head');
    const flow = axisScale(picture, { along: 'x', labels: ['0', '8000'] });
    const head = axisScale(picture, { along: 'y', labels: ['1', '3'] });
    const [own] = marksOf(picture).filter(({ fill }) => fill === INKS.sea);
    expectClose(own?.x ?? 0, flow(8000), { absolute: 0.02 });
    expectClose(own?.y ?? 0, head(2.1), { absolute: 0.02 });
    const ticks = picture.named('line').filter(({ attributes }) => attributes.stroke === INKS.sea);
    expectClose(Number(ticks[0]?.attributes.x1), flow(8100), { absolute: 0.02 });
  });

  it('show a head by the pressures before and behind the pump', async () => {
    await take([{ time: day(5), setting: 80, flow: 8000, suctionPressure: 2, dischargePressure: 22 }]);
    const picture = await pictureOf();
    const head = axisScale(picture, { along: 'y', labels: ['1', '3'] });
    const heads = marksOf(picture).filter(({ fill }) => fill === INKS.sea);
    // 20 kPa over 1023.34 kg/m3 (35 g/kg at 25 degC, EOS-80) and 9.80665 m/s2.
    expectClose(heads[1]?.y ?? 0, head(20_000 / (1023.34 * 9.80665)), { absolute: 0.1 });
  });

  it('are of the other settings where another is shown', async () => {
    expect((await pictureOf('?setting=60')).words).toContain('measured at this setting');
    expect((await pictureOf('?setting=45')).words).not.toContain('measured at this setting');
  });
});
