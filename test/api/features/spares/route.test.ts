/** Spares over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { created, example, sent } from '../../requests.ts';
import { answered, refused } from '../../stocked-app.ts';

const shelf = { spares: z.int(), probability: z.number(), meanDemand: z.number() };
const answer = z.object({
  ...shelf,
  atHighRate: z.object(shelf),
  failuresPerDeviceYear: z.object({ value: z.number(), low: z.number(), high: z.number() }),
  positions: z.int(),
  summary: z.string(),
  cautions: z.array(z.object({ code: z.string() })),
});

const COUNTS = { count: 2, devices: 10, years: 3 };

let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

const ask = (body: unknown) => app.call('/v1/spares', sent('POST', body));
const sparesOf = async (body: unknown) => answered(answer, await ask(body));

describe('spares', () => {
  it('for 12 positions, 2 failures in 30 device-years and four weeks: by hand', async () => {
    // 12 x (2/30) x 28/365 = 0.0613699; P(0) = 0.940475 is short of 0.95; P(X <= 1) = 0.940475 x 1.0613699 = 0.998192.
    const found = await sparesOf({ failures: COUNTS, positions: 12, leadTimeDays: 28 });
    expectClose(found.meanDemand, 0.0613699, { relative: 1e-5 });
    expect(found.spares).toBe(1);
    expectClose(found.probability, 0.998192, { relative: 1e-5 });
    // Exact upper limit of 2 events, 7.2247 (Garwood): 0.221691 expected; P(X <= 1) = 0.978768.
    expectClose(found.atHighRate.meanDemand, 0.221691, { relative: 1e-4 });
    expect(found.atHighRate.spares).toBe(1);
    expect(found.summary).toBe(
      'Keep 1 spare for 12 devices: no more fail within 28 days with a probability of 99.82 %.',
    );
    expect(found.cautions.map(({ code }) => code)).toEqual(['failures-independent', 'few-failures']);
  });

  it('count the positions of a stored pump over all loops, parallel pumps each', async () => {
    const pump = await created(app, '/v1/pumps', { ...example('pump-canister-250.json'), failures: COUNTS });
    const loop = example('loop-kelp-flume.json');
    await created(app, '/v1/loops', { ...loop, installed: { pump, count: 2, setting: 70 } });
    await created(app, '/v1/loops', { ...loop, installed: { pump, setting: 70 } });
    await created(app, '/v1/loops', loop);
    expect((await sparesOf({ pump, leadTimeDays: 28 })).positions).toBe(3);
  });

  it('are none for a pump that is nowhere in use', async () => {
    const pump = await created(app, '/v1/pumps', { ...example('pump-canister-250.json'), failures: COUNTS });
    const found = await sparesOf({ pump, leadTimeDays: 28 });
    expect([found.positions, found.spares, found.probability]).toEqual([0, 0, 1]);
  });

  it('of a device that never failed are told at the rate that may still be', async () => {
    const found = await sparesOf({ failures: { ...COUNTS, count: 0 }, positions: 100, leadTimeDays: 90 });
    expect(found.spares).toBe(0);
    expect(found.atHighRate.spares).toBeGreaterThan(0);
  });

  it.each([
    { body: { positions: 3, leadTimeDays: 9 }, pointer: '/failures', why: 'no counts' },
    { body: { failures: COUNTS, leadTimeDays: 9 }, pointer: '/positions', why: 'no positions' },
    { body: { failures: COUNTS, positions: 3 }, pointer: '/leadTimeDays', why: 'no lead time' },
    {
      body: { failures: COUNTS, positions: -1, leadTimeDays: 9 },
      pointer: '/positions',
      why: 'positions below 0',
    },
    {
      body: { failures: COUNTS, positions: 1.5, leadTimeDays: 9 },
      pointer: '/positions',
      why: 'half a position',
    },
    {
      body: { failures: COUNTS, positions: 3, leadTimeDays: -1 },
      pointer: '/leadTimeDays',
      why: 'time run back',
    },
    {
      body: { failures: COUNTS, positions: 3, leadTimeDays: 9, confidence: 1 },
      pointer: '/confidence',
      why: 'certainty',
    },
    {
      body: { failures: { ...COUNTS, years: 0 }, positions: 3, leadTimeDays: 9 },
      pointer: '/failures/years',
      why: 'no time',
    },
    { body: { pump: 'nowhere', positions: 3, leadTimeDays: 9 }, pointer: '/pump', why: 'an unknown pump' },
    {
      body: { failures: COUNTS, positions: 3, leadTimeDays: 9, colour: 1 },
      pointer: '/colour',
      why: 'an unknown field',
    },
  ])('refuse $why at $pointer', async ({ body, pointer }) => {
    const { status, errors } = await refused(await ask(body));
    expect(status).toBe(422);
    expect(errors?.[0]?.pointer).toBe(pointer);
  });

  it('beyond counting tell the limit', async () => {
    const body = { failures: { count: 1000, devices: 1, years: 1 }, positions: 100_000, leadTimeDays: 365 };
    expect(await refused(await ask(body))).toMatchObject({ code: 'limit-exceeded', limit: 100_000 });
  });
});
