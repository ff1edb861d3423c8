/** Pumps, loops, tariffs and routine checks by the keys of their users. */
import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { mayHaveKey } from '../../../api/http/record-names.ts';
import { isKey } from '../../../api/store/key-form.ts';
import { type AppUnderTest, appUnderTest } from '../app-under-test.ts';
import { created, example, type Json, jsonOf, sent } from '../requests.ts';

let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

const PUMP = example('pump-canister-250.json');
const LOOP = example('loop-kelp-flume.json');
const TARIFF = example('tariff.json');
const UNKNOWN_ID = '0198c0de-0000-7000-8000-000000000009';

const call = async (method: string, path: string, body?: unknown, headers: Record<string, string> = {}) => {
  const response = await app.call(
    path,
    body === undefined ? { method, headers } : sent(method, body, headers),
  );
  const text = await response.text();
  const answer: Json = text.startsWith('{') ? JSON.parse(text) : { text };
  return { status: response.status, headers: response.headers, body: answer };
};

const put = (path: string, body: unknown, headers?: Record<string, string>) =>
  call('PUT', path, body, headers);

const get = async (path: string): Promise<Json> => {
  const { status, body } = await call('GET', path);
  expect([path, status]).toEqual([path, 200]);
  return body;
};

/** A pump, a loop that has it installed, a tariff, and a check of the loop, each by its key. */
async function station(): Promise<void> {
  const loop = { ...LOOP, installed: { pump: 'canister-250', setting: 80 } };
  const task = { ...example('maintenance-task.json'), loop: 'kelp-flume' };
  for (const [path, body] of [
    ['/v1/pumps/canister-250', PUMP],
    ['/v1/loops/kelp-flume', loop],
    ['/v1/tariffs/winter-peak', TARIFF],
    ['/v1/maintenance-tasks/clean-screen', task],
  ] as const) {
    const { status, body: answer } = await put(path, body);
    expect([path, status, answer.detail]).toEqual([path, 201, undefined]);
  }
}

describe('what a key may be', () => {
  it.each(['a', '7', 'kelp-flume', 'a--b', `a${'b'.repeat(39)}`, 'imports', '0198c0de'])(
    '%s',
    async (key) => {
      expect(isKey(key)).toBe(true);
      expect(await call('POST', '/v1/pumps', { ...PUMP, key })).toMatchObject({ status: 201, body: { key } });
    },
  );

  it.each([
    '',
    '-a',
    'a-',
    'A',
    'a b',
    'a_b',
    'a.b',
    'ä',
    'a'.repeat(41),
    'import',
    'a\n',
    '0198c1f2-7c1a-7b3e-9f00-0123456789ab',
    7,
    {},
  ])('not %j', async (key) => {
    const { status, body } = await call('POST', '/v1/pumps', { ...PUMP, key });
    expect(status).toBe(422);
    expect(body).toMatchObject({ errors: [{ pointer: '/key' }] });
    expect(String(body.detail)).toMatch(typeof key === 'string' ? /1 to 40 of a-z, 0-9 and "-"/ : /key/);
  });

  it('is judged in every kind, by POST, by PUT and in a path', async () => {
    await station();
    const collections = { pumps: PUMP, loops: LOOP, tariffs: TARIFF };
    for (const [kind, document] of Object.entries(collections)) {
      for (const [method, path, body] of [
        ['POST', `/v1/${kind}`, { ...document, key: 'A' }],
        ['PUT', `/v1/${kind}/${kind}`, { ...document, key: 'A' }],
        ['PUT', `/v1/${kind}/import`, document],
        ['PUT', `/v1/${kind}/Kelp_Flume`, document],
      ] as const) {
        expect(await call(method, path, body)).toMatchObject({
          status: 422,
          body: { errors: [{ pointer: '/key' }] },
        });
      }
    }
  });
});

