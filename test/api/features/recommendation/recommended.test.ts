/** The main job over HTTP: the worked example by every way of asking. */
import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { recommendationAnswer } from '../../read-answers.ts';
import { created, example, jsonOf, sent } from '../../requests.ts';
import { answered, recommend, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

/** The tolerance of the published figures. */
const PUBLISHED = { relative: 1e-3 };
const SIX_DIGITS = { relative: 1e-5 };
/** Exact by definition (NIST SP 811). */
const LITRES_PER_GALLON = 3.785411784;
const METRES_PER_FOOT = 0.3048;

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const byQuery = async (query = '') =>
  answered(recommendationAnswer, await app.call(`${app.loop}/recommendation${query}`));
const inline = () => ({
  loop: example('loop-kelp-flume.json'),
  pumps: [example('pump-canister-250.json')],
  price: 0.21,
});

describe('the kelp flume', () => {
  it.each<[string, () => Promise<Response>]>([
    ['by ids', () => recommend(app, { loop: app.loopId, pumps: [app.pumpId], price: 0.21 })],
    ['with all stored pumps', () => recommend(app, { loop: app.loopId, price: 0.21 })],
    ['with the price of the site', () => recommend(app, { loop: app.loopId })],
    ['inline', () => recommend(app, inline())],
    ['with a counted pump', () => recommend(app, { ...inline(), pumps: [{ pump: app.pumpId, count: 1 }] })],
    ['by query', () => app.call(`${app.loop}/recommendation?price=0.21&pump=${app.pumpId}`)],
  ])('has the figures of a solution made apart from this code: %s', async (_, ask) => {
    const { best, ranking, counts } = await answered(recommendationAnswer, await ask());
    if (best === null) throw new Error('there is no best');
    expect(best).toMatchObject({ setting: 70, speed: 70, count: 1, limitingOutlet: 'far end' });
    expect(best.pump.name).toBe('Canister 250');
    expectClose(best.flow, 7533.14, PUBLISHED);
    expectClose(best.head, 1.5714, PUBLISHED);
    expectClose(best.power, 85.7042, PUBLISHED);
    expectClose(best.efficiency, 0.385034, PUBLISHED);
    expectClose(best.turnover ?? 0, 3.13881, PUBLISHED);
    expectClose(best.annualEnergy, 750.769, PUBLISHED);
    expectClose(best.annualCost ?? 0, 157.661, PUBLISHED);
    const expected = { 'far end': 3028.46, left: 2252.34, right: 2252.34 };
    expect(best.outlets.map(({ name }) => name)).toEqual(Object.keys(expected));
    Object.values(expected).forEach((flow, i) => {
      expectClose(best.outlets[i]?.flow ?? 0, flow, PUBLISHED);
    });
    expect(ranking).toEqual([best]);
    expect(counts).toEqual({ candidates: 1, feasible: 1, rejected: 0 });
  });

  it('has margins of flow over requirement, velocities of flow over nozzle', async () => {
    for (const { flow, requiredFlow, margin, velocity, name } of (await byQuery()).best?.outlets ?? []) {
      expectClose(margin ?? 0, flow / (requiredFlow ?? 0) - 1, { absolute: 2e-5 });
      const diameter = name === 'far end' ? 0.015 : 0.014;
      expectClose(velocity ?? 0, flow / 3.6e6 / ((Math.PI / 4) * diameter ** 2), SIX_DIGITS);
    }
  });

  it('is the same in US units', async () => {
    const [metric, us] = [await byQuery(), await byQuery('?units=us')];
    expect(us.best?.setting).toBe(70);
    expect(us.units).toMatchObject({ flow: 'gal/h', head: 'ft', velocity: 'ft/s', power: 'W' });
    expectClose((us.best?.flow ?? 0) * LITRES_PER_GALLON, metric.best?.flow ?? 0, SIX_DIGITS);
    expectClose((us.best?.head ?? 0) * METRES_PER_FOOT, metric.best?.head ?? 0, SIX_DIGITS);
    expectClose(us.best?.annualCost ?? 0, metric.best?.annualCost ?? 1, SIX_DIGITS);
    us.best?.outlets.forEach(({ flow, velocity }, i) => {
      const outlet = metric.best?.outlets[i];
      expectClose(flow * LITRES_PER_GALLON, outlet?.flow ?? 0, SIX_DIGITS);
      expectClose((velocity ?? 0) * METRES_PER_FOOT, outlet?.velocity ?? 0, SIX_DIGITS);
    });
  });

  it('may be entered in US units', async () => {
    const pump = await answered(recommendationAnswer, await recommend(app, inline()));
    const body = { loop: example('loop-touch-pool.json'), pumps: [example('pump-canister-120.json')] };
    const us = { loop: example('loop-touch-pool-us.json'), pumps: [example('pump-canister-120-us.json')] };
    const [a, b] = [await recommend(app, body), await recommend(app, us, '?units=us')];
    const [metric, other] = [
      await answered(recommendationAnswer, a),
      await answered(recommendationAnswer, b),
    ];
    expect(other.best?.setting).toBe(metric.best?.setting);
    expect(pump.basis).toMatchObject({ loop: { id: null, version: null }, pumps: [{ id: null }] });
  });

  it('has a screen that passes on its mean and is cautioned on its peak', async () => {
    const { best, cautions } = await byQuery();
    const codes = best?.cautions.map(({ code }) => code) ?? [];
    expect(codes).toEqual(expect.arrayContaining(['screen-uneven', 'screen-yardstick']));
    expect(codes).not.toContain('screen-velocity');
    expect(cautions.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['electricity-near-water', 'entrapment-people', 'estimate']),
    );
  });
});

