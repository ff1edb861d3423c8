/** The application behind a real listener of Node, as programs meet it. */
import { createServer } from 'node:http';
import { getRequestListener } from '@hono/node-server';
import request from 'supertest';
import { beforeAll, describe, expect, it } from 'vitest';
import { appUnderTest } from './app-under-test.ts';

describe('the service behind a listener', () => {
  let server: ReturnType<typeof createServer>;

  beforeAll(async () => {
    const { api } = await appUnderTest();
    server = createServer(getRequestListener(api.app.fetch));
  });

  it('answers a probe with JSON and an id of the request', async () => {
    const answer = await request(server)
      .get('/healthz')
      .expect(200)
      .expect('Content-Type', /application\/json/);
    expect(answer.body).toMatchObject({ state: 'ok' });
    expect(answer.headers['x-request-id']).toBeTruthy();
  });

  it('answers HEAD as GET, without a body', async () => {
    const answer = await request(server).head('/v1/site').expect(200);
    expect(answer.headers.etag).toBe('"1-metric"');
    expect(answer.text ?? '').toBe('');
  });

  it('keeps a pump over a round trip of its ETag', async () => {
    const pump = {
      name: 'Inline 60',
      headPoints: [
        { flow: 0, head: 3.1 },
        { flow: 2000, head: 2.4 },
        { flow: 4000, head: 0.9 },
      ],
      powerPoints: [{ setting: 100, power: 58 }],
    };
    const created = await request(server).post('/v1/pumps').send(pump).expect(201);
    const { location, etag } = created.headers;
    await request(server).get(String(location)).set('If-None-Match', String(etag)).expect(304);
    await request(server)
      .put(String(location))
      .set('If-Match', String(etag))
      .send({ ...created.body, name: 'Renamed' })
      .expect(200);
    await request(server).delete(String(location)).set('If-Match', String(etag)).expect(412);
    await request(server).delete(String(location)).set('If-Match', '*').expect(204);
  });

  it.each([
    ['a path that is not there', () => request(server).get('/v1/nowhere'), 404, 'not-found'],
    ['a method that does not apply', () => request(server).patch('/v1/site'), 405, 'method-not-allowed'],
    [
      'a host that is not this machine',
      () => request(server).get('/v1/site').set('Host', 'example.org'),
      403,
      'loopback-only',
    ],
    [
      'JSON that is none',
      () => request(server).post('/v1/pumps').type('json').send('{'),
      400,
      'malformed-json',
    ],
    [
      'a body of another type',
      () => request(server).post('/v1/pumps').type('text/plain').send('x'),
      415,
      'unsupported-media-type',
    ],
    ['an empty body', () => request(server).post('/v1/pumps').type('json'), 400, 'missing-body'],
  ])('answers %s with a problem', async (_, call, status, code) => {
    const answer = await call()
      .expect(status)
      .expect('Content-Type', /application\/problem\+json/);
    expect(answer.body).toMatchObject({ code, status, type: `urn:loopwright:problem:${code}` });
  });
});
