/** What a calibration may not be asked, and how that is told. */
import { describe, expect, it } from 'vitest';
import { created, example, type Json, sent } from '../../requests.ts';
import { refused } from '../../stocked-app.ts';
import { calibrate, calibratedLoop } from './calibrated-loop.ts';

const TRUTH = { friction: 1.2, head: 1, power: 1 };

const measured = async () => {
  const app = await calibratedLoop(TRUTH);
  const { flow, head } = await app.truly(80);
  await app.taken([
    { setting: 80, flow, head },
    { setting: 80, flow, head },
  ]);
  return app;
};

const BAD: readonly { readonly what: string; readonly body: Json; readonly pointer: string }[] = [
  { what: 'a time without its offset', body: { from: '2026-01-01T00:00:00' }, pointer: '/from' },
  { what: 'a day alone', body: { to: '2026-01-01' }, pointer: '/to' },
  { what: 'a number of seconds', body: { from: 1_767_225_600 }, pointer: '/from' },
  {
    what: 'an end before its beginning',
    body: { from: '2026-02-01T00:00:00Z', to: '2026-01-01T00:00:00Z' },
    pointer: '/to',
  },
  {
    what: 'an end at its beginning',
    body: { from: '2026-01-01T00:00:00Z', to: '2026-01-01T00:00:00Z' },
    pointer: '/to',
  },
  { what: 'a word for a yes', body: { apply: 'true' }, pointer: '/apply' },
  { what: 'an unknown field', body: { factors: {} }, pointer: '/factors' },
];

describe('a calibration', () => {
  it.each(BAD)('refuses $what', async ({ body, pointer }) => {
    const app = await calibratedLoop(TRUTH);
    const problem = await refused(await app.call(app.calibration, sent('POST', body)));
    expect(problem.status).toBe(422);
    expect(problem.errors?.[0]?.pointer).toBe(pointer);
  });

  it('is not put to use without the version that was read', async () => {
    const app = await measured();
    const problem = await refused(await app.call(app.calibration, sent('POST', { apply: true })));
    expect(problem).toMatchObject({ status: 428, errors: [{ header: 'If-Match' }] });
  });

  it('is not put to use on a version that has passed', async () => {
    const app = await measured();
    await calibrate(app, { apply: true }, { 'If-Match': '"1-metric"' });
    const late = await app.call(app.calibration, sent('POST', { apply: true }, { 'If-Match': '"1-metric"' }));
    expect((await refused(late)).status).toBe(412);
    const undo = { method: 'DELETE', headers: { 'If-Match': '"1-metric"' } };
    expect((await refused(await app.call(app.calibration, undo))).status).toBe(412);
    expect((await refused(await app.call(app.calibration, { method: 'DELETE' }))).status).toBe(428);
  });

  it('that tells nothing is not put to use', async () => {
    const app = await calibratedLoop(TRUTH);
    const response = await app.call(app.calibration, sent('POST', { apply: true }, { 'If-Match': '*' }));
    expect(await refused(response)).toMatchObject({ status: 422, code: 'calibration-refused' });
  });

  it('needs an installed pump', async () => {
    const app = await calibratedLoop(TRUTH);
    const loop = await created(app, '/v1/loops', example('loop-kelp-flume.json'));
    const response = await app.call(`/v1/loops/${loop}/calibration`, sent('POST', {}));
    expect(await refused(response)).toMatchObject({ status: 422, code: 'no-installed-pump' });
  });

  it('of a loop that is not there is not found', async () => {
    const app = await calibratedLoop(TRUTH);
    const path = '/v1/loops/nowhere/calibration';
    expect((await refused(await app.call(path, sent('POST', {})))).status).toBe(404);
    expect((await refused(await app.call(path))).status).toBe(404);
    const undo = { method: 'DELETE', headers: { 'If-Match': '*' } };
    expect((await refused(await app.call(path, undo))).status).toBe(404);
  });

  it('is what an assurance by its name needs', async () => {
    const app = await measured();
    const body = { loop: app.loopId, pumps: [app.pumpId], assurance: 'calibration' };
    const problem = await refused(await app.call('/v1/recommendations', sent('POST', body)));
    expect(problem).toMatchObject({ status: 422, errors: [{ pointer: '/assurance' }] });
    expect(problem.errors?.[0]?.detail).toContain('calibration');
  });
});
