/** The parts of the reference page as they are served. */
import { beforeAll, describe, expect, it } from 'vitest';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { refused } from '../../stocked-app.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});

const linked = (html: string) =>
  [...html.matchAll(/(?:src|href)="([^"]+)"/g)].map(([, address = '']) => address);

describe('the reference page', () => {
  it('names nothing that is not of this service, and all that it names is there', async () => {
    const response = await app.call('/docs');
    expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
    for (const address of linked(await response.text())) {
      if (address === 'data:,') continue;
      expect(address).toMatch(/^\/(?!\/)/);
      const part = await app.call(address);
      expect(part.status, address).toBe(200);
      if (/\.(js|css)$/.test(address))
        expect(part.headers.get('content-type')).toMatch(/^text\/(javascript|css); charset=utf-8$/);
    }
  });

  it('lets a browser load and ask nothing but its own origin', async () => {
    const policy = (await app.call('/docs')).headers.get('content-security-policy') ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self';");
    expect(policy).toContain("connect-src 'self';");
    expect(policy).not.toMatch(/https?:|unsafe-eval|\*/);
  });

  it.each(['/docs', '/docs/bundle.js', '/docs/style.css'])(
    'is not sent again unchanged: %s',
    async (path) => {
      const etag = (await app.call(path)).headers.get('etag') ?? '';
      const again = await app.call(path, { headers: { 'If-None-Match': etag } });
      expect([again.status, await again.text()]).toEqual([304, '']);
      expect((await app.call(path, { headers: { 'If-None-Match': '"other"' } })).status).toBe(200);
    },
  );

  it('answers no other method', async () => {
    const response = await app.call('/docs', { method: 'POST' });
    expect(response.headers.get('allow')).toBe('GET, HEAD');
    expect((await refused(response)).status).toBe(405);
    expect((await app.call('/docs', { method: 'HEAD' })).status).toBe(200);
  });

  it('has no further parts', async () => {
    expect((await refused(await app.call('/docs/../package.json'))).status).toBe(404);
    expect((await refused(await app.call('/docs/package.json'))).status).toBe(404);
  });
});