describe('the summary', () => {
  it('names pump, setting, watts, kWh, cost, the limiting outlet with its flow and requirement', async () => {
    const { summary } = await byQuery();
    const facts = ['Canister 250', 'Kelp flume', '70 %', '85.7 W', '751 kWh', 'EUR 157.66'];
    for (const fact of [...facts, 'far end', '3030 L/h', '3000 L/h']) expect(summary).toContain(fact);
  });

  it('speaks in the units in force', async () => {
    const { summary } = await byQuery('?units=us');
    for (const fact of ['800 gal/h', '793 gal/h']) expect(summary).toContain(fact);
  });

  it('says that there is no price where there is none', async () => {
    await app.call('/v1/site', sent('PUT', { ...example('site.json'), price: null }, { 'If-Match': '*' }));
    const { summary, best, assumptions } = await byQuery();
    expect([best?.annualCost, assumptions.price]).toEqual([null, null]);
    expect(summary).not.toContain('EUR');
    expect(summary).toContain('without a price');
  });

  it('says what falls short where no pump serves', async () => {
    const loop = await created(app, '/v1/loops', example('loop-nursery-raceways.json'));
    const pump = await created(app, '/v1/pumps', example('pump-inline-60.json'));
    const answer = await answered(recommendationAnswer, await recommend(app, { loop, pumps: [pump] }));
    expect(answer).toMatchObject({ best: null, ranking: [], counts: { feasible: 0, rejected: 1 } });
    const [rejected] = answer.rejected;
    expect(rejected).toMatchObject({ candidate: 0, count: 1, reason: 'not-enough-head' });
    expect(rejected?.reasons[0]).toBe('not-enough-head');
    expect(rejected?.shortfall).toMatchObject({ setting: 100, requiredFlow: 2500 });
    expect(rejected?.shortfall?.flow).toBeLessThan(2500);
    for (const fact of ['Nursery raceways', 'Inline 60', rejected?.shortfall?.outlet ?? '?', '2500 L/h']) {
      expect(answer.summary).toContain(fact);
    }
  });
});

describe('one value', () => {
  it.each([
    ['/best/setting', /^70$/],
    ['/best/pump/name', /^Canister 250$/],
    ['/best/annualCost', /^157\.\d+$/],
    ['/counts/candidates', /^1$/],
  ])('%s is bare text', async (pointer, text) => {
    const response = await app.call(`${app.loop}/recommendation?pointer=${pointer}`);
    expect(response.headers.get('content-type')).toBe('text/plain; charset=utf-8');
    expect(await response.text()).toMatch(text);
  });

  it('that is not there is told by the summary', async () => {
    const limit = { ...example('loop-kelp-flume.json'), frictionMultiplier: 100 };
    await app.call(app.loop, sent('PUT', limit, { 'If-Match': '*' }));
    const problem = await refused(await app.call(`${app.loop}/recommendation?pointer=/best/setting`));
    const { summary, best } = await byQuery();
    expect(best).toBeNull();
    expect(problem).toMatchObject({ status: 404, code: 'no-value', detail: summary });
  });

  it.each(['/best', '/ranking'])('%s is more than one', async (pointer) => {
    const { status, errors } = await refused(await app.call(`${app.loop}/recommendation?pointer=${pointer}`));
    expect([status, errors?.[0]?.parameter]).toEqual([422, 'pointer']);
  });
});

