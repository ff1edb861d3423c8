/** The points of a pump as CSV. */
import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { created, example, exampleText, type Json, jsonOf } from '../../requests.ts';
import { refused } from '../../stocked-app.ts';

let app: AppUnderTest;
let id: string;
beforeEach(async () => {
  app = await appUnderTest();
  id = await created(app, '/v1/pumps', example('pump-canister-250.json'));
});

const put = (
  list: 'head-points' | 'power-points',
  body: string,
  options: { query?: string; tag?: string } = {},
) =>
  app.call(`/v1/pumps/${id}/${list}${options.query ?? ''}`, {
    method: 'PUT',
    headers: {
      'Content-Type': 'text/csv',
      ...(options.tag === '' ? {} : { 'If-Match': options.tag ?? '*' }),
    },
    body,
  });

const numbers = (body: Json, list: string, field: string): readonly number[] => {
  const items: unknown = body[list];
  return Array.isArray(items) ? items.map((item: Json) => Number(item[field])) : [];
};

describe('points in CSV', () => {
  it('replace those of the pump and leave the rest', async () => {
    const body = await jsonOf(await put('head-points', exampleText('head-points.csv')));
    expect(body).toMatchObject({ version: 2, name: 'Canister 250', standbyPower: 3 });
    expect(numbers(body, 'headPoints', 'flow')).toEqual([0, 2500, 5000, 7000, 8500, 3000]);
    expect(numbers(body, 'headPoints', 'setting')).toEqual([100, 100, 100, 100, 100, 60]);
    const power = await jsonOf(await put('power-points', exampleText('power-points.csv'), { tag: '"2-us"' }));
    expect(power).toMatchObject({
      version: 3,
      powerPoints: [{ setting: 100, power: 98, flow: 1500 }, {}, {}, {}, {}],
    });
    expect(numbers(power, 'headPoints', 'flow')).toHaveLength(6);
  });

  it('take the units of their header whatever the units in force', async () => {
    for (const query of ['', '?units=us']) {
      const body = await jsonOf(await put('head-points', exampleText('head-points-gal.csv'), { query }));
      const flow = numbers(body, 'headPoints', 'flow')[1] ?? 0;
      // 660 US gallons are 2498.37177744 L.
      expectClose(flow, query === '' ? 2498.37177744 : 660, { relative: 1e-11 });
    }
  });

  it('may leave out a flow of the power', async () => {
    const body = await jsonOf(await put('power-points', 'power,setting,flow\r\n245,100,9000\r\n55,60,\r\n'));
    expect(body).toMatchObject({
      powerPoints: [
        { setting: 100, power: 245, flow: 9000 },
        { setting: 60, power: 55 },
      ],
    });
  });

  it.each([
    ['head-points', 'flow,head\n0,5\n1000,4\nmany,1\n', '/2/flow', 4],
    ['head-points', 'flow,head\n0,5\n1000,4\n2000,1 kg\n', '/2/head', 4],
    ['head-points', 'flow,head,setting\n0,5,0\n', '/0/setting', 2],
    ['power-points', 'setting,power\n100,50\n\n60,2\n', '/1/power', 4],
    ['power-points', 'setting,power\n60,100\n100,50\n', '/1/power', 3],
    ['power-points', 'power\n50\n', '', 1],
  ] as const)('of %s %j fail at their row', async (list, text, pointer, line) => {
    const response = await put(list, text);
    expect(response.status).toBe(422);
    expect(await jsonOf(response)).toMatchObject({ errors: [{ pointer, line }] });
  });

  it.each([
    ['flow;head\n0;5,1\n6000;4,5\n', 400, 1, /separated by commas, not by semicolons; decimals have a point/],
    ['flow\thead\n0\t5.1\n', 400, 1, /not by tabs/],
    [
      'flow,head\n0,5,1\n6000,4,5\n',
      400,
      2,
      /write decimals with a point, since a comma begins the next cell/,
    ],
    ['flow,head\n0,"5,1"\n6000,"4,5"\n', 422, 2, /a point as its decimal mark/],
    ['flow,height\n0,5\n', 422, 1, /"height" is no column here; columns are flow, head, setting/],
  ] as const)(
    'as some spreadsheets write them, %j, are refused with the mend',
    async (text, status, line, words) => {
      const response = await put('head-points', text);
      const { errors } = await refused(response);
      expect([response.status, errors?.[0]?.line]).toEqual([status, line]);
      expect(errors?.[0]?.detail).toMatch(words);
    },
  );

  it('name their columns in capitals or not', async () => {
    const plain = 'flow,head,setting\n0,5,100\n6000,4.5,100\n14000,1.9,100\n';
    const text = plain.replace('flow,head,setting', 'Flow [L/h],HEAD,Setting');
    const body = await jsonOf(await put('head-points', text));
    expect(numbers(body, 'headPoints', 'head')).toEqual([5, 4.5, 1.9]);
    expect((await put('head-points', plain.replace('head', 'FLOW'))).status).toBe(422);
  });

  it('that give no curve are refused as a whole', async () => {
    const response = await put('head-points', 'flow,head\n500,5\n1000,4\n');
    expect(response.status).toBe(422);
    expect(await jsonOf(response)).toMatchObject({ errors: [{ pointer: '' }] });
    expect(await jsonOf(await app.call(`/v1/pumps/${id}`))).toMatchObject({ version: 1 });
  });

  it('need If-Match, and the version that is there', async () => {
    const text = exampleText('head-points.csv');
    expect((await put('head-points', text, { tag: '' })).status).toBe(428);
    expect((await put('head-points', text, { tag: '"7-metric"' })).status).toBe(412);
    id = 'unknown';
    expect((await put('head-points', text)).status).toBe(404);
  });

  it('come as text/csv, 500 at most', async () => {
    const response = await app.call(`/v1/pumps/${id}/head-points`, {
      method: 'PUT',
      headers: { 'Content-Type': 'application/json', 'If-Match': '*' },
      body: '[]',
    });
    expect(response.status).toBe(415);
    const many = `flow,head\n${Array.from({ length: 600 }, (_, i) => `${i},5\n`).join('')}`;
    expect(await jsonOf(await put('head-points', many))).toMatchObject({
      code: 'limit-exceeded',
      limit: 500,
    });
  });
});