describe('a PUT by a key that is not there', () => {
  it('creates, with Location by id', async () => {
    const { status, headers, body } = await put('/v1/pumps/canister-250', PUMP);
    expect([status, headers.get('etag'), headers.get('location')]).toEqual([
      201,
      '"1-metric"',
      `/v1/pumps/${body.id}`,
    ]);
    expect(body).toMatchObject({ key: 'canister-250', version: 1, name: PUMP.name });
    const { cautions: _, ...record } = body;
    expect(await get(`/v1/pumps/${body.id}`)).toEqual(record);
    expect(await get('/v1/pumps/canister-250')).toEqual(record);
  });

  it.each(['*', '"1-metric"'])('with If-Match %s is 412, and creates nothing', async (tag) => {
    const { status, body } = await put('/v1/pumps/canister-250', PUMP, { 'If-Match': tag });
    expect([status, body.code]).toEqual([412, 'stale-version']);
    expect(body.errors).toMatchObject([{ header: 'If-Match' }]);
    expect((await get('/v1/pumps')).items).toEqual([]);
  });

  it('takes the same key in the body, and no other', async () => {
    for (const key of ['other', null])
      expect(await put('/v1/pumps/canister-250', { ...PUMP, key })).toMatchObject({
        status: 422,
        body: { errors: [{ pointer: '/key', detail: 'must be "canister-250" as in the path, or left out' }] },
      });
    const same = await put('/v1/pumps/canister-250', { ...PUMP, key: 'canister-250' });
    expect(same.status).toBe(201);
  });

  it('may demand that there is none', async () => {
    const condition = { 'If-None-Match': '*' };
    expect((await put('/v1/pumps/canister-250', PUMP, condition)).status).toBe(201);
    const again = await put('/v1/pumps/canister-250', PUMP, condition);
    expect(again).toMatchObject({ status: 412, body: { errors: [{ header: 'If-None-Match' }] } });
  });

  it('but an id of none is 404', async () => {
    expect((await put(`/v1/pumps/${UNKNOWN_ID}`, PUMP)).status).toBe(404);
    expect((await put(`/v1/pumps/${UNKNOWN_ID}`, PUMP, { 'If-Match': '*' })).status).toBe(404);
  });
});

describe('a PUT by a key that is there', () => {
  beforeEach(station);

  it('replaces as by id: 428 without If-Match, 412 with a stale one', async () => {
    const other = { ...PUMP, price: 790 };
    expect(await put('/v1/pumps/canister-250', other)).toMatchObject({
      status: 428,
      body: { errors: [{ header: 'If-Match' }] },
    });
    expect((await put('/v1/pumps/canister-250', other, { 'If-Match': '"7-us"' })).status).toBe(412);
    const { status, body } = await put('/v1/pumps/canister-250', other, { 'If-Match': '"1-us"' });
    expect([status, body.version, body.price, body.key]).toEqual([200, 2, 790, 'canister-250']);
  });

  it('renames by another key, and the old one names nothing', async () => {
    const { id } = await get('/v1/pumps/canister-250');
    const renamed = await put('/v1/pumps/canister-250', { ...PUMP, key: 'big-one' }, { 'If-Match': '*' });
    expect(renamed).toMatchObject({ status: 200, body: { id, key: 'big-one', version: 2 } });
    expect((await call('GET', '/v1/pumps/canister-250')).status).toBe(404);
    // What refers to it holds its id.
    expect(await get('/v1/loops/kelp-flume')).toMatchObject({ installed: { pump: id } });
    expect(await get('/v1/loops/kelp-flume/duty-point')).toMatchObject({ pump: { id, key: 'big-one' } });
  });

  it('takes the key away by null, and keeps what it says nothing of', async () => {
    const { id } = await get('/v1/pumps/canister-250');
    const removed = await put('/v1/pumps/canister-250', { ...PUMP, key: null }, { 'If-Match': '*' });
    expect(removed.status).toBe(200);
    expect(removed.body).not.toHaveProperty('key');
    expect(await get(`/v1/pumps/${id}`)).not.toHaveProperty('key');
  });

  it('by its id takes the key away where it states none', async () => {
    const { id } = await get('/v1/pumps/canister-250');
    expect((await put(`/v1/pumps/${id}`, PUMP)).status).toBe(428);
    const { body } = await put(`/v1/pumps/${id}`, PUMP, { 'If-Match': '*' });
    expect(body).not.toHaveProperty('key');
    const again = await put(`/v1/pumps/${id}`, { ...PUMP, key: 'back' }, { 'If-Match': '*' });
    expect(again.body).toMatchObject({ key: 'back', version: 3 });
  });

  it('is refused the key of another: 409, which names it', async () => {
    const { id } = await get('/v1/pumps/canister-250');
    const taken = { code: 'key-taken', usedBy: [{ kind: 'pump', id, key: 'canister-250', name: PUMP.name }] };
    expect(await call('POST', '/v1/pumps', { ...PUMP, key: 'canister-250' })).toMatchObject({
      status: 409,
      body: taken,
    });
    await put('/v1/pumps/second', { ...PUMP, name: 'Second' });
    const change = { ...PUMP, key: 'canister-250' };
    expect(await put('/v1/pumps/second', change, { 'If-Match': '*' })).toMatchObject({
      status: 409,
      body: { ...taken, errors: [{ pointer: '/key' }] },
    });
    for (const [path, body] of [
      ['/v1/loops', { ...LOOP, key: 'kelp-flume' }],
      ['/v1/tariffs', { ...TARIFF, key: 'winter-peak' }],
      [
        '/v1/maintenance-tasks',
        { ...example('maintenance-task.json'), loop: 'kelp-flume', key: 'clean-screen' },
      ],
    ] as const)
      expect(await call('POST', path, body)).toMatchObject({ status: 409, body: { code: 'key-taken' } });
  });

  it('may be the key of a record of another kind', async () => {
    expect((await put('/v1/pumps/kelp-flume', PUMP)).status).toBe(201);
  });
});

