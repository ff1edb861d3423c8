/** Who is answered while no access keys exist. */
import { beforeAll, describe, expect, it } from 'vitest';
import { type AppUnderTest, appUnderTest } from '../app-under-test.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});

const status = async (headers: Record<string, string>) => (await app.call('/healthz', { headers })).status;

describe('a caller on this machine', () => {
  it.each(['localhost', 'localhost:8080', '127.0.0.1', '127.0.0.1:80', '[::1]', '[::1]:8080', 'LOCALHOST'])(
    'is answered by the name %s',
    async (host) => {
      expect(await status({ Host: host })).toBe(200);
    },
  );

  it.each(['http://localhost:3000', 'http://127.0.0.1', 'https://[::1]:8443'])(
    'is answered from the page %s',
    async (origin) => {
      expect(await status({ Origin: origin })).toBe(200);
    },
  );
});

describe('anyone else is 403', () => {
  it.each([
    'example.org',
    'localhost.example.org',
    'example.org:8080',
    '127.0.0.1.example.org',
    '127.0.0.2',
    '0.0.0.0',
    '[::]',
    'localhost:8080:1',
    'localhost@example.org',
  ])('by the name %s', async (host) => {
    expect(await status({ Host: host })).toBe(403);
  });

  it.each(['https://example.org', 'null', 'http://localhost.example.org', 'file://'])(
    'from the page %s',
    async (origin) => {
      expect(await status({ Origin: origin })).toBe(403);
    },
  );

  it.each(['Forwarded', 'X-Forwarded-For', 'X-Forwarded-Host', 'X-Forwarded-Anything', 'X-Real-IP', 'Via'])(
    'with the header %s',
    async (name) => {
      const response = await app.call('/healthz', { headers: { [name]: 'anything' } });
      expect(response.status).toBe(403);
      expect(await response.json()).toMatchObject({ errors: [{ header: name.toLowerCase() }] });
    },
  );

  it('by an address of another host', async () => {
    const response = await app.api.app.request('http://example.org/healthz', {
      headers: { Host: 'localhost' },
    });
    expect(response.status).toBe(403);
  });
});
