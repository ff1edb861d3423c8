/** What every answer carries, and what the log says of it. */
import { beforeAll, describe, expect, it } from 'vitest';
import { type AppUnderTest, appUnderTest } from '../app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});

describe('the request id', () => {
  it.each(['abc', 'A-1_b.c', 'x'.repeat(64)])('%s of the caller is kept', async (id) => {
    const response = await app.call('/healthz', { headers: { 'X-Request-Id': id } });
    expect(response.headers.get('x-request-id')).toBe(id);
  });

  it.each(['', 'a b', 'x'.repeat(65), 'a"b', '<b>'])(
    '"%s" of the caller gives way to a new one',
    async (id) => {
      const response = await app.call('/healthz', { headers: { 'X-Request-Id': id } });
      expect(response.headers.get('x-request-id')).toMatch(/^[-0-9]{36}$/);
    },
  );
});

describe('every answer', () => {
  it.each(['/healthz', '/nothing'])('keeps a browser from doing more than showing it: %s', async (path) => {
    const { headers } = await app.call(path);
    expect(headers.get('content-security-policy')).toBe("default-src 'none'; frame-ancestors 'none'");
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('cache-control')).toBe('private, no-cache');
  });
});

describe('the access log', () => {
  it('has one line for a request, without its query', async () => {
    const before = app.logLines().length;
    await app.call('/nothing?key=secret', { headers: { 'X-Request-Id': 'traced' } });
    const lines = app.logLines().slice(before);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatchObject({
      level: 'info',
      msg: 'request',
      requestId: 'traced',
      method: 'GET',
      path: '/nothing',
      status: 404,
      milliseconds: 1,
    });
    expect(JSON.stringify(lines)).not.toContain('secret');
  });
});

describe('the probes', () => {
  it('answer while the service lives and its database answers', async () => {
    for (const path of ['/healthz', '/readyz']) {
      const response = await app.call(path);
      expect(response.status).toBe(200);
      expect(await response.json()).toEqual({ status: 'ok', version: '0.0.0-test' });
    }
  });

  it('tell a living service from one that can serve', async () => {
    const closed = await appUnderTest();
    await closed.api.deps.store.close();
    expect((await closed.call('/healthz')).status).toBe(200);
    expect((await closed.call('/readyz')).status).toBeGreaterThanOrEqual(500);
  });
});
