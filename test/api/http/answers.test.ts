/** The forms in which an answer comes: JSON in either units, CSV, one plain value, not modified. */
import { beforeAll, describe, expect, it } from 'vitest';
import { type AppUnderTest, appUnderTest } from '../app-under-test.ts';
import { problemAnswer } from '../read-answers.ts';
import { demonstrationRoutes } from './demonstration-routes.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest({ mount: demonstrationRoutes });
});

const get = (path: string, headers: Record<string, string> = {}) => app.call(path, { headers });

describe('an answer in JSON', () => {
  it('comes in the units in force and says which they are', async () => {
    expect(await (await get('/v1/tanks/1')).json()).toEqual({
      name: 'display',
      flow: 1000,
      units: { diameter: 'mm', flow: 'L/h' },
    });
    expect(await (await get('/v1/tanks/1?units=us')).json()).toMatchObject({
      flow: 264.172052358,
      units: { diameter: 'in', flow: 'gal/h' },
    });
  });

  it('rounds computed figures to six significant digits', async () => {
    expect(await (await get('/v1/table')).json()).toMatchObject({
      ratio: 0.333333,
      rows: [{ flow: 333.333 }, {}],
    });
  });

  it('is answered to HEAD with its headers alone', async () => {
    const response = await app.call('/v1/tanks/1', { method: 'HEAD' });
    expect(response.status).toBe(200);
    expect(response.headers.get('etag')).toBe('"3-metric"');
    expect(await response.text()).toBe('');
  });

  it('of a creation has Location and ETag', async () => {
    const response = await app.call('/v1/tanks?units=us', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: '{"name":"a","flow":"1 L/s"}',
    });
    expect(response.status).toBe(201);
    expect(response.headers.get('location')).toBe('/v1/tanks/1');
    expect(response.headers.get('etag')).toBe('"1-us"');
    expect(await response.json()).toMatchObject({ flow: 951.019388489 });
  });
});

describe('one value by its pointer', () => {
  it.each([
    ['/v1/tanks/1?pointer=/flow', '1000'],
    ['/v1/tanks/1?pointer=/name', 'display'],
    ['/v1/tanks/1?pointer=/units/flow', 'L/h'],
    ['/v1/tanks/1?pointer=/flow&units=us', '264.172052358'],
    ['/v1/table?pointer=/rows/0/flow', '333.333'],
    ['/v1/table?pointer=/rows/1/flow', '0'],
    ['/v1/table?pointer=%2Fratio', '0.333333'],
  ])('%s is %s', async (path, text) => {
    const response = await get(path, { Accept: 'text/html' });
    expect(response.headers.get('content-type')).toBe('text/plain; charset=utf-8');
    expect(await response.text()).toBe(text);
  });

  it.each(['/v1/table?pointer=/rows', '/v1/table?pointer=/rows/0', '/v1/table?pointer='])(
    '%s is a list or an object, and refused',
    async (path) => {
      const response = await get(path);
      expect(response.status).toBe(422);
      expect(await response.json()).toMatchObject({ errors: [{ parameter: 'pointer' }] });
    },
  );

  it.each([
    ['/best', '/best is null'],
    ['/best/setting', '/best/setting has no value: /best is null'],
    ['/rows/2', 'there is no item 2 in /rows, a list of 2'],
    ['/rows/-', 'there is no item - in /rows, a list of 2'],
    ['/rows/00', 'there is no item 00 in /rows, a list of 2'],
    ['/rows/length', 'there is no item length in /rows, a list of 2'],
    ['/rows/0/flo', 'there is no flo in /rows/0, which has name, flow'],
    ['/ratio/2', 'there is no 2 in /ratio, a single value'],
    ['/toString', /^there is no toString in the answer, which has summary, best, ratio, rows/],
  ])('at %s is not there: the summary says why, and the error which of both it is', async (pointer, why) => {
    const response = await get(`/v1/table?pointer=${pointer}`);
    expect(response.status).toBe(404);
    const expected = { code: 'no-value', detail: 'No pump serves it.', errors: [{ parameter: 'pointer' }] };
    const { errors, ...problem } = problemAnswer.parse(await response.json());
    expect({ ...problem, errors }).toMatchObject(expected);
    expect(errors?.[0]?.detail).toMatch(why);
  });
});

describe('a table in CSV', () => {
  const CSV = 'name,flow [L/h]\r\n\'=SUM(A1),333.333\r\n"a ""b"", c",0\r\n';

  it.each([
    ['/v1/table?format=csv', {}],
    ['/v1/table?format=csv', { Accept: 'application/json' }],
    ['/v1/table', { Accept: 'text/csv' }],
    ['/v1/table', { Accept: 'text/*;q=0.9, application/json;q=0.5' }],
  ])('comes for %s %j', async (path, headers) => {
    const response = await get(path, headers);
    expect(response.headers.get('content-type')).toMatch(/^text\/csv; charset=utf-8/);
    expect(response.headers.get('vary')).toBe('Accept');
    expect(await response.text()).toBe(CSV);
  });

  it.each([
    ['/v1/table?format=json', { Accept: 'text/csv' }],
    ['/v1/table', { Accept: '*/*' }],
    ['/v1/table', { Accept: 'text/csv;q=0, */*' }],
    ['/v1/table', {}],
  ])('gives way to JSON for %s %j', async (path, headers) => {
    expect((await get(path, headers)).headers.get('content-type')).toBe('application/json');
  });

  it('names the units in force', async () => {
    expect(await (await get('/v1/table?format=csv&units=us')).text()).toContain('flow [gal/h]');
  });
});

