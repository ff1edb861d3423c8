/** Loops over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { created, example, type Json, jsonOf, sent } from '../../requests.ts';

let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

const FLUME = example('loop-kelp-flume.json');
const CURVE = example('loop-system-curve.json');
const PIPE = { pipe: { insideDiameter: 40 }, length: 1 };
const outlet = (name: string) => ({ run: [], outlet: { name } });
const pipework = (...branches: unknown[]) => ({ name: 'a', discharge: { run: [PIPE], branches } });

describe('a loop', () => {
  it.each([
    'loop-kelp-flume.json',
    'loop-nursery-raceways.json',
    'loop-system-curve.json',
    'loop-touch-pool.json',
  ])('is read back as it was entered: %s', async (name) => {
    const document = example(name);
    const id = await created(app, '/v1/loops', document);
    const response = await app.call(`/v1/loops/${id}`);
    expect(response.headers.get('etag')).toBe('"1-metric"');
    expect(await jsonOf(response)).toMatchObject(document);
  });

  it('is read back in US units as it was entered in them', async () => {
    const document = example('loop-touch-pool-us.json');
    const id = await created(app, '/v1/loops?units=us', document);
    expect(await jsonOf(await app.call(`/v1/loops/${id}?units=us`))).toMatchObject(document);
  });

  it('may have a unit in every field', async () => {
    const id = await created(app, '/v1/loops', example('loop-seahorse-bank-text.json'));
    expect(await jsonOf(await app.call(`/v1/loops/${id}`))).toMatchObject({
      pumpElevation: -0.2032,
      tank: { area: 1.8, depth: 0.5 },
      suction: [{ pipe: { insideDiameter: 44.45 } }, {}],
    });
  });

  it('has water of 25 degC and 35 g/kg, no lift and no suction where nothing is stated', async () => {
    const id = await created(app, '/v1/loops', pipework(outlet('only')));
    expect(await jsonOf(await app.call(`/v1/loops/${id}`))).toMatchObject({
      water: { temperature: 25, salinity: 35 },
      staticHead: 0,
      pumpElevation: 0,
      suction: [],
      frictionMultiplier: 1,
    });
  });

  it('takes a head in a unit of pressure as a column of its own water', async () => {
    const headOf = async (water: Json) => {
      const loss = { loss: { head: '10 kPa', flow: 1000 } };
      const id = await created(app, '/v1/loops', { ...pipework({ ...outlet('only'), run: [loss] }), water });
      return Number(
        await (await app.call(`/v1/loops/${id}?pointer=/discharge/branches/0/run/0/loss/head`)).text(),
      );
    };
    // Density of EOS-80 at one atmosphere: 1023.343 kg/m3 at 25 degC, 35 g/kg (check value of the standard, salinity as
    // practical salinity); 997.047 kg/m3 for pure water at 25 degC.
    expectClose(await headOf({ temperature: 25, salinity: 35 }), 1e4 / (1023.343 * 9.80665), {
      relative: 1e-5,
    });
    expectClose(await headOf({ temperature: 25, salinity: 0 }), 1e4 / (997.047 * 9.80665), {
      relative: 1e-5,
    });
  });

  describe.each(['metric', 'us'])('in %s units', (units) => {
    const stated = {
      ...pipework(
        {
          run: [
            PIPE,
            { lossCoefficient: 0.2, boreChange: true },
            { pipe: { insideDiameter: 30 }, length: 1 },
            { loss: { head: 0.1, flow: 1000 }, boreChange: false },
            { fitting: 'check-swing' },
          ],
          outlet: { name: 'high', staticHead: 0.5, exit: 'submerged' },
          highestElevation: 1.25,
        },
        { run: [], outlet: { name: 'low', staticHead: 0.25 } },
      ),
      boreChanges: 'ignored',
    };

    it('keeps exits, highest points and what steps of bore cost as they were entered', async () => {
      const discharge = { ...stated.discharge, highestElevation: -0.5 };
      const id = await created(app, `/v1/loops?units=${units}`, { ...stated, discharge });
      const answer = await jsonOf(await app.call(`/v1/loops/${id}?units=${units}`));
      expect(answer).toMatchObject({ ...stated, discharge });
    });

    it('fills in none of them that was left out', async () => {
      const id = await created(app, `/v1/loops?units=${units}`, pipework(outlet('only')));
      const answer = await (await app.call(`/v1/loops/${id}?units=${units}`)).text();
      for (const name of ['exit', 'highestElevation', 'boreChange']) expect(answer).not.toContain(name);
    });
  });

  it('keeps its order of branches and its splits', async () => {
    const id = await created(app, '/v1/loops', FLUME);
    const names = await Promise.all(
      [
        '/discharge/branches/0/outlet/name',
        '/discharge/branches/1/branches/1/outlet/name',
        '/discharge/split',
      ].map(async (pointer) => (await app.call(`/v1/loops/${id}?pointer=${pointer}`)).text()),
    );
    expect(names).toEqual(['far end', 'right', 'tee-90']);
  });

  it('is replaced and deleted by its version', async () => {
    const id = await created(app, '/v1/loops', FLUME);
    const put = await app.call(`/v1/loops/${id}`, sent('PUT', CURVE, { 'If-Match': '"1-metric"' }));
    expect(put.status).toBe(200);
    expect(await jsonOf(put)).toMatchObject({ version: 2, systemCurve: { staticHead: 1.8 } });
    const remove = (tag: string) =>
      app.call(`/v1/loops/${id}`, { method: 'DELETE', headers: { 'If-Match': tag } });
    expect((await remove('"1-metric"')).status).toBe(412);
    expect((await remove('"2-us"')).status).toBe(204);
    expect((await app.call(`/v1/loops/${id}`)).status).toBe(404);
  });

  it('names an installed pump that is there', async () => {
    const response = await app.call(
      '/v1/loops',
      sent('POST', { ...FLUME, installed: { pump: 'nobody', count: 1, setting: 80 } }),
    );
    expect(response.status).toBe(422);
    expect(await jsonOf(response)).toMatchObject({ errors: [{ pointer: '/installed/pump' }] });
    const pump = await created(app, '/v1/pumps', example('pump-canister-250.json'));
    const installed = { pump, count: 2, setting: 80, checkValves: true, since: '2025-04-01' };
    const id = await created(app, '/v1/loops', { ...FLUME, installed });
    expect(await jsonOf(await app.call(`/v1/loops/${id}`))).toMatchObject({ installed });
  });

  it('is listed beside others of either kind', async () => {
    await created(app, '/v1/loops', FLUME);
    await created(app, '/v1/loops', CURVE);
    const body = await jsonOf(await app.call('/v1/loops'));
    expect(body).toMatchObject({ items: [{ name: 'Kelp flume' }, { name: 'Nursery raceways' }], next: null });
    expect(await (await app.call('/v1/loops?format=csv')).text()).toMatch(
      /^id,key,name,version,createdAt,updatedAt,pumpElevation \[m\]\r\n.*,-0\.6\r\n.*,-0\.3\r\n$/s,
    );
  });
});

describe('a loop that does not make sense is refused', () => {
  it.each<[string, unknown, string, string]>([
    ['no kind', { name: 'a' }, '', 'must have one of systemCurve, discharge'],
    ['both kinds', { ...CURVE, discharge: FLUME.discharge }, '/discharge', 'is not a field here'],
    ['a lift beside a system curve', { ...CURVE, staticHead: 1 }, '/staticHead', 'is not a field here'],
    [
      'steps of bore beside a system curve',
      { ...CURVE, boreChanges: 'ignored' },
      '/boreChanges',
      'is not a field here',
    ],
    [
      'steps of bore that cost something else',
      { ...pipework(outlet('x')), boreChanges: 'gradual' },
      '/boreChanges',
      'must be one of "abrupt", "ignored"',
    ],
    [
      'another exit',
      pipework({ run: [], outlet: { name: 'x', exit: 'open' } }),
      '/discharge/branches/0/outlet/exit',
      'must be one of "submerged", "free"',
    ],
    [
      'a pipe that is the loss of a step',
      pipework({ ...outlet('x'), run: [{ ...PIPE, boreChange: true }] }),
      '/discharge/branches/0/run/0/boreChange',
      'is not a field here',
    ],
    [
      'a highest point beyond all mountains',
      pipework({ ...outlet('x'), highestElevation: 1001 }),
      '/discharge/branches/0/highestElevation',
      'must be at most 1000',
    ],
    ['no end', { name: 'a', discharge: { run: [] } }, '/discharge', 'must have outlet or branches'],
    [
      'two ends',
      pipework({ ...outlet('x'), branches: [outlet('y')] }),
      '/discharge/branches/0/outlet',
      'must not stand beside branches',
    ],
    [
      'a split of nothing',
      pipework({ ...outlet('x'), split: 'tee-90' }),
      '/discharge/branches/0/split',
      'needs branches',
    ],
    ['no branch', pipework(), '/discharge/branches', 'must have at least 1 item'],
    [
      'another split',
      { ...FLUME, discharge: { ...pipework(outlet('x')).discharge, split: 'wye' } },
      '/discharge/split',
      'must be one of "tee-90"',
    ],
    [
      'a name twice',
      pipework(outlet('x'), { run: [], branches: [outlet('y'), outlet('x')] }),
      '/discharge/branches/1/branches/1/outlet/name',
      'is "x", the name of another outlet of this loop',
    ],
    [
      'no element',
      pipework({ ...outlet('x'), run: [{}] }),
      '/discharge/branches/0/run/0',
      'must have one of pipe, fitting, valve, lossCoefficient, equivalentLength, loss',
    ],
    [
      'no object',
      pipework({ ...outlet('x'), run: ['pipe'] }),
      '/discharge/branches/0/run/0',
      'must have one of pipe, fitting, valve, lossCoefficient, equivalentLength, loss',
    ],
    [
      'a field of another element',
      pipework({ ...outlet('x'), run: [{ pipe: 'sch40 1', length: 1, count: 2 }] }),
      '/discharge/branches/0/run/0/count',
      'is not a field here',
    ],
    [
      'no bore',
      pipework({ ...outlet('x'), run: [{ pipe: {}, length: 1 }] }),
      '/discharge/branches/0/run/0/pipe/insideDiameter',
      'is required',
    ],
    [
      'a valve with both',
      pipework({ ...outlet('x'), run: [{ valve: { kv: 1, cv: 1 } }] }),
      '/discharge/branches/0/run/0/valve/cv',
      'is not a field here',
    ],
    [
      'an opening',
      pipework({ ...outlet('x'), run: [{ valve: 'ball', opening: 101 }] }),
      '/discharge/branches/0/run/0/opening',
      'must be at most 100 %, not 101 %',
    ],
    [
      'an unknown fitting',
      pipework({ ...outlet('x'), run: [{ fitting: 'knot' }] }),
      '/discharge/branches/0/run/0/fitting',
      '"knot" is no fitting of the table',
    ],
    [
      'an unknown pipe',
      { ...FLUME, suction: [{ pipe: 'sch99 2', length: 1 }] },
      '/suction/0/pipe',
      '"sch99 2" is no pipe of the table',
    ],
    [
      'a loss without a bore',
      { name: 'a', discharge: { run: [{ lossCoefficient: 1 }], outlet: { name: 'x', nozzleDiameter: 10 } } },
      '/discharge/run/0',
      'has no diameter',
    ],
    [
      'a maximum',
      pipework({ run: [], outlet: { name: 'x', requiredFlow: 5, maximumFlow: 4 } }),
      '/discharge/branches/0/outlet/maximumFlow',
      'must not be below requiredFlow',
    ],
    [
      'a screen of no shape',
      { ...FLUME, intake: { screen: { shape: 'sphere' } } },
      '/intake/screen/shape',
      '',
    ],
    [
      'an open fraction',
      { ...FLUME, intake: { screen: { shape: 'flat', width: 1, length: 1, openFraction: 1.5 } } },
      '/intake/screen/openFraction',
      'must be at most 1',
    ],
    [
      'hot water',
      { ...FLUME, water: { temperature: 46 } },
      '/water/temperature',
      'must be at most 45 degC, not 46 degC',
    ],
    [
      'shares',
      {
        ...CURVE,
        outlets: [
          { name: 'x', share: 0.5 },
          { name: 'y', share: 0.4 },
        ],
      },
      '/outlets',
      'have shares of 0.9 in all; they must add up to 1',
    ],
    [
      'a share twice',
      {
        ...CURVE,
        outlets: [
          { name: 'x', share: 0.5 },
          { name: 'x', share: 0.5 },
        ],
      },
      '/outlets/1/name',
      'is "x", the name of another outlet of this loop',
    ],
    [
      'a curve at rest',
      { ...CURVE, systemCurve: { points: [{ flow: 0, head: 1 }] } },
      '/systemCurve/points',
      'must have a point at a flow above 0',
    ],
    [
      'a day',
      { ...FLUME, installed: { pump: 'x', setting: 80, since: '2025-02-30' } },
      '/installed/since',
      '',
    ],
  ])('for %s', async (_, body, pointer, detail) => {
    const response = await app.call('/v1/loops', sent('POST', body));
    expect(response.status).toBe(422);
    const { errors } = await jsonOf(response);
    expect(errors).toMatchObject([{ pointer }]);
    expect(JSON.stringify(errors)).toContain(JSON.stringify(detail).slice(1, -1));
  });

  const nested = (levels: number): Json =>
    levels === 0 ? outlet('deep') : { run: [], branches: [nested(levels - 1)] };
  const many = (count: number) => Array.from({ length: count }, (_, i) => outlet(`o${i}`));

  it.each<[string, unknown, string, number, number]>([
    [
      'elements',
      pipework({ ...outlet('x'), run: Array(201).fill(PIPE) }),
      '/discharge/branches/0/run',
      200,
      201,
    ],
    ['branches of one node', pipework(...many(2001)), '/discharge/branches', 2000, 2001],
    [
      'branches in all',
      pipework(...many(1000), {
        run: [],
        branches: many(1000).map((b) => ({ ...b, outlet: { name: `${b.outlet.name}b` } })),
      }),
      '/discharge',
      2000,
      2001,
    ],
    ['levels', { name: 'a', discharge: nested(33) }, '/discharge', 32, 33],
    [
      'points',
      { ...CURVE, systemCurve: { points: Array(501).fill({ flow: 1, head: 1 }) } },
      '/systemCurve/points',
      500,
      501,
    ],
  ])('for more %s than the limit', async (_, body, pointer, limit, actual) => {
    const response = await app.call('/v1/loops', sent('POST', body));
    expect(response.status).toBe(422);
    expect(await jsonOf(response)).toMatchObject({
      code: 'limit-exceeded',
      limit,
      actual,
      errors: [{ pointer, limit, actual }],
    });
  });

  it('at the limits it is accepted', async () => {
    expect(
      (await app.call('/v1/loops', sent('POST', { name: 'a', discharge: { ...nested(32), run: [PIPE] } })))
        .status,
    ).toBe(201);
    expect((await app.call('/v1/loops', sent('POST', pipework(...many(2000))))).status).toBe(201);
  });

  it('by the first ten faulty items of a list', async () => {
    const faulty = { ...outlet('x'), run: Array(200).fill({}) };
    const { errors } = await jsonOf(await app.call('/v1/loops', sent('POST', pipework(faulty))));
    expect(errors).toHaveLength(10);
  });
});