describe('a PUT of what is stored', () => {
  const bodies = (): readonly (readonly [string, unknown])[] => [
    ['/v1/site', { ...example('site.json'), tariff: 'winter-peak' }],
    ['/v1/pumps/canister-250', PUMP],
    ['/v1/loops/kelp-flume', { ...LOOP, installed: { pump: 'canister-250', setting: 80 } }],
    ['/v1/tariffs/winter-peak', TARIFF],
    ['/v1/maintenance-tasks/clean-screen', { ...example('maintenance-task.json'), loop: 'kelp-flume' }],
    ['/v1/loops/kelp-flume/schedule', { ...example('schedule.json'), tariff: 'winter-peak' }],
  ];

  it('is 200 and keeps the version, so that a script that sets a site up can run twice', async () => {
    await station();
    await put('/v1/site', { ...example('site.json'), tariff: 'winter-peak' }, { 'If-Match': '*' });
    await put('/v1/loops/kelp-flume/schedule', { ...example('schedule.json'), tariff: 'winter-peak' });
    const state = async () => (await app.call('/v1/export')).text();
    const before = await state();
    for (const [path, body] of bodies()) {
      const etag = (await app.call(path)).headers.get('etag');
      for (const headers of [{}, { 'If-Match': '*' }, { 'If-Match': etag ?? '' }]) {
        const again = await put(path, body, headers);
        expect([path, again.status, again.headers.get('etag')]).toEqual([path, 200, etag]);
      }
    }
    expect(await state()).toBe(before);
  });

  it.each(['metric', 'us'])('holds of what was read in %s units', async (units) => {
    await station();
    for (const path of ['/v1/pumps/canister-250', '/v1/loops/kelp-flume', '/v1/tariffs/winter-peak']) {
      const read = await get(`${path}?units=${units}`);
      expect(await put(`${path}?units=${units}`, read)).toMatchObject({ status: 200, body: { version: 1 } });
    }
  });

  it('holds of points in CSV', async () => {
    await station();
    const points = (text: string, headers: Record<string, string> = {}) =>
      app.call('/v1/pumps/canister-250/head-points', {
        method: 'PUT',
        headers: { 'Content-Type': 'text/csv', ...headers },
        body: text,
      });
    const text = 'flow,head\n0,5\n4000,4\n8000,1\n';
    expect((await points(text)).status).toBe(428);
    expect((await points(text, { 'If-Match': '*' })).headers.get('etag')).toBe('"2-metric"');
    expect((await points(text)).headers.get('etag')).toBe('"2-metric"');
    expect(await get('/v1/pumps/canister-250')).toMatchObject({ key: 'canister-250' });
  });

  it('with a stale If-Match is still 412', async () => {
    await station();
    expect((await put('/v1/pumps/canister-250', PUMP, { 'If-Match': '"7-us"' })).status).toBe(412);
  });
});

