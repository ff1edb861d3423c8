/** The site over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { example, jsonOf, sent } from '../../requests.ts';

let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

const SITE = example('site.json');
const put = (body: unknown, { query = '', tag = '*' } = {}) =>
  app.call(`/v1/site${query}`, sent('PUT', body, { 'If-Match': tag }));

describe('the site', () => {
  it('is there from the first start', async () => {
    const response = await app.call('/v1/site');
    expect(response.headers.get('etag')).toBe('"1-metric"');
    expect(await jsonOf(response)).toMatchObject({
      name: 'Site',
      timeZone: 'UTC',
      currency: 'EUR',
      elevation: 0,
      price: null,
      tariff: null,
      labourRate: null,
      version: 1,
    });
  });

  it('is replaced', async () => {
    const response = await put(SITE, { tag: '"1-metric"' });
    expect(response.status).toBe(200);
    expect(await jsonOf(response)).toMatchObject({ ...SITE, tariff: null, version: 2 });
    expect((await put(SITE, { tag: '"1-metric"' })).status).toBe(412);
  });

  it('has its elevation in either units', async () => {
    await put({ ...SITE, elevation: 100 }, { query: '?units=us' });
    expect(await (await app.call('/v1/site?pointer=/elevation')).text()).toBe('30.48');
    expect(await (await app.call('/v1/site?pointer=/elevation&units=us')).text()).toBe('100');
  });

  it('tells that there is no price by its pointer', async () => {
    expect((await app.call('/v1/site?pointer=/price')).status).toBe(404);
  });

  it('is neither created nor deleted', async () => {
    expect((await app.call('/v1/site', sent('POST', SITE))).status).toBe(405);
    expect((await app.call('/v1/site', { method: 'DELETE' })).headers.get('allow')).toBe('GET, HEAD, PUT');
  });

  it.each(['Europe/Lisbon', 'America/St_Johns', 'Asia/Kathmandu', 'UTC'])(
    'may lie in %s',
    async (timeZone) => {
      expect((await put({ ...SITE, timeZone })).status).toBe(200);
    },
  );

  it.each<[Record<string, unknown>, string]>([
    [{ timeZone: 'Mars/Base' }, '/timeZone'],
    [{ timeZone: '+01:00' }, '/timeZone'],
    [{ timeZone: '' }, '/timeZone'],
    [{ currency: 'eur' }, '/currency'],
    [{ currency: 'EURO' }, '/currency'],
    [{ elevation: 6001 }, '/elevation'],
    [{ elevation: -501 }, '/elevation'],
    [{ elevation: '1 kPa' }, '/elevation'],
    [{ price: -0.1 }, '/price'],
    [{ price: '0.21' }, '/price'],
    [{ labourRate: 'x' }, '/labourRate'],
    [{ tariff: 'x' }, '/tariff'],
    [{ phone: 1 }, '/phone'],
  ])('refuses %j', async (change, pointer) => {
    const response = await put({ ...SITE, ...change });
    expect(response.status).toBe(422);
    expect(await jsonOf(response)).toMatchObject({ errors: [{ pointer }] });
  });
});
