/** Bills of materials over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { example, sent } from '../../requests.ts';
import { answered, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const answer = z.object({
  materials: z.array(
    z.object({
      name: z.string(),
      count: z.int(),
      length: z.number().nullable(),
      cost: z.number().nullable(),
    }),
  ),
  total: z.number().nullable(),
  complete: z.boolean(),
  unpriced: z.array(z.string()),
  unnamed: z.array(z.string()),
  comparisonExtra: z
    .object({ name: z.string(), kind: z.string(), cost: z.number(), year: z.int() })
    .nullable(),
  summary: z.string(),
  units: z.record(z.string(), z.string()),
});

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const ask = (body: unknown, query = '', headers = {}) =>
  app.call(`/v1/bills-of-materials${query}`, sent('POST', body, headers));
const billOf = async (body: unknown, query = '') => answered(answer, await ask(body, query));

describe('the bill of the kelp flume', () => {
  it('is the same by id and sent along', async () => {
    const stored = await billOf({ loop: app.loopId });
    expect((await billOf({ loop: example('loop-kelp-flume.json') })).materials).toEqual(stored.materials);
    expect(stored.unnamed.length).toBeGreaterThan(0);
    expect([stored.complete, stored.total, stored.comparisonExtra]).toEqual([false, null, null]);
  });

  it('is priced per metre, and per foot in the other system', async () => {
    const name = 'pipe, sch80 2';
    const metric = await billOf({ loop: app.loopId, prices: [{ name, price: 20 }] });
    // 1.2 m of suction at 20 a metre.
    expectClose(metric.total ?? 0, 24, { relative: 1e-6 });
    // What is quoted for a part of the bill would be taken for the whole.
    expect(metric.comparisonExtra).toBeNull();
    const all = metric.unpriced.map((one) => ({ name: one, price: 1, stockLength: 1000 }));
    const whole = await billOf({ loop: app.loopId, prices: [{ name, price: 20 }, ...all] });
    expect(whole.comparisonExtra).toMatchObject({
      name: 'Pipework of Kelp flume',
      kind: 'pipework',
      cost: whole.total,
    });
    const us = await billOf({ loop: app.loopId, prices: [{ name, price: 20 * 0.3048 }] }, '?units=us');
    expectClose(us.total ?? 0, 24, { relative: 1e-5 });
    expectClose(us.materials.find((one) => one.name === name)?.length ?? 0, 1.2 / 0.3048, { relative: 1e-5 });
  });

  it('comes as a table', async () => {
    const text = await (await ask({ loop: app.loopId }, '?format=csv')).text();
    expect(text.split('\r\n')[0]).toBe('kind,name,count,length [m],piecesToBuy,cost [EUR]');
  });

  it.each([
    { body: {}, pointer: '/loop' },
    { body: { loop: 'nowhere' }, pointer: '/loop' },
    { body: { loop: example('loop-system-curve.json') }, pointer: '/loop' },
    {
      body: { loop: example('loop-kelp-flume.json'), prices: [{ name: 'x', price: -1 }] },
      pointer: '/prices/0/price',
    },
    { body: { loop: example('loop-kelp-flume.json'), prices: [{ price: 1 }] }, pointer: '/prices/0/name' },
    {
      body: { loop: example('loop-kelp-flume.json'), prices: [{ name: 'x', price: 1, stockLength: 0 }] },
      pointer: '/prices/0/stockLength',
    },
  ])('refuses at $pointer what makes no sense', async ({ body, pointer }) => {
    const { status, errors } = await refused(await ask(body));
    expect(status).toBe(422);
    expect(errors?.[0]?.pointer).toBe(pointer);
  });
});