describe('a key in place of an id', () => {
  beforeEach(station);

  it.each([
    '/v1/loops/kelp-flume',
    '/v1/loops/kelp-flume/duty-point?pump=canister-250&setting=70',
    '/v1/loops/kelp-flume/recommendation?pump=canister-250&tariff=winter-peak',
    '/v1/loops/kelp-flume/setpoint',
    '/v1/loops/kelp-flume/system-curve?flow=9000',
    '/v1/loops/kelp-flume/readings',
    '/v1/maintenance-tasks?loop=kelp-flume',
    '/v1/maintenance-tasks/clean-screen',
    '/v1/maintenance-tasks/clean-screen/completions',
    '/v1/pumps/canister-250/curves?setting=70',
    '/v1/tariffs/winter-peak',
  ])('answers the same in GET %s', async (path) => {
    const ids = new Map<string, string>();
    for (const [key, kind] of [
      ['kelp-flume', 'loops'],
      ['canister-250', 'pumps'],
      ['winter-peak', 'tariffs'],
      ['clean-screen', 'maintenance-tasks'],
    ] as const)
      ids.set(key, String((await get(`/v1/${kind}/${key}`)).id));
    const byId = path.replaceAll(
      /kelp-flume|canister-250|winter-peak|clean-screen/g,
      (key) => ids.get(key) ?? '',
    );
    expect(byId).not.toBe(path);
    expect(await get(path)).toEqual(await get(byId));
  });

  it('stands in lists with commas beside ids, and in bodies', async () => {
    const second = await created(app, '/v1/pumps', example('pump-canister-600.json'));
    const asked = await get(`/v1/loops/kelp-flume/recommendation?pump=canister-250,${second}`);
    expect(asked).toMatchObject({ counts: { candidates: 2 } });
    const body = {
      loop: 'kelp-flume',
      pumps: ['canister-250', { pump: 'canister-250', count: 2 }, second],
      tariff: 'winter-peak',
    };
    const { status, body: answer } = await call('POST', '/v1/recommendations', body);
    expect(status).toBe(200);
    expect(answer).toMatchObject({
      counts: { candidates: 3 },
      best: { pump: { key: 'canister-250', name: PUMP.name } },
      assumptions: { tariff: { key: 'winter-peak' } },
    });
  });

  it('is stored and answered as an id', async () => {
    const [pump, loop, tariff] = [
      (await get('/v1/pumps/canister-250')).id,
      (await get('/v1/loops/kelp-flume')).id,
      (await get('/v1/tariffs/winter-peak')).id,
    ];
    expect(await get('/v1/loops/kelp-flume')).toMatchObject({ installed: { pump } });
    expect(await get('/v1/maintenance-tasks/clean-screen')).toMatchObject({ loop });
    const schedule = { ...example('schedule.json'), tariff: 'winter-peak' };
    expect((await put('/v1/loops/kelp-flume/schedule', schedule)).body).toMatchObject({ tariff });
    const site = { ...example('site.json'), tariff: 'winter-peak' };
    expect((await put('/v1/site', site, { 'If-Match': '*' })).body).toMatchObject({ tariff });
  });

  it('names records in comparisons and in what is in use', async () => {
    const comparison = {
      years: 5,
      price: 0.21,
      options: [
        { name: 'now', assemblies: [{ loop: 'kelp-flume', pump: 'canister-250', count: 1, new: false }] },
      ],
    };
    const { status, body } = await call('POST', '/v1/comparisons', comparison);
    expect([status, body.detail]).toEqual([201, undefined]);
    expect(body).toMatchObject({
      options: [{ assemblies: [{ loop: { key: 'kelp-flume' }, pump: { key: 'canister-250' } }] }],
    });
    const inUse = await call('DELETE', '/v1/pumps/canister-250', undefined, { 'If-Match': '*' });
    expect(inUse).toMatchObject({ status: 409, body: { usedBy: [{ kind: 'loop', key: 'kelp-flume' }] } });
    const kept = await call('DELETE', '/v1/loops/kelp-flume', undefined, { 'If-Match': '*' });
    expect(kept).toMatchObject({ status: 409, body: { usedBy: [{ key: 'clean-screen' }] } });
  });

  it('deletes', async () => {
    const path = '/v1/maintenance-tasks/clean-screen';
    expect((await call('DELETE', path, undefined, { 'If-Match': '*' })).status).toBe(204);
    expect((await call('GET', path)).status).toBe(404);
  });

  it('is a column of lists, and no filter', async () => {
    for (const kind of ['pumps', 'loops', 'tariffs', 'maintenance-tasks']) {
      const text = await (await app.call(`/v1/${kind}?format=csv`)).text();
      const [header = '', row = ''] = text.split('\r\n');
      const place = header.split(',').indexOf('key');
      expect(row.split(',')[place]).toMatch(/^(canister-250|kelp-flume|winter-peak|clean-screen)$/);
      expect((await call('GET', `/v1/${kind}?key=kelp-flume`)).status).toBe(422);
    }
  });
});

