/** Upgrade plans over HTTP: made, told, kept, refused. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { changed } from '../../changed.ts';
import { example, jsonOf, sent } from '../../requests.ts';
import { answered, refused } from '../../stocked-app.ts';

const planAnswer = z.object({
  id: z.string(),
  version: z.int(),
  name: z.string(),
  currency: z.string(),
  presentValue: z.number(),
  solution: z.enum(['optimal', 'time-limit']),
  optimalityGap: z.number().nullable(),
  upgrades: z.array(
    z.object({
      candidate: z.int(),
      name: z.string(),
      year: z.int(),
      cost: z.number(),
      presentValue: z.number(),
    }),
  ),
  leftOut: z.array(
    z.object({
      candidate: z.int(),
      reason: z.string(),
      detail: z.string().min(1),
      additionalBudget: z.number().nullable(),
    }),
  ),
  yearByYear: z.array(
    z.object({ year: z.int(), available: z.number(), spent: z.number(), carriedOver: z.number() }),
  ),
  moreBudget: z.object({ budget: z.array(z.number()), presentValue: z.number(), gain: z.number() }),
  summary: z.string().min(1),
  cautions: z.array(z.object({ code: z.string() })),
  basis: z.object({ modelVersion: z.string() }),
});

const REQUEST = example('upgrade-plan.json');
let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

const ask = (body: unknown): Promise<Response> => app.call('/v1/upgrade-plans', sent('POST', body));

async function planned(body: unknown) {
  const response = await ask(body);
  const text = await response.text();
  expect(response.status, text).toBe(201);
  return planAnswer.parse(JSON.parse(text));
}

describe('an upgrade plan', () => {
  it('is made, kept, and read as it was made', async () => {
    const response = await ask(REQUEST);
    expect(response.status).toBe(201);
    expect(response.headers.get('etag')).toBe('"1-metric"');
    const made = await jsonOf(response);
    const location = response.headers.get('location') ?? '';
    expect(location).toBe(`/v1/upgrade-plans/${String(made.id)}`);
    const read = await app.call(location);
    expect(await jsonOf(read)).toEqual(made);
    expect((await app.call(location, { headers: { 'If-None-Match': '"1-metric"' } })).status).toBe(304);
    expect(made).toMatchObject({ ...REQUEST, currency: 'EUR' });
  });

  it('has every candidate made or left out, money that adds up, and the must in its years', async () => {
    const plan = await planned(REQUEST);
    const places = [...plan.upgrades, ...plan.leftOut].map(({ candidate }) => candidate);
    expect(places.sort()).toEqual([0, 1, 2, 3, 4, 5]);
    expect(plan.upgrades.find(({ candidate }) => candidate === 3)?.year).toBeLessThanOrEqual(2);
    const sum = plan.upgrades.reduce((total, { presentValue }) => total + presentValue, 0);
    expectClose(plan.presentValue, sum, { relative: 1e-5 });
    for (const { available, spent, carriedOver } of plan.yearByYear)
      expectClose(available - spent, carriedOver, { absolute: 0.01 });
    expect(plan).toMatchObject({
      solution: 'optimal',
      optimalityGap: 0,
      moreBudget: { budget: [909, 909, 949.4] },
    });
    expect(plan.cautions.map(({ code }) => code)).toContain('plan-as-stated');
  });

  it('says which life ends before it, and goes on without replacing', async () => {
    const saving = changed(REQUEST, '/candidates/0/yearlySaving', 700);
    const short = changed(saving, '/candidates/0/lifeYears', 2);
    const plan = await planned(short);
    expect(plan.cautions.map(({ code }) => code)).toContain('plan-outlives-upgrade');
  });

  it('of a budget that fits nothing is an answer', async () => {
    const screen = { name: 'Screen', cost: 180, yearlySaving: 60, lifeYears: 9 };
    const plan = await planned({
      years: 3,
      budget: [100, 0],
      carryOver: false,
      discountRate: 0,
      candidates: [screen],
    });
    expect(plan).toMatchObject({
      presentValue: 0,
      upgrades: [],
      leftOut: [{ candidate: 0, reason: 'over-budget' }],
    });
    expect(plan).toMatchObject({ name: 'Upgrade plan', solution: 'optimal' });
    expect(plan.summary).toContain('None of the 1 upgrades is made');
  });

  it('is a table in CSV, and one value by its pointer', async () => {
    const { id } = await planned(REQUEST);
    const csv = await (await app.call(`/v1/upgrade-plans/${id}?format=csv`)).text();
    const lines = csv.split('\r\n');
    expect(lines[0]).toBe(
      'candidate,name,year,cost [EUR],yearlySaving [EUR],lifeYears,presentValue [EUR],reason,additionalBudget [EUR]',
    );
    expect(lines).toHaveLength(8);
    const year = await app.call(`/v1/upgrade-plans/${id}?pointer=/upgrades/0/year`);
    expect(await year.text()).toBe('1');
  });

  it('is listed without its candidates, and deleted by its version', async () => {
    const { id } = await planned(REQUEST);
    const second = await planned({ ...REQUEST, name: 'Second' });
    const list = await app.call('/v1/upgrade-plans?name=Second');
    const { items } = await answered(z.object({ items: z.array(z.looseObject({ id: z.string() })) }), list);
    expect(items.map((one) => one.id)).toEqual([second.id]);
    expect(items[0]).not.toHaveProperty('candidates');
    const csv = await app.call('/v1/upgrade-plans', { headers: { Accept: 'text/csv' } });
    expect((await csv.text()).split('\r\n')[0]).toBe(
      'id,name,years,presentValue,currency,solution,version,createdAt,updatedAt',
    );
    const path = `/v1/upgrade-plans/${id}`;
    expect((await app.call(path, { method: 'DELETE' })).status).toBe(428);
    const gone = { method: 'DELETE', headers: { 'If-Match': '"1-us"' } };
    expect((await app.call(path, gone)).status).toBe(204);
    expect((await app.call(path)).status).toBe(404);
    expect((await app.call(path, gone)).status).toBe(404);
  });
});

describe('must-dos that contradict one another', () => {
  const must = (change: object = {}) => ({
    name: 'A',
    cost: 600,
    yearlySaving: 1,
    lifeYears: 5,
    mandatory: true,
    ...change,
  });
  const body = (candidates: readonly unknown[], change: object = {}) => ({
    ...{ years: 2, budget: [1000, 0], carryOver: true, discountRate: 0.05 },
    ...change,
    candidates,
  });

  it.each([
    ['of one group', body([must({ group: 'g' }), must({ name: 'B', group: 'g', cost: 100 })]), [0, 1], 'one'],
    ['outside the plan', body([must({ cost: 1 }), must({ name: 'B', firstYear: 3 })]), [1], 'any year'],
    ['beyond the budget', body([must(), must({ name: 'B' })]), [0, 1], '1200'],
    ['beyond any one year', body([must(), must({ name: 'B' })], { carryOver: false }), [0, 1], '1200'],
  ])('are named: %s', async (_, asked, places, word) => {
    const problem = await refused(await ask(asked));
    expect(problem.status).toBe(422);
    expect(problem.errors?.map(({ pointer }) => pointer)).toEqual(
      places.map((place) => `/candidates/${place}/mandatory`),
    );
    expect(problem.detail).toContain('"B"');
    expect(problem.detail).toContain(word);
  });
});

describe('an upgrade plan is refused', () => {
  it.each<[string, unknown, string]>([
    ['without candidates', changed(REQUEST, '/candidates', []), '/candidates'],
    ['without years', changed(REQUEST, '/years', undefined), '/years'],
    ['of no years', changed(REQUEST, '/years', 0), '/years'],
    ['of half a year', changed(REQUEST, '/years', 2.5), '/years'],
    ['of too many years', changed(REQUEST, '/years', 41), '/years'],
    ['with a budget longer than its years', changed(REQUEST, '/years', 2), '/budget'],
    ['without a budget', changed(REQUEST, '/budget', []), '/budget'],
    ['with a budget that is one number', changed(REQUEST, '/budget', 900), '/budget'],
    ['with a budget below 0', changed(REQUEST, '/budget/1', -1), '/budget/1'],
    ['at a discount of -100 %', changed(REQUEST, '/discountRate', -1), '/discountRate'],
    ['at a discount in per cent', changed(REQUEST, '/discountRate', 4), '/discountRate'],
    ['in another currency', changed(REQUEST, '/currency', 'USD'), '/currency'],
    ['with a cost below 0', changed(REQUEST, '/candidates/0/cost', -780), '/candidates/0/cost'],
    ['with a cost that is a text', changed(REQUEST, '/candidates/0/cost', '780'), '/candidates/0/cost'],
    ['with a life of nothing', changed(REQUEST, '/candidates/2/lifeYears', 0), '/candidates/2/lifeYears'],
    ['with a life below 0', changed(REQUEST, '/candidates/2/lifeYears', -8), '/candidates/2/lifeYears'],
    ['with a year of 0', changed(REQUEST, '/candidates/4/firstYear', 0), '/candidates/4/firstYear'],
    [
      'with years the wrong way round',
      changed(REQUEST, '/candidates/4/lastYear', 1),
      '/candidates/4/lastYear',
    ],
    ['with an unknown field', changed(REQUEST, '/candidates/4/priority', 1), '/candidates/4/priority'],
    [
      'with a must that is a word',
      changed(REQUEST, '/candidates/3/mandatory', 'yes'),
      '/candidates/3/mandatory',
    ],
  ])('%s', async (_, body, pointer) => {
    const problem = await refused(await ask(body));
    expect(problem.status).toBe(422);
    expect(problem.errors?.[0]?.pointer).toBe(pointer);
  });

  it('with more candidates than a list may hold', async () => {
    const one = { name: 'A', cost: 1, yearlySaving: 1, lifeYears: 1 };
    const problem = await refused(await ask(changed(REQUEST, '/candidates', Array(501).fill(one))));
    expect(problem).toMatchObject({ status: 422, code: 'limit-exceeded', limit: 500, actual: 501 });
  });
});