describe('the entity tag', () => {
  it('of a stored version names version and units, and answers 304', async () => {
    for (const tag of ['"3-metric"', 'W/"3-metric"', '"1-us", "3-metric"', '*']) {
      const response = await get('/v1/tanks/1', { 'If-None-Match': tag });
      expect(response.status).toBe(304);
      expect(response.headers.get('etag')).toBe('"3-metric"');
      expect(await response.text()).toBe('');
    }
    expect((await get('/v1/tanks/1', { 'If-None-Match': '"3-us"' })).status).toBe(200);
  });

  it('of a derived answer depends on query, units and form', async () => {
    const tags = await Promise.all(
      ['/v1/table', '/v1/table?units=us', '/v1/table?limit=1', '/v1/table?format=csv'].map(
        async (path) => (await get(path)).headers.get('etag') ?? '',
      ),
    );
    expect(new Set(tags).size).toBe(4);
    const [first = ''] = tags;
    expect((await get('/v1/table', { 'If-None-Match': first })).status).toBe(304);
    expect((await get('/v1/table', { 'If-None-Match': first, Accept: 'text/csv' })).status).toBe(200);
  });

  it.each([
    ['"3-metric"', 200],
    ['"3-us"', 200],
    ['*', 200],
    ['"3-us", "3-metric"', 200],
    ['"2-metric"', 412],
    ['W/"3-metric"', 412],
    ['3', 412],
    ['"3"', 412],
    ['"3-metric", "2-metric"', 412],
  ])('in If-Match %s is %i', async (tag, status) => {
    const response = await app.call('/v1/tanks/1', {
      method: 'PUT',
      headers: { 'Content-Type': 'application/json', 'If-Match': tag },
      body: '{"name":"a","flow":1}',
    });
    expect(response.status).toBe(status);
  });

  it('is not needed to ask whether a deletion needs one: 428, and 204 with it', async () => {
    expect((await app.call('/v1/tanks/1', { method: 'DELETE' })).status).toBe(428);
    const response = await app.call('/v1/tanks/1', { method: 'DELETE', headers: { 'If-Match': '*' } });
    expect(response.status).toBe(204);
    expect(await response.text()).toBe('');
  });
});

describe('rows sent as CSV', () => {
  const put = (body: string, query = '') =>
    app.call(`/v1/tanks/1/rows${query}`, { method: 'PUT', headers: { 'Content-Type': 'text/csv' }, body });

  it.each([
    ['flow\r\n3600\r\n7200\r\n', '', [3600, 7200]],
    ['flow\n3600', '', [3600]],
    ['\uFEFFflow [gal/h]\n1000\n', '', [3785.41]],
    ['flow[L/s]\n1\n', '', [3600]],
    ['"flow [L/s]"\n"1"\n\n2\n', '', [3600, 7200]],
    ['flow\n1 L/s\n', '', [3600]],
    ['flow\n1\n', '?units=us', [1]],
  ])('%j %s are read', async (text, query, flows) => {
    const response = await put(text, query);
    expect(response.status).toBe(200);
    expect(await response.json()).toMatchObject({ rows: flows.map((flow) => ({ flow })) });
  });

  it.each([
    ['flow\n1\nx\n', '/1/flow', 3],
    ['flow\n1\n\n-5\n', '/1/flow', 4],
    ['flow,head\n,1\n', '/0/flow', 2],
    ['flow,head\n1,1\n', '/0/head', 2],
    ['flow [m]\n1\n', '', 1],
    ['flux\n1\n', '', 1],
    ['flow,flow\n1,1\n', '', 1],
    ['head\n1\n', '', 1],
  ])('%j fail at %s, line %i', async (text, pointer, line) => {
    const response = await put(text);
    expect(response.status).toBe(422);
    const body: { errors: unknown[] } = JSON.parse(await response.text());
    expect(body.errors[0]).toMatchObject({ pointer, line });
  });

  it.each(['flow\n1,2\n', 'flow,head\n1\n', 'flow\n"1\n', 'flow\n1"2"\n'])(
    '%j are no CSV: 400',
    async (text) => {
      const response = await put(text);
      expect(response.status).toBe(400);
      expect(await response.json()).toMatchObject({ code: 'malformed-csv' });
    },
  );

  it('are limited', async () => {
    const response = await put(`flow\n${'1\n'.repeat(5)}`);
    expect(await response.json()).toMatchObject({ code: 'limit-exceeded', limit: 3 });
  });
});
