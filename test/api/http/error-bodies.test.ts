/** One error body on every path. */
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { PROBLEMS } from '../../../api/http/problem-registry.ts';
import { type AppUnderTest, appUnderTest } from '../app-under-test.ts';
import { demonstrationRoutes } from './demonstration-routes.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest({ mount: demonstrationRoutes });
});

const problemBody = z.strictObject({
  type: z.string(),
  code: z.string(),
  title: z.string(),
  status: z.int(),
  detail: z.string().min(1),
  instance: z.string(),
  requestId: z.string().min(1),
  errors: z
    .array(
      z.strictObject({
        pointer: z.string().optional(),
        parameter: z.string().optional(),
        header: z.string().optional(),
        detail: z.string(),
        line: z.int().optional(),
        limit: z.number().optional(),
        actual: z.number().optional(),
      }),
    )
    .max(50)
    .optional(),
  limit: z.number().optional(),
  actual: z.number().optional(),
});

/** Checks the whole form of an error and gives its body. */
async function problemOf(response: Response) {
  expect(response.headers.get('content-type')).toBe('application/problem+json');
  const body = problemBody.parse(await response.json());
  expect(body.status).toBe(response.status);
  expect(body.type).toBe(`urn:loopwright:problem:${body.code}`);
  expect(response.headers.get('x-request-id')).toBe(body.requestId);
  expect(PROBLEMS).toHaveProperty(body.code);
  return body;
}

const json = (body: string | Uint8Array<ArrayBuffer>, headers: Record<string, string> = {}): RequestInit => ({
  method: 'POST',
  headers: { 'Content-Type': 'application/json', ...headers },
  body,
});

const streamOf = (chunk: Uint8Array, times: number) => {
  let sent = 0;
  return new ReadableStream<Uint8Array>({
    pull(controller) {
      if (sent === times) return controller.close();
      sent += 1;
      controller.enqueue(chunk);
    },
  });
};

const MEBIBYTE = 1024 * 1024;
const TANK = '{"name":"a","flow":1000}';

