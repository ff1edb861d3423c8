/** Nothing that a client sends makes an error of the service's own, and what is accepted is as documented. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { changed, pointersOf } from './changed.ts';
import { type CheckAnswer, documentValidator } from './document-validator.ts';
import { example } from './requests.ts';
import { type StockedApp, stockedApp } from './stocked-app.ts';

const SEED = { seed: 1 } as const;

let app: StockedApp;
let check: CheckAnswer;
beforeAll(async () => {
  app = await stockedApp();
  check = await documentValidator(app);
});

/** Values that are wrong nearly everywhere, and numbers at the ends of what numbers can be. */
const odd = fc.oneof(
  fc.constantFrom<unknown>(undefined, null, true, '', 'NaN', '1e3', '0x10', '-1 L/h', '1/0 m', '\u0000'),
  fc.constantFrom<unknown>([], {}, [[]], { pipe: 'sch80 2' }, ['a'], '__proto__', { __proto__: null }),
  fc.constantFrom(0, -0, -1, 1e-13, 1e-9, 1e-3, 0.5, 1, 1e3, 1e6, 1e9, 1e15, 1e300, -1e300, 5e-324),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.integer({ min: -10, max: 200 }),
  fc.string({ maxLength: 12 }),
  fc
    .tuple(fc.integer({ min: 0, max: 5000 }), fc.constantFrom('L/h', 'm', 'mm', 'ft', 'kPa', 'degF', 'W'))
    .map(([value, unit]) => `${value} ${unit}`),
  fc.jsonValue({ maxDepth: 3 }),
);

/** A document with up to three of its members changed, one after another. */
function mutated(document: unknown): fc.Arbitrary<unknown> {
  const change = fc.tuple(fc.nat(), odd);
  return fc.array(change, { minLength: 1, maxLength: 3 }).map((changes) =>
    changes.reduce<unknown>((value, [place, oddValue]) => {
      const pointers = pointersOf(value);
      return changed(value ?? null, pointers[place % pointers.length] ?? '', oddValue) ?? null;
    }, document),
  );
}

async function judge(operation: { path: string; method: string }, response: Response): Promise<void> {
  const text = await response.text();
  const { status } = response;
  expect(status, text).toBeLessThan(500);
  expect(response.headers.get('content-type')).toBe(
    status >= 400 ? 'application/problem+json' : 'application/json',
  );
  expect(check({ ...operation, status }, JSON.parse(text)), text.slice(0, 500)).toBe('');
}

const post = (path: string, body: unknown) =>
  app.call(path, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(body),
  });

describe('a body with members changed at random', () => {
  const loops = ['kelp-flume', 'nursery-raceways', 'touch-pool', 'seahorse-bank-text', 'system-curve'];
  const pumps = ['inline-60', 'canister-120', 'canister-250', 'canister-600'];
  const bodies = (prefix: string, names: readonly string[]) =>
    names.map((name) => example(`${prefix}-${name}.json`));

  it.each<[string, number, readonly unknown[]]>([
    ['/v1/pumps', 400, bodies('pump', pumps)],
    ['/v1/loops', 400, bodies('loop', loops)],
    [
      '/v1/recommendations',
      400,
      bodies('recommendation', ['kelp-flume', 'seahorse-bank', 'touch-pool-trimmed']),
    ],
    [
      '/v1/recommendations',
      150,
      bodies('loop', loops).map((loop) => ({ loop, pumps: bodies('pump', pumps.slice(2)), limits: {} })),
    ],
  ])('POST %s', async (path, numRuns, documents) => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...documents).chain(mutated), async (body) => {
        await judge({ path, method: 'post' }, await post(path, body));
      }),
      { ...SEED, numRuns },
    );
  });

  it('leaves loops that every question about them answers', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...bodies('loop', loops)).chain(mutated), async (body) => {
        const response = await post('/v1/loops', body);
        if (response.status !== 201) return;
        const location = response.headers.get('location') ?? '';
        for (const name of ['', '/system-curve', `/duty-point?pump=${app.pumpId}`, '/recommendation']) {
          const [path] = name.split('?');
          await judge(
            { path: `/v1/loops/{loopId}${path}`, method: 'get' },
            await app.call(`${location}${name}`),
          );
        }
      }),
      { ...SEED, numRuns: 200 },
    );
  });
});

describe('a query of random parameters', () => {
  const names = ['pump', 'setting', 'count', 'price', 'hoursPerDay', 'flow', 'points', 'balancing', 'units'];
  const further = ['objective', 'rankingLimit', 'temperature', 'salinity', 'limit', 'cursor', 'name', 'x'];
  const value = fc.oneof(
    fc.constantFrom('', 'NaN', '1e3', '0x10', '-1', '0', '1', '70', '70.5', '99999999999999999999', 'us'),
    fc.constantFrom(
      'trimmed',
      'as-built',
      '00000000-0000-7000-8000-000000000003',
      'canister-250,canister-250',
      ',',
      '%',
      '25 degC',
      '5 m',
    ),
    fc.string({ maxLength: 8 }),
    fc.double({ noNaN: true }).map(String),
  );
  const parameters = fc.dictionary(fc.constantFrom(...names, ...further), value, { maxKeys: 3 });

  it.each([
    '/v1/loops/{loopId}/system-curve',
    '/v1/loops/{loopId}/duty-point',
    '/v1/loops/{loopId}/recommendation',
    '/v1/pumps/{pumpId}/curves',
    '/v1/reference/water',
    '/v1/pumps',
    '/v1/loops',
  ])('GET %s', async (path) => {
    const address = path.replace('{loopId}', app.loopId).replace('{pumpId}', app.pumpId);
    await fc.assert(
      fc.asyncProperty(parameters, async (query) => {
        const response = await app.call(`${address}?${new URLSearchParams(query)}`);
        await judge({ path, method: 'get' }, response);
      }),
      { ...SEED, numRuns: 150 },
    );
  });
});