it('the ranking comes in CSV', async () => {
  await created(app, '/v1/pumps', example('pump-canister-600.json'));
  for (const ask of [
    app.call(`${app.loop}/recommendation?format=csv`),
    app.call(`${app.loop}/recommendation`, { headers: { Accept: 'text/csv' } }),
    recommend(app, { loop: app.loopId }, '?format=csv'),
  ]) {
    const response = await ask;
    expect(response.headers.get('content-type')).toMatch(/^text\/csv/);
    const lines = (await response.text()).split('\r\n');
    expect(lines[0]).toMatch(/^candidate,pump,name,count,setting \[%\],flow \[L\/h\],head \[m\],power \[W\]/);
    expect(lines[1]).toMatch(new RegExp(`^0,${app.pumpId},Canister 250,1,70,75`));
  }
});

describe('the tag', () => {
  const path = () => `${app.loop}/recommendation`;
  const tagOf = async (query = '') => (await app.call(`${path()}${query}`)).headers.get('etag') ?? '';

  it('spares an answer that did not change', async () => {
    const tag = await tagOf();
    const response = await app.call(path(), { headers: { 'If-None-Match': tag } });
    expect([response.status, await response.text()]).toEqual([304, '']);
    expect(response.headers.get('etag')).toBe(tag);
    expect(await tagOf('?units=us')).not.toBe(tag);
    expect(await tagOf('?price=0.3')).not.toBe(tag);
    expect(await tagOf('?format=csv')).not.toBe(tag);
  });

  it.each<[string, () => Promise<unknown>]>([
    ['site', () => put('/v1/site', { ...example('site.json'), price: 0.3 })],
    ['loop', () => put(app.loop, { ...example('loop-kelp-flume.json'), frictionMultiplier: 2 })],
    ['pump', () => put(`/v1/pumps/${app.pumpId}`, { ...example('pump-canister-250.json'), standbyPower: 9 })],
    ['set of pumps', () => created(app, '/v1/pumps', example('pump-canister-120.json'))],
  ])('changes with the %s', async (_, change) => {
    const tag = await tagOf();
    await change();
    expect(await tagOf()).not.toBe(tag);
  });

  it('of a question in a body tells bodies apart', async () => {
    const tag = async (body: object) =>
      (await recommend(app, { loop: app.loopId, ...body })).headers.get('etag');
    expect(await tag({})).toBe(await tag({}));
    expect(await tag({ hoursPerDay: 8 })).not.toBe(await tag({}));
    const of = async (name: string) =>
      (await recommend(app, { ...inline(), loop: { ...example('loop-kelp-flume.json'), name } })).headers;
    expect((await of('a')).get('etag')).not.toBe((await of('b')).get('etag'));
  });

  const put = async (where: string, document: unknown) => {
    const response = await app.call(where, sent('PUT', document, { 'If-Match': '*' }));
    expect(response.status).toBe(200);
  };
});

it('the basis names versions of loop and pumps', async () => {
  const changed = { ...example('loop-kelp-flume.json'), pumpElevation: -0.5 };
  const put = sent('PUT', changed, { 'If-Match': '*' });
  await app.call(app.loop, put);
  const { basis } = await byQuery();
  expect(basis).toMatchObject({
    loop: { id: app.loopId, version: 2 },
    pumps: [{ id: app.pumpId, version: 1 }],
  });
});

it('nothing is stored by asking', async () => {
  const before = await jsonOf(await app.call('/v1/loops'));
  await recommend(app, inline());
  expect(await jsonOf(await app.call('/v1/loops'))).toEqual(before);
});
