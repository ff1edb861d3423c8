/** Pumps over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { created, example, jsonOf, sent } from '../../requests.ts';

let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

const CANISTER = example('pump-canister-250.json');
const MINIMAL = {
  name: 'Minimal',
  headPoints: [
    { flow: 0, head: 5 },
    { flow: 5000, head: 4 },
    { flow: 9000, head: 2 },
  ],
  powerPoints: [{ setting: 100, power: 100 }],
};

describe('a pump', () => {
  it('is read back as it was entered, with what the service adds', async () => {
    const response = await app.call('/v1/pumps', sent('POST', CANISTER));
    expect(response.status).toBe(201);
    expect(response.headers.get('etag')).toBe('"1-metric"');
    const { cautions, ...body } = await jsonOf(response);
    expect(cautions).toEqual([]);
    expect(response.headers.get('location')).toBe(`/v1/pumps/${body.id}`);
    expect(body).toMatchObject({
      ...CANISTER,
      headPoints: [
        { flow: 0, head: 5.1, setting: 100 },
        { flow: 6000, head: 4.5, setting: 100 },
        { flow: 10500, head: 3.3, setting: 100 },
        { flow: 14000, head: 1.9, setting: 100 },
      ],
      version: 1,
      units: { flow: 'L/h', head: 'm', power: 'W', setting: '%', speed: '%' },
    });
    expect(body.createdAt).toMatch(/^2026-01-15T12:00:00\.\d{3}Z$/);
    expect(await jsonOf(await app.call(`/v1/pumps/${body.id}`))).toEqual(body);
  });

  it('has the settings 30 to 100 by 1 and no standby power where nothing is stated', async () => {
    const id = await created(app, '/v1/pumps', MINIMAL);
    expect(await jsonOf(await app.call(`/v1/pumps/${id}`))).toMatchObject({
      settings: { min: 30, max: 100, step: 1 },
      standbyPower: 0,
    });
  });

  it('is entered in one system and read in the other', async () => {
    const id = await created(app, '/v1/pumps?units=us', example('pump-canister-120-us.json'));
    const us = await jsonOf(await app.call(`/v1/pumps/${id}?units=us`));
    expect(us).toMatchObject({ headPoints: [{}, { flow: 660, head: 13.1 }, {}, {}, {}, {}] });
    const metric = await jsonOf(await app.call(`/v1/pumps/${id}`));
    // 660 US gallons of 3.785411784 L; 13.1 ft of 0.3048 m.
    expect(metric).toMatchObject({
      headPoints: [{}, { flow: 2498.37177744, head: 3.99288 }, {}, {}, {}, {}],
    });
  });

  it('can be sent back as it was read, in its own units and in no other', async () => {
    const id = await created(app, '/v1/pumps', CANISTER);
    const us = await jsonOf(await app.call(`/v1/pumps/${id}?units=us`));
    const put = (units: string, change: Record<string, unknown> = {}) =>
      app.call(`/v1/pumps/${id}?units=${units}`, sent('PUT', { ...us, ...change }, { 'If-Match': '*' }));
    const refused = await put('metric');
    expect(refused.status).toBe(422);
    expect(await jsonOf(refused)).toMatchObject({
      errors: [
        { pointer: '/units/flow', detail: 'must be "L/h", the unit in force with units=metric' },
        { pointer: '/units/head', detail: 'must be "m", the unit in force with units=metric' },
      ],
    });
    const accepted = await put('us', { price: 790 });
    expect(accepted.status).toBe(200);
    expect(await jsonOf(accepted)).toMatchObject({ version: 2, headPoints: us.headPoints });
  });

  it('keeps id, version and times whatever the body says of them', async () => {
    const id = await created(app, '/v1/pumps', CANISTER);
    const lie = {
      ...CANISTER,
      price: 790,
      id: 'mine',
      version: 99,
      createdAt: 'never',
      updatedAt: 5,
      units: 'metric',
    };
    const body = await jsonOf(await app.call(`/v1/pumps/${id}`, sent('PUT', lie, { 'If-Match': '"1-us"' })));
    expect(body).toMatchObject({ id, version: 2 });
    expect(body.createdAt).not.toBe('never');
  });

  it('is replaced only by who saw its last version', async () => {
    const id = await created(app, '/v1/pumps', CANISTER);
    const put = (tag: string, name: string) =>
      app.call(`/v1/pumps/${id}`, sent('PUT', { ...CANISTER, name }, { 'If-Match': tag }));
    const replies = await Promise.all([put('"1-metric"', 'first'), put('"1-metric"', 'second')]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 412]);
    expect((await put('"2-metric"', 'third')).headers.get('etag')).toBe('"3-metric"');
    expect(await jsonOf(await put('"1-metric"', 'late'))).toMatchObject({
      code: 'stale-version',
      detail: 'The pump is at version 3.',
    });
  });

  it('is never created by PUT to an id', async () => {
    const path = '/v1/pumps/0198c0de-0000-7000-8000-000000000009';
    expect((await app.call(path, sent('PUT', CANISTER, { 'If-Match': '*' }))).status).toBe(404);
    expect((await app.call(path, sent('PUT', CANISTER))).status).toBe(404);
  });

  it('is deleted, unless a loop has it', async () => {
    const id = await created(app, '/v1/pumps', CANISTER);
    const loop = { ...example('loop-kelp-flume.json'), installed: { pump: id, setting: 70 } };
    const loopId = await created(app, '/v1/loops', loop);
    const remove = (path: string) => app.call(path, { method: 'DELETE', headers: { 'If-Match': '*' } });
    const refused = await remove(`/v1/pumps/${id}`);
    expect(refused.status).toBe(409);
    expect(await jsonOf(refused)).toMatchObject({
      code: 'in-use',
      usedBy: [{ kind: 'loop', id: loopId, name: 'Kelp flume' }],
    });
    expect((await remove(`/v1/loops/${loopId}`)).status).toBe(204);
    expect((await remove(`/v1/pumps/${id}`)).status).toBe(204);
    expect((await app.call(`/v1/pumps/${id}`)).status).toBe(404);
    expect((await remove(`/v1/pumps/${id}`)).status).toBe(404);
  });
});

const points = (count: number) => Array.from({ length: count }, (_, i) => ({ flow: i, head: 5 - i / count }));

describe('a pump that does not make sense is refused', () => {
  it.each<[Record<string, unknown>, string, string]>([
    [{ name: undefined }, '/name', 'is required'],
    [{ name: '' }, '/name', 'must have at least 1 character'],
    [{ name: 'x'.repeat(121) }, '/name', 'must have at most 120 characters'],
    [{ name: 'a\u0000' }, '/name', 'must not hold NUL or half a surrogate pair'],
    [{ name: 'a\ud800' }, '/name', 'must not hold NUL or half a surrogate pair'],
    [
      { colour: 'red' },
      '/colour',
      expect.stringMatching(/^is not a field here; fields are name, ratedSpeed, /),
    ],
    [{ headPoints: [] }, '/headPoints', 'must have at least 1 item'],
    [
      { headPoints: [{ flow: 1, head: 1 }] },
      '/headPoints',
      'have 1 distinct flows at full speed; 3 are needed, or two of which one is 0',
    ],
    [{ headPoints: [{ flow: 1 }] }, '/headPoints/0/head', 'is required'],
    [
      { headPoints: [{ flow: '1 m', head: 1 }] },
      '/headPoints/0/flow',
      'has the unit "m"; accepted are L/h, gal/h, L/min, L/s, m3/h, m3/s, gal/min',
    ],
    [
      { headPoints: [{ flow: 1, head: 1, setting: 0 }] },
      '/headPoints/0/setting',
      'must be above 0 %, not 0 %',
    ],
    [
      { headPoints: [{ flow: 1, head: 1, setting: 101 }] },
      '/headPoints/0/setting',
      'must be at most 100 %, not 101 %',
    ],
    [{ headPoints: points(501) }, '/headPoints', 'must have at most 500 items'],
    [
      {
        headPoints: [
          { flow: 0, head: 1 },
          { flow: 1, head: 2 },
          { flow: 2, head: 3 },
        ],
      },
      '/headPoints',
      'give no head curve that falls with flow',
    ],
    [
      { powerPoints: [{ setting: 100, power: 3 }], standbyPower: 3 },
      '/powerPoints/0/power',
      'must be above standbyPower, 3 W',
    ],
    [
      {
        powerPoints: [
          { setting: 50, power: 100 },
          { setting: 100, power: 90 },
        ],
      },
      '/powerPoints/1/power',
      'is below the 100 W of point 0, at a lower speed',
    ],
    [{ settings: { min: 0 } }, '/settings/min', 'must be above 0 %, not 0 %'],
    [{ settings: { max: 101 } }, '/settings/max', 'must be at most 100 %, not 101 %'],
    [{ settings: { step: 0 } }, '/settings/step', 'must be above 0 %, not 0 %'],
    [{ settings: { min: 80, max: 70 } }, '/settings/max', 'must not be below min'],
    [
      { settings: { min: 0.001, step: 0.001 } },
      '/settings/step',
      'makes 100000 settings; 10001 are the limit',
    ],
    [
      {
        speedMap: [
          { setting: 30, speed: 40 },
          { setting: 30, speed: 50 },
        ],
      },
      '/speedMap/1/setting',
      'must be above that of the point before',
    ],
    [
      {
        speedMap: [
          { setting: 30, speed: 40 },
          { setting: 90, speed: 100 },
        ],
      },
      '/speedMap/1/setting',
      'must reach the setting 100 %: the map spans the settings',
    ],
    [{ flowLimits: { min: 5, max: 5 } }, '/flowLimits/max', 'must be above min'],
    [{ grade: '4Z' }, '/grade', 'must be one of "1B", "1E", "1U", "2B", "2U", "3B"'],
    [{ mounting: 'wet' }, '/mounting', 'must be one of "dry", "submerged"'],
    [{ motorEfficiency: 1.1 }, '/motorEfficiency', 'must be at most 1: it is a fraction, 0.35 for 35 %'],
    [{ price: -1 }, '/price', 'must be at least 0'],
    [{ price: '780 EUR' }, '/price', 'must be of type number'],
    [{ failures: { count: 0.5, devices: 1, years: 1 } }, '/failures/count', 'must be a whole number'],
    [{ service: { everyMonths: 6, minutes: 45 } }, '/service/parts', 'is required'],
    [
      { standbyPower: 1e-300 },
      '/standbyPower',
      'is too close to 0: it must be 0, or at least 1e-12 W in size',
    ],
    [{ units: 'us' }, '/units', 'must be "metric" or the units of an answer in it'],
    [{ units: { weight: 'kg' } }, '/units/weight', 'is not a quantity'],
  ])('%j at %s', async (change, pointer, detail) => {
    const response = await app.call('/v1/pumps', sent('POST', { ...CANISTER, ...change }));
    expect(response.status).toBe(422);
    expect((await jsonOf(response)).errors).toMatchObject([{ pointer, detail }]);
  });

  it('with limit and actual where a limit is passed', async () => {
    const post = async (change: object) =>
      jsonOf(await app.call('/v1/pumps', sent('POST', { ...CANISTER, ...change })));
    expect(await post({ headPoints: points(501) })).toMatchObject({
      code: 'limit-exceeded',
      limit: 500,
      actual: 501,
    });
    expect(await post({ settings: { min: 0.001, step: 0.001 } })).toMatchObject({
      limit: 10_001,
      actual: 100_000,
    });
  });
});

describe('the list of pumps', () => {
  const names = (body: Record<string, unknown>) =>
    Array.isArray(body.items) ? body.items.map(({ name }) => name) : undefined;
  const list = async (query: string) => jsonOf(await app.call(`/v1/pumps${query}`));

  beforeEach(async () => {
    for (const name of ['a', 'b', 'c', 'b', 'e']) await created(app, '/v1/pumps', { ...CANISTER, name });
  });

  it('goes on page by page in the order of creation', async () => {
    expect(names(await list(''))).toEqual(['a', 'b', 'c', 'b', 'e']);
    const first = await list('?limit=2');
    expect(names(first)).toEqual(['a', 'b']);
    const second = await list(`?limit=2&cursor=${first.next}`);
    expect(names(second)).toEqual(['c', 'b']);
    const third = await list(`?limit=2&cursor=${second.next}`);
    expect(names(third)).toEqual(['e']);
    expect(third.next).toBeNull();
  });

  it('takes a name, exactly', async () => {
    expect(names(await list('?name=b'))).toEqual(['b', 'b']);
    expect(names(await list('?name=B'))).toEqual([]);
    const first = await list('?name=b&limit=1');
    expect(names(await list(`?name=b&limit=1&cursor=${first.next}`))).toEqual(['b']);
  });

  it.each([
    ['limit=0', 'limit'],
    ['limit=201', 'limit'],
    ['limit=1.5', 'limit'],
    ['limit=ten', 'limit'],
    ['cursor=', 'cursor'],
    ['cursor=x', 'cursor'],
    ['name=', 'name'],
  ])('refuses %s', async (query, parameter) => {
    const response = await app.call(`/v1/pumps?${query}`);
    expect(response.status).toBe(422);
    expect(await jsonOf(response)).toMatchObject({ errors: [{ parameter }] });
  });

  it('comes in CSV', async () => {
    const response = await app.call('/v1/pumps?format=csv&limit=1');
    expect(await response.text()).toMatch(
      /^id,key,name,version,createdAt,updatedAt,settingMin \[%\],settingMax \[%\],settingStep \[%\],standbyPower \[W\],price\r\n[-0-9]+,,a,1,\S+Z,\S+Z,30,100,1,3,780\r\n$/,
    );
  });

  it('gives one value by a pointer', async () => {
    expect(await (await app.call('/v1/pumps?pointer=/items/1/headPoints/1/head&units=us')).text()).toBe(
      '14.7637795276',
    );
  });
});