describe('a name of nothing, or of another kind', () => {
  beforeEach(station);

  it.each<[string, string, Json | undefined, number, Json]>([
    [
      'GET',
      '/v1/loops/kelp-flum',
      undefined,
      404,
      { detail: 'There is no loop with this id or key. GET /v1/loops lists those that there are.' },
    ],
    [
      'GET',
      '/v1/loops/canister-250',
      undefined,
      404,
      {
        detail:
          'There is no loop with this id or key: it is the key of the pump "Canister 250". GET /v1/loops lists those that there are.',
      },
    ],
    ['GET', '/v1/loops/canister-250/setpoint', undefined, 404, { code: 'not-found' }],
    [
      'GET',
      '/v1/loops/kelp-flume/recommendation?pump=kelp-flume',
      undefined,
      422,
      {
        errors: [
          {
            parameter: 'pump',
            detail:
              'names no pump that is stored, but it is the key of the loop "Kelp flume"; GET /v1/pumps lists those that there are',
          },
        ],
      },
    ],
    [
      'GET',
      '/v1/loops/kelp-flume/recommendation?pump=canister-250,nothing',
      undefined,
      422,
      { errors: [{ parameter: 'pump' }] },
    ],
    [
      'GET',
      '/v1/loops/kelp-flume/recommendation?tariff=nothing',
      undefined,
      422,
      { errors: [{ parameter: 'tariff' }] },
    ],
    ['GET', '/v1/maintenance-tasks?loop=nothing', undefined, 422, { errors: [{ parameter: 'loop' }] }],
    ['POST', '/v1/recommendations', { loop: 'nothing', price: 0.2 }, 422, { errors: [{ pointer: '/loop' }] }],
    [
      'POST',
      '/v1/recommendations',
      { loop: 'kelp-flume', pumps: ['nothing'], price: 0.2 },
      422,
      { errors: [{ pointer: '/pumps/0' }] },
    ],
    [
      'POST',
      '/v1/loops',
      { ...LOOP, installed: { pump: 'winter-peak', setting: 70 } },
      422,
      {
        errors: [
          {
            pointer: '/installed/pump',
            detail:
              'names no pump that is stored, but it is the key of the tariff "Winter peak"; GET /v1/pumps lists those that there are',
          },
        ],
      },
    ],
    [
      'POST',
      '/v1/maintenance-tasks',
      { ...example('maintenance-task.json'), loop: 'nothing' },
      422,
      { errors: [{ pointer: '/loop' }] },
    ],
    [
      'PUT',
      '/v1/loops/kelp-flume/schedule',
      { ...example('schedule.json'), tariff: 'kelp-flume' },
      422,
      { errors: [{ pointer: '/tariff' }] },
    ],
    [
      'PUT',
      '/v1/site',
      { ...example('site.json'), tariff: 'nothing' },
      422,
      { errors: [{ pointer: '/tariff' }] },
    ],
  ])('%s %s is answered plainly', async (method, path, body, status, problem) => {
    const headers = method === 'PUT' && path === '/v1/site' ? { 'If-Match': '*' } : {};
    expect(await call(method, path, body, headers)).toMatchObject({ status, body: problem });
  });

  it('is said of ids alike', async () => {
    const { id } = await get('/v1/pumps/canister-250');
    expect((await call('GET', `/v1/loops/${id}`)).body.detail).toBe(
      'There is no loop with this id or key: it is the id of the pump "Canister 250". GET /v1/loops lists those that there are.',
    );
  });
});

