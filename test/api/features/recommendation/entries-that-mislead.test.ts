/** Entries that read well elsewhere: the refusal says what stands in the way, and how to write it. */
import { beforeEach, describe, expect, it } from 'vitest';
import { changed } from '../../changed.ts';
import { example, sent } from '../../requests.ts';
import { refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

describe('a quantity in a body', () => {
  it.each<[string, unknown, RegExp]>([
    ['/headPoints/1/flow', '1e3 L/h', /written out, without an exponent; not "1e3 L\/h"/],
    ['/headPoints/1/head', '4,5 m', /a point as its decimal mark/],
    ['/headPoints/1/head', 8.9e-16, /too close to 0: it must be 0, or at least 1e-12 m in size/],
    ['/headPoints/1/flow', '1 1/2 L/h', /hyphen .* as in "1-1\/2 in"/],
    ['/name', '   ', /must not be blank/],
    ['/name', '\t\u00a0', /must not be blank/],
  ])('at %s, %j', async (pointer, value, words) => {
    const body = changed(example('pump-canister-250.json'), pointer, value);
    const { status, errors } = await refused(await app.call('/v1/pumps', sent('POST', body)));
    expect([status, errors?.length, errors?.[0]?.pointer]).toEqual([422, 1, pointer]);
    expect(errors?.[0]?.detail).toMatch(words);
  });

  it('names an outlet of blanks too', async () => {
    const text = JSON.stringify(example('loop-kelp-flume.json')).replace('"far end"', '"  "');
    const { errors } = await refused(await app.call('/v1/loops', sent('POST', JSON.parse(text))));
    expect(errors?.[0]).toEqual({
      pointer: '/discharge/branches/0/outlet/name',
      detail: 'must not be blank',
    });
  });
});

describe('a parameter', () => {
  it.each([
    ['system-curve?flow=1e-9', 'flow', /without an exponent/],
    ['system-curve?flow=1,5', 'flow', /point as its decimal mark/],
    ['duty-point?price=1e-9', 'price', /written out without an exponent/],
    ['duty-point?count=1.5', 'count', /whole number of at most 9 digits/],
  ])('%s', async (query, parameter, words) => {
    const path = `${app.loop}/${query}${query.includes('duty') ? `&pump=${app.pumpId}` : ''}`;
    const { status, errors } = await refused(await app.call(path));
    expect([status, errors?.map((error) => error.parameter)]).toEqual([422, [parameter]]);
    expect(errors?.[0]?.detail).toMatch(words);
  });
});