describe('an error', () => {
  it.each<[string, number, string, string, RequestInit | undefined]>([
    ['malformed JSON', 400, 'malformed-json', '/v1/tanks', json('{"name":')],
    ['a number that JSON does not have', 400, 'malformed-json', '/v1/tanks', json('{"flow":NaN}')],
    [
      'bytes that are not UTF-8',
      400,
      'malformed-utf8',
      '/v1/tanks',
      json(new Uint8Array([0x22, 0xff, 0x22])),
    ],
    ['no body', 400, 'missing-body', '/v1/tanks', json('')],
    ['no body of any type', 400, 'missing-body', '/v1/tanks', { method: 'POST' }],
    ['a query that is not UTF-8', 400, 'malformed-url', '/v1/table?limit=%ff', undefined],
    ['a query with half an escape', 400, 'malformed-url', '/v1/table?limit=%2', undefined],
    ['an unknown path', 404, 'not-found', '/v1/nothing', undefined],
    ['an unknown id', 404, 'not-found', '/v1/tanks/2', undefined],
    ['an id that is no text', 400, 'malformed-url', '/v1/tanks/%ff', undefined],
    ['a path with half an escape', 400, 'malformed-url', '/v1/tan%2', undefined],
    ['a slash at the end', 404, 'not-found', '/v1/tanks/', undefined],
    ['another method', 405, 'method-not-allowed', '/v1/tanks/1', { method: 'PATCH' }],
    [
      'a form that it does not come in',
      406,
      'not-acceptable',
      '/v1/tanks/1',
      { headers: { Accept: 'text/html' } },
    ],
    ['a body over 1 MiB', 413, 'body-too-large', '/v1/tanks', json(`"${'a'.repeat(MEBIBYTE)}"`)],
    ['an address over 8 KiB', 414, 'url-too-long', `/v1/table?limit=${'1'.repeat(8192)}`, undefined],
    [
      'another type of body',
      415,
      'unsupported-media-type',
      '/v1/tanks',
      json(TANK, { 'Content-Type': 'text/plain' }),
    ],
    [
      'another charset',
      415,
      'unsupported-media-type',
      '/v1/tanks',
      json(TANK, { 'Content-Type': 'application/json; charset=latin1' }),
    ],
    [
      'a compressed body',
      415,
      'unsupported-media-type',
      '/v1/tanks',
      json(TANK, { 'Content-Encoding': 'gzip' }),
    ],
    ['a body of no object', 422, 'invalid-request', '/v1/tanks', json('5')],
    ['a missing field', 422, 'invalid-request', '/v1/tanks', json('{"name":"a"}')],
    ['an unknown field', 422, 'invalid-request', '/v1/tanks', json('{"name":"a","flow":1,"colour":2}')],
    ['an infinite number', 422, 'invalid-request', '/v1/tanks', json('{"name":"a","flow":1e999}')],
    ['nesting over 100', 422, 'limit-exceeded', '/v1/tanks', json(`${'['.repeat(101)}${']'.repeat(101)}`)],
    [
      'too long a list',
      422,
      'limit-exceeded',
      '/v1/tanks',
      json('{"name":"a","flow":1,"probes":[{},{},{},{}]}'),
    ],
    ['an unknown parameter', 422, 'invalid-request', '/v1/table?colour=red', undefined],
    ['a repeated parameter', 422, 'invalid-request', '/v1/table?limit=1&limit=1', undefined],
    ['an unknown system of units', 422, 'invalid-request', '/v1/table?units=imperial', undefined],
    ['format where there is no table', 422, 'invalid-request', '/v1/tanks/1?format=csv', undefined],
    ['a fault', 500, 'internal-error', '/v1/tanks/broken', undefined],
    ['an answer that is not finite', 500, 'internal-error', '/v1/tanks/infinite', undefined],
    ['a database that is away', 503, 'unavailable', '/v1/tanks/busy', undefined],
    ['a full disk', 507, 'storage-full', '/v1/tanks/full', undefined],
    ['another host', 403, 'loopback-only', '/v1/table', { headers: { Host: 'example.org' } }],
  ])('for %s is %i %s', async (_, status, code, path, init) => {
    const response = await app.call(path, init);
    const body = await problemOf(response);
    expect(body.code).toBe(code);
    expect(response.status).toBe(status);
    expect(body.instance).toBe(path.replace(/\?.*/, ''));
  });

  it('for a replacement without If-Match is 428, with a stale one 412', async () => {
    const put = (headers: Record<string, string>) =>
      app.call('/v1/tanks/1', { ...json(TANK, headers), method: 'PUT' });
    expect((await problemOf(await put({}))).code).toBe('version-required');
    expect((await problemOf(await put({ 'If-Match': '"2-metric"' }))).code).toBe('stale-version');
  });

  it('for a body of unstated length is 413 as soon as it passes the limit', async () => {
    const init = {
      ...json(''),
      body: streamOf(new Uint8Array(MEBIBYTE).fill(0x20), 100),
      duplex: 'half' as const,
    };
    const body = await problemOf(await app.call('/v1/tanks', init));
    expect(body).toMatchObject({ code: 'body-too-large', limit: MEBIBYTE });
  });

  it('names the methods that do apply', async () => {
    expect((await app.call('/v1/tanks/1', { method: 'POST' })).headers.get('allow')).toBe(
      'DELETE, GET, HEAD, PUT',
    );
    expect((await app.call('/v1/tanks', { method: 'GET' })).headers.get('allow')).toBe('POST');
  });

  it('says how long to wait for a database that is away', async () => {
    expect((await app.call('/v1/tanks/busy')).headers.get('retry-after')).toBe('2');
  });

  it.each(['broken', 'busy', 'full', 'infinite'])(
    'tells nothing of the inside (%s), the log does',
    async (id) => {
      const response = await app.call(`/v1/tanks/${id}`);
      const body = await problemOf(response);
      expect(JSON.stringify(body)).not.toMatch(/secret|invariant|\.ts/);
      const line = app
        .logLines()
        .find(({ msg, requestId }) => msg === 'fault' && requestId === body.requestId);
      expect(line).toMatchObject({ level: 'error', err: { stack: expect.any(String) } });
    },
  );

  it('states limit and actual', async () => {
    const deep = await problemOf(
      await app.call('/v1/tanks', json(`${'[{"a":'.repeat(60)}1${'}]'.repeat(60)}`)),
    );
    expect(deep).toMatchObject({ limit: 100, actual: 120 });
    const long = await problemOf(
      await app.call('/v1/tanks', json('{"name":"a","flow":1,"probes":[{},{},{},{}]}')),
    );
    expect(long).toMatchObject({
      limit: 3,
      actual: 4,
      errors: [{ pointer: '/probes', detail: 'must have at most 3 items' }],
    });
  });

  it('counts brackets outside strings only', async () => {
    const response = await app.call(
      '/v1/tanks',
      json(JSON.stringify({ name: `${'['.repeat(200)}\\"`, flow: 1 })),
    );
    expect(response.status).toBe(201);
  });

  it('lists fifty faults at most', async () => {
    const many = Object.fromEntries(Array.from({ length: 80 }, (_, i) => [`field${i}`, 1]));
    const body = await problemOf(
      await app.call('/v1/tanks', json(JSON.stringify({ name: 'a', flow: 1, ...many }))),
    );
    expect(body.errors).toHaveLength(50);
  });
});

