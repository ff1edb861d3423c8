/** Requests for designs that cannot be answered, each with its place and what is accepted there. */
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { workedDesigns } from '../../../reference/worked-designs.ts';
import { created, example, type Json, sent } from '../../requests.ts';
import { refused, type StockedApp, stockedApp } from '../../stocked-app.ts';
import { workedRequest } from './worked-request.ts';

let app: StockedApp;
beforeAll(async () => {
  app = await stockedApp();
});

const refusal = async (body: unknown) => refused(await app.call('/v1/designs', sent('POST', body)));

const worked = (): Json => {
  const [, two] = workedDesigns;
  if (two === undefined) throw new Error('there is no second worked design');
  return workedRequest(two);
};

const LIST = [{ insideDiameter: 34 }, { insideDiameter: 42.6 }];
const outletOf = (fields: Json) => ({ name: 'end', requiredFlow: 3000, ...fields });
const loopOf = (run: readonly unknown[], outlet: Json = {}): Json => ({
  ...{ name: 'one run', suction: [], discharge: { run, outlet: outletOf(outlet) } },
});
const withLoop = (loop: Json, more: Json = {}): Json => ({ ...worked(), loop, ...more });

const CASES: readonly (readonly [string, () => Json, string, RegExp])[] = [
  [
    'a size without a price',
    () => withLoop(loopOf([{ pipes: [...LIST, { insideDiameter: 90 }], length: 3 }])),
    '/loop/discharge/run/0/pipes/2',
    /has no price: state its price in `pipePrices`/,
  ],
  [
    'a size that no table has',
    () => withLoop(loopOf([{ pipes: ['sch80 9'], length: 3 }])),
    '/loop/discharge/run/0/pipes/0',
    /no pipe of the table/,
  ],
  ['no size', () => withLoop(loopOf([{ pipes: [], length: 3 }])), '/loop/discharge/run/0/pipes', /1/],
  [
    'thirteen sizes',
    () => withLoop(loopOf([{ pipes: Array.from({ length: 13 }, () => LIST[0]), length: 3 }])),
    '/loop/discharge/run/0/pipes',
    /12/,
  ],
  [
    'a pipe and a list in one element',
    () => withLoop(loopOf([{ pipe: LIST[0], pipes: LIST, length: 3 }])),
    '/loop/discharge/run/0/pipe',
    /./,
  ],
  [
    'an outlet without a requirement',
    () => withLoop(loopOf([{ pipes: LIST, length: 3 }], { requiredFlow: undefined })),
    '/loop/discharge/outlet/requiredFlow',
    /is needed: state the flow that outlet "end" requires, 0 for closed/,
  ],
  [
    'a system curve',
    () => withLoop({ name: 'curve', systemCurve: { staticHead: 1, points: [] }, outlets: [] }),
    '/loop/systemCurve',
    /a design needs pipework/,
  ],
  [
    'a closed valve before an outlet',
    () =>
      withLoop(
        loopOf([
          { pipes: LIST, length: 3 },
          { valve: 'ball', opening: 0 },
        ]),
      ),
    '/loop/discharge/run/1',
    /is closed before outlet "end"/,
  ],
  [
    'a negative price of pipe',
    () => ({ ...worked(), pipePrices: [{ pipe: LIST[0], price: -1 }] }),
    '/pipePrices/0/price',
    /0/,
  ],
  ['a negative price of trims', () => ({ ...worked(), trimPrice: -1 }), '/trimPrice', /0/],
  ['no year', () => ({ ...worked(), years: 0 }), '/years', /1/],
  ['an unknown member', () => ({ ...worked(), pipeprices: [] }), '/pipeprices', /pipePrices/],
  ['a price and a tariff', () => ({ ...worked(), tariff: 'night' }), '/tariff', /./],
];

describe('a request for a design is refused at its place', () => {
  it.each(CASES)('%s', async (_, body, pointer, detail) => {
    const problem = await refusal(body());
    expect(problem.status).toBe(422);
    expect(problem.errors?.map((error) => error.pointer)).toContain(pointer);
    expect(problem.errors?.find((error) => error.pointer === pointer)?.detail).toMatch(detail);
  });

  it('no outlet with a flow', async () => {
    const problem = await refusal(withLoop(loopOf([{ pipes: LIST, length: 3 }], { requiredFlow: 0 })));
    expect([problem.status, problem.code]).toEqual([422, 'no-requirement']);
  });

  it('more than 200 pumps', async () => {
    const [pump] = z.array(z.unknown()).parse(worked().pumps);
    const problem = await refusal({ ...worked(), pumps: Array.from({ length: 201 }, () => pump) });
    expect([problem.status, problem.errors?.[0]?.pointer]).toEqual([422, '/pumps']);
  });

  it('more than 500 runs', async () => {
    const branches = Array.from({ length: 499 }, (_, place) => ({
      ...{ run: [], outlet: { name: `outlet ${place}`, requiredFlow: 10 } },
    }));
    const loop = { name: 'wide', suction: [], discharge: { run: [{ pipes: LIST, length: 1 }], branches } };
    const problem = await refusal(withLoop(loop));
    expect([problem.status, problem.errors?.[0]?.pointer]).toEqual([422, '/loop']);
    expect([problem.limit, problem.actual]).toEqual([500, 501]);
  });

  it('no price of energy', async () => {
    const site = { ...example('site.json'), price: null };
    const other = await stockedApp();
    await other.call('/v1/site', sent('PUT', site, { 'If-Match': '*' }));
    const { price: _price, ...body } = worked();
    const problem = await refused(await other.call('/v1/designs', sent('POST', body)));
    expect(problem.errors?.[0]).toMatchObject({ pointer: '/price' });
  });

  it('a stored loop that is known by its system curve', async () => {
    const loop = await created(app, '/v1/loops', example('loop-system-curve.json'));
    const problem = await refusal({ ...worked(), loop });
    expect(problem.errors?.[0]?.pointer).toBe('/loop');
  });
});

describe('a loop to be stored', () => {
  it('refuses a list of sizes, and says where it is accepted', async () => {
    const problem = await refused(
      await app.call('/v1/loops', sent('POST', loopOf([{ pipes: LIST, length: 3 }]))),
    );
    expect(problem.status).toBe(422);
    expect(problem.errors?.[0]).toMatchObject({
      pointer: '/discharge/run/0/pipes',
      detail: expect.stringContaining('POST /v1/designs alone'),
    });
  });
});
