/** Pumps pasted as one table, in either unit system. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { created, exampleText, jsonOf } from '../../requests.ts';
import { refused } from '../../stocked-app.ts';

const pasted = ({ call }: AppUnderTest, text: string, query = '') =>
  call(`/v1/pumps/import${query}`, { method: 'POST', headers: { 'Content-Type': 'text/csv' }, body: text });

const table = (...rows: readonly string[]): string => `${rows.join('\n')}\n`;

const HEADER = 'name,flow,head,setting,power,price';
const SOUND = ['A,0,5,,,', 'A,4000,4,,90,100', 'A,8000,1,,,'];

describe('a pasted table of pumps', () => {
  it('makes a pump of the rows of each name', async () => {
    const app = await appUnderTest();
    const response = await pasted(app, exampleText('pumps.csv'));
    expect([response.status, response.headers.get('location')]).toEqual([201, '/v1/pumps']);
    const { items } = await jsonOf(response);
    expect(items).toMatchObject([
      {
        name: 'Canister 120',
        standbyPower: 2,
        price: 390,
        settings: { min: 40, max: 100, step: 1 },
        powerPoints: [
          { setting: 100, power: 116, flow: 5000 },
          { setting: 60, power: 26, flow: 3000 },
        ],
      },
      { name: 'Inline 60', price: 145, powerPoints: [{ setting: 100, power: 60, flow: 3000 }] },
    ]);
    expect((await jsonOf(await app.call('/v1/pumps'))).items).toEqual(items);
  });

  it('makes the same pump as a body in JSON', async () => {
    const app = await appUnderTest();
    const document = {
      name: 'A',
      headPoints: [
        { flow: 0, head: 5 },
        { flow: 4000, head: 4 },
        { flow: 8000, head: 1 },
      ],
      powerPoints: [{ setting: 100, power: 90, flow: 4000 }],
      price: 100,
    };
    const json = await created(app, '/v1/pumps', document);
    await pasted(app, table(HEADER, ...SOUND));
    const { items } = await jsonOf(await app.call('/v1/pumps'));
    if (!Array.isArray(items)) throw new Error('no items');
    const [one, other] = items.map(({ id, createdAt, updatedAt, ...rest }) => rest);
    expect(json).not.toBe('');
    expect(other).toEqual(one);
  });

  it('takes the rows that the list of pumps writes, with points added', async () => {
    const app = await appUnderTest();
    const before = await jsonOf(await pasted(app, exampleText('pumps.csv')));
    const written = (await (await app.call('/v1/pumps?format=csv&units=us')).text()).trimEnd().split('\r\n');
    const points = ['flow [L/h],head [m],power', '0,5,', '4000,4,90', '8000,1,'];
    const [header = '', ...rows] = written.map(
      (line, place) => `${line},${place === 0 ? points[0] : points[1]}`,
    );
    const rest = rows.flatMap((row) => {
      const [, , name = ''] = row.split(',');
      const filled = [
        '',
        '',
        name,
        ...header
          .split(',')
          .slice(3, -3)
          .map(() => ''),
      ].join(',');
      return [row, `${filled},${points[2]}`, `${filled},${points[3]}`];
    });
    const other = await appUnderTest();
    const taken = await pasted(other, table(header, ...rest));
    expect(taken.status, await taken.clone().text()).toBe(201);
    const itemsOf = ({ items }: { items?: unknown }) =>
      z
        .array(
          z.object({ name: z.string(), settings: z.unknown(), standbyPower: z.number(), price: z.number() }),
        )
        .parse(items);
    expect(itemsOf(await jsonOf(taken))).toEqual(itemsOf(before));
  });

  it('is read in the units in force or in those of its header, alike', async () => {
    const app = await appUnderTest();
    const us = exampleText('pumps-gal.csv');
    await pasted(app, us);
    await pasted(app, us.replaceAll(/ \[[^\]]*\]/g, ''), '?units=us');
    const { items } = await jsonOf(await app.call('/v1/pumps?units=us'));
    if (!Array.isArray(items)) throw new Error('no items');
    expect(items[1].headPoints).toEqual(items[0].headPoints);
    expect(items[0].headPoints[1]).toEqual({ flow: 660, head: 13.1, setting: 100 });
  });

  it('keeps a name that looks like a number a name', async () => {
    const response = await pasted(
      await appUnderTest(),
      table(HEADER, ...SOUND.map((row) => `12${row.slice(1)}`)),
    );
    expect((await jsonOf(response)).items).toMatchObject([{ name: '12' }]);
  });

  it.each<[string, readonly string[], string, number]>([
    ['a head without a flow', [...SOUND, 'B,,5,,,'], '/3/flow', 5],
    ['a row that says nothing', [...SOUND, 'A,9000,,,,'], '/3', 5],
    ['a row without a name', [...SOUND, ',0,5,,,'], '/3/name', 5],
    ['a head that is no number', ['A,0,high,,,', ...SOUND.slice(1)], '/0/head', 2],
    ['a setting beyond its range', ['A,0,5,101,,', ...SOUND.slice(1)], '/0/setting', 2],
    ['too few points', ['A,0,5,,90,'], '/0/head', 2],
    ['no power', ['A,0,5,,,', 'A,4000,4,,,', 'A,8000,1,,,'], '/0/power', 2],
    ['two prices', [...SOUND, 'A,9000,0.2,,,200'], '/3/price', 5],
    [
      'a price below 0',
      ['A,0,5,,,-1', ...SOUND.slice(1).map((row) => row.replace('100', ''))],
      '/0/price',
      2,
    ],
    ['a curve that rises', ['A,0,1,,,', 'A,4000,2,,90,', 'A,8000,3,,,'], '/0/head', 2],
  ])('with %s stores nothing and names the row', async (_fault, rows, pointer, line) => {
    const app = await appUnderTest();
    const sound = ['Z,0,5,,80,', 'Z,4000,4,,,', 'Z,8000,1,,,'];
    const problem = await refused(await pasted(app, table(HEADER, ...rows, ...sound)));
    expect(problem.status).toBe(422);
    expect(problem.errors).toContainEqual(expect.objectContaining({ pointer, line }));
    expect((await jsonOf(await app.call('/v1/pumps'))).items).toEqual([]);
  });

  it('of more rows or pumps than its limits is refused', async () => {
    const app = await appUnderTest();
    const rows = (count: number, name: (n: number) => string) =>
      Array.from({ length: count }, (_, n) => `${name(n)},${n},1,,,`);
    const long = await refused(await pasted(app, table(HEADER, ...rows(5001, () => 'A'))));
    expect(long).toMatchObject({ code: 'limit-exceeded', limit: 5000, actual: 5001 });
    const many = await refused(await pasted(app, table(HEADER, ...rows(501, (n) => `P${n}`))));
    expect(many).toMatchObject({ code: 'limit-exceeded', limit: 500, actual: 501 });
  });

  it.each([
    ['flow,head', '/v1/pumps/import'],
    ['name,colour', '/v1/pumps/import'],
    ['name,price [EUR]', '/v1/pumps/import'],
    ['name [m],head', '/v1/pumps/import'],
  ])('with the header %s is refused at its first line', async (header, path) => {
    const problem = await refused(await pasted(await appUnderTest(), table(header, 'A,1')));
    expect(problem).toMatchObject({ status: 422, instance: path, errors: [{ line: 1 }] });
  });

  it('needs rows', async () => {
    expect((await refused(await pasted(await appUnderTest(), table(HEADER)))).status).toBe(400);
  });
});