describe('keys in the copy of a site', () => {
  beforeEach(station);

  const exported = async () => (await app.call('/v1/export')).text();
  const imported = (site: AppUnderTest, body: string) =>
    site.call('/v1/export', { method: 'POST', headers: { 'Content-Type': 'application/json' }, body });

  it('go out and come in', async () => {
    const text = await exported();
    const other = await appUnderTest();
    const response = await imported(other, text);
    expect([response.status, await response.clone().text()]).toMatchObject([201, expect.any(String)]);
    const again: Json = JSON.parse(await (await other.call('/v1/export')).text());
    const { site: _, ...rest } = JSON.parse(text);
    expect(again).toMatchObject(rest);
    expect((await jsonOf(await other.call('/v1/maintenance-tasks/clean-screen'))).key).toBe('clean-screen');
  });

  it.each(['pumps', 'loops', 'tariffs', 'maintenanceTasks'])(
    'are there once among %s: 422 at the second',
    async (kind) => {
      const copy = JSON.parse(await exported());
      copy[kind].push({ ...copy[kind][0], id: UNKNOWN_ID });
      const response = await imported(await appUnderTest(), JSON.stringify(copy));
      expect(response.status).toBe(422);
      expect(await jsonOf(response)).toMatchObject({
        errors: [{ pointer: `/${kind}/1/key`, detail: 'is there twice' }],
      });
    },
  );

  it('have the form of a key', async () => {
    const copy = JSON.parse(await exported());
    copy.loops[0].key = 'Kelp';
    const response = await imported(await appUnderTest(), JSON.stringify(copy));
    expect(await jsonOf(response)).toMatchObject({ status: 422, errors: [{ pointer: '/loops/0/key' }] });
  });
});

describe('keys in a pasted table of pumps', () => {
  const pasted = (text: string) =>
    app.call('/v1/pumps/import', { method: 'POST', headers: { 'Content-Type': 'text/csv' }, body: text });
  const rows = (name: string, key: string) => `${name},${key},0,5,\n${name},,4000,4,90\n${name},,8000,1,\n`;
  const HEADER = 'name,key,flow,head,power\n';

  it('are kept', async () => {
    const response = await pasted(`${HEADER}${rows('A', 'a-1')}${rows('B', '')}`);
    expect(response.status).toBe(201);
    expect(await get('/v1/pumps/a-1')).toMatchObject({ name: 'A', key: 'a-1' });
  });

  it('are refused at the second of two, at one that is taken, and in another form', async () => {
    const twice = await jsonOf(await pasted(`${HEADER}${rows('A', 'a-1')}${rows('B', 'a-1')}`));
    expect(twice).toMatchObject({ status: 422, errors: [{ pointer: '/3/key', line: 5 }] });
    await put('/v1/pumps/a-1', PUMP);
    const taken = await jsonOf(await pasted(`${HEADER}${rows('A', 'free')}${rows('B', 'a-1')}`));
    expect(taken).toMatchObject({
      status: 409,
      code: 'key-taken',
      usedBy: [{ key: 'a-1' }],
      errors: [{ pointer: '/3/key' }],
    });
    const form = await jsonOf(await pasted(`${HEADER}${rows('A', 'A 1')}`));
    expect(form).toMatchObject({ status: 422, errors: [{ pointer: '/0/key', line: 2 }] });
    expect((await get('/v1/pumps')).items).toHaveLength(1);
  });
});

describe('the document of the interface', () => {
  const document: Json = JSON.parse(
    readFileSync(new URL('../../../openapi/openapi.json', import.meta.url), 'utf8'),
  );

  /** The names under which something is an id or key, wherever they stand. */
  function named(value: unknown, at: string): readonly string[] {
    if (typeof value !== 'object' || value === null) return [];
    const own: Json = { ...value };
    // A parameter has its name beside its description, a member is named by its place.
    const name = typeof own.name === 'string' && 'in' in own ? own.name : at;
    const isName = /\b[Ii]ds? or keys?\b/.test(String(own.description)) && name !== '';
    const inside = Object.entries(own).flatMap(([member, held]) =>
      named(held, /^(?:schema|items|anyOf|oneOf|allOf|\d+)$/.test(member) ? name : member),
    );
    return [...(isName ? [name] : []), ...inside];
  }

  it('promises a key only where names are read as ids', () => {
    const names = new Set(named(document, ''));
    expect([...names].sort()).toEqual(
      expect.arrayContaining(['loop', 'loopId', 'pump', 'pumpId', 'pumps', 'tariff', 'tariffId', 'taskId']),
    );
    const others = [...names].filter((name) => !mayHaveKey(name.replace(/(?:s|Id)$/, '')));
    expect(others).toEqual([]);
  });
});