describe('a body', () => {
  it('may begin with a byte order mark', async () => {
    expect((await app.call('/v1/tanks', json(`\uFEFF${TANK}`))).status).toBe(201);
  });

  it('may state UTF-8', async () => {
    const headers = { 'Content-Type': 'Application/JSON; Charset="UTF-8"' };
    expect((await app.call('/v1/tanks', json(TANK, headers))).status).toBe(201);
  });

  it('may come without a stated length', async () => {
    const init = { ...json(''), body: streamOf(new TextEncoder().encode(TANK), 1), duplex: 'half' as const };
    expect((await app.call('/v1/tanks', init)).status).toBe(201);
  });

  it('gives the last of two equal keys', async () => {
    const response = await app.call('/v1/tanks', json('{"name":"a","flow":1,"flow":2}'));
    expect(await response.json()).toMatchObject({ flow: 2 });
  });
});

describe('a pointer', () => {
  it.each([
    ['{"flow":1}', '/name', 'is required'],
    [
      '{"name":"a","flow":"1 m"}',
      '/flow',
      'has the unit "m"; accepted are L/h, gal/h, L/min, L/s, m3/h, m3/s, gal/min',
    ],
    ['{"name":"a","flow":-1}', '/flow', 'must be at least 0 L/h, not -1 L/h'],
    ['{"name":"","flow":1}', '/name', 'must have at least 1 character'],
    ['{"name":5,"flow":1}', '/name', 'must be of type string'],
    ['{"name":"a","flow":1,"a/b~c":1}', '/a~1b~0c', 'is not a field here; fields are name, flow, probes'],
    ['{"name":"a","flow":1,"__proto__":1}', '/__proto__', 'is not a field here'],
    [
      '{"name":"a","flow":1,"probes":[{"pipe":{"bore":0}}]}',
      '/probes/0/pipe/bore',
      'must be above 0 mm, not 0 mm',
    ],
    [
      '{"name":"a","flow":1,"probes":[{"pipe":{"bohr":1,"bore":1}}]}',
      '/probes/0/pipe/bohr',
      'is not a field here; the nearest is "bore"',
    ],
    ['{"name":"a","flow":1,"probes":[{"pipe":{}}]}', '/probes/0/pipe/bore', 'is required'],
    [
      '{"name":"a","flow":1,"probes":[{"pipe":"x","count":1}]}',
      '/probes/0/count',
      'is not a field here; fields are pipe',
    ],
    [
      '{"name":"a","flow":1,"probes":[{"fitting":"x","count":0.5}]}',
      '/probes/0/count',
      'must be a whole number',
    ],
    ['{"name":"a","flow":1,"probes":[{"count":2}]}', '/probes/0/fitting', 'is required'],
    ['{"name":"a","flow":1,"probes":[5]}', '/probes/0', 'Invalid input'],
  ])('in %s leads to %s', async (text, pointer, detail) => {
    const body = await problemOf(await app.call('/v1/tanks', json(text)));
    expect(body.errors).toEqual([{ pointer, detail }]);
  });

  it.each([
    ['/v1/table?flow=x', 'flow'],
    ['/v1/table?limit=1e2', 'limit'],
    ['/v1/table?limit=', 'limit'],
    ['/v1/table?constructor=1', 'constructor'],
    ['/v1/table?__proto__=1', '__proto__'],
    ['/v1/table?pointer=best', 'pointer'],
    ['/v1/table?pointer=/best&format=csv', 'format'],
    ['/v1/table?format=xml', 'format'],
  ])('is a parameter for a query: %s', async (path, parameter) => {
    const body = await problemOf(await app.call(path));
    expect(body.errors).toMatchObject([{ parameter }]);
  });
});
