/** Where the head goes, in money, over HTTP: shares that add up, savings that two full requests give. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { recommendationAnswer } from '../../read-answers.ts';
import { example, type Json } from '../../requests.ts';
import { answered, recommend, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const SIX_DIGITS = 1e-5;

const use = { setting: z.number(), annualEnergy: z.number(), annualCost: z.number().nullable() };
const saving = z.object({
  grid: z.object({ candidate: z.int(), ...use }).nullable(),
  continuous: z.object(use).nullable(),
});
const row = z.object({
  pointer: z.string(),
  kind: z.string(),
  name: z.string().nullable(),
  bore: z.number().nullable(),
  flow: z.number(),
  head: z.number(),
  power: z.number(),
  powerShare: z.number(),
  annualEnergy: z.number(),
  annualCost: z.number().nullable(),
  savings: z
    .object({
      largerPipe: saving.extend({ name: z.string() }).nullable(),
      halved: saving.nullable(),
      removed: saving.nullable(),
    })
    .nullable(),
});
const lossesAnswer = recommendationAnswer.extend({
  losses: z.object({ hydraulicPower: z.number(), rows: z.array(row) }).nullable(),
});

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const body = (further: Json = {}): Json => ({
  loop: example('loop-kelp-flume.json'),
  pumps: [example('pump-canister-250.json'), example('pump-canister-600.json')],
  price: 0.21,
  ...further,
});

async function ask(further: Json = {}, query = '') {
  const answer = await answered(lossesAnswer, await recommend(app, body(further), query));
  if (answer.best === null) throw new Error('there is no best');
  return { ...answer, best: answer.best, rows: answer.losses?.rows ?? [] };
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

describe('where the head goes', () => {
  it.each(['as-built', 'trimmed'])('adds up to power, energy and cost, %s', async (balancing) => {
    const { best, losses, rows } = await ask({ detail: 'losses', balancing });
    expectClose(sum(rows.map(({ powerShare }) => powerShare)), 1, { absolute: SIX_DIGITS });
    expectClose(sum(rows.map(({ power }) => power)), losses?.hydraulicPower ?? 0, { relative: SIX_DIGITS });
    expectClose(sum(rows.map(({ annualEnergy }) => annualEnergy)), best.annualEnergy, {
      relative: SIX_DIGITS,
    });
    expectClose(sum(rows.map(({ annualCost }) => annualCost ?? 0)), best.annualCost ?? 0, {
      relative: SIX_DIGITS,
    });
    expectClose(losses?.hydraulicPower ?? 0, best.efficiency * best.power, { relative: SIX_DIGITS });
  });

  it('adds up for a return system, its lift in rows of its own', async () => {
    const loop = example('loop-nursery-raceways.json');
    const { rows } = await ask({ detail: 'losses', loop, pumps: [example('pump-canister-600.json')] });
    expectClose(sum(rows.map(({ powerShare }) => powerShare)), 1, { absolute: SIX_DIGITS });
    const lifts = rows.filter(({ kind }) => kind === 'lift');
    expect(lifts).toHaveLength(4);
    for (const { savings } of lifts) expect(savings).toBeNull();
  });

  it('points into the loop', async () => {
    const { rows } = await ask({ detail: 'losses' });
    const loop = example('loop-kelp-flume.json');
    for (const { pointer: element, kind } of rows) {
      const found = element
        .split('/')
        .slice(1)
        .reduce<unknown>(
          (at, part) => z.record(z.string(), z.unknown()).parse({ ...Object(at) })[part],
          loop,
        );
      expect(found, `${kind} ${element}`).toBeDefined();
    }
  });

  it('is left out where it is not asked for', async () => {
    expect((await ask()).losses).toBeNull();
    expect((await ask({ detail: 'plain' })).losses).toBeNull();
  });

  it('has no money without a price', async () => {
    const site = { ...example('site.json'), price: null };
    const headers = { 'If-Match': '*', 'Content-Type': 'application/json' };
    await app.call('/v1/site', { method: 'PUT', headers, body: JSON.stringify(site) });
    const { rows } = await ask({ detail: 'losses', price: undefined });
    expect(new Set(rows.map(({ annualCost }) => annualCost))).toEqual(new Set([null]));
    expect(rows.find(({ kind }) => kind === 'fitting')?.savings?.halved?.grid?.annualCost).toBeNull();
  });

  it('is nothing where no candidate serves', async () => {
    const small = { ...example('pump-canister-250.json'), settings: { min: 30, max: 40, step: 1 } };
    const answer = await answered(
      lossesAnswer,
      await recommend(app, body({ detail: 'losses', pumps: [small] })),
    );
    expect(answer.losses).toBeNull();
  });

  it('looks into ten rows at most', async () => {
    const { rows } = await ask({ detail: 'losses' });
    expect(rows.filter(({ savings }) => savings !== null)).toHaveLength(10);
  });

  it('tells the same in US units', async () => {
    const metric = (await ask({ detail: 'losses', loop: app.loopId, pumps: [app.pumpId] })).rows;
    const us = (await ask({ detail: 'losses', loop: app.loopId, pumps: [app.pumpId] }, '?units=us')).rows;
    expect(us.map(({ pointer }) => pointer)).toEqual(metric.map(({ pointer }) => pointer));
    for (const [place, one] of us.entries()) {
      const other = metric[place];
      // Foot and inch are exact by definition (NIST SP 811).
      expectClose(0.3048 * one.head, other?.head ?? 1, { relative: SIX_DIGITS });
      if (one.bore !== null) expectClose(25.4 * one.bore, other?.bore ?? 1, { relative: SIX_DIGITS });
      expectClose(one.powerShare, other?.powerShare ?? 1, { relative: SIX_DIGITS });
      expect(one.savings?.removed?.grid?.setting).toBe(other?.savings?.removed?.grid?.setting);
    }
  });
});

/** The flume with one piece of its text replaced. */
const flumeWith = (from: string, to: string): Json => {
  const text = JSON.stringify(example('loop-kelp-flume.json'));
  if (!text.includes(from)) throw new Error(`the flume has no ${from}`);
  return JSON.parse(text.replace(from, to));
};

describe('a listed saving', () => {
  it.each<[string, string, string, 'largerPipe' | 'halved' | 'removed', string, string]>([
    ['one bore up', '/discharge/run/0', 'pipe', 'largerPipe', '"sch80 1-1/2"', '"sch80 2"'],
    ['one bore up before the pump', '/suction/0', 'pipe', 'largerPipe', '"sch80 2"', '"sch80 2-1/2"'],
    ['half of the elbows', '/suction/1', 'fitting', 'halved', '"count":2', '"count":1'],
    [
      'no loss',
      '/discharge/branches/1/run/0',
      'loss',
      'removed',
      '"lossCoefficient":2}',
      '"lossCoefficient":0}',
    ],
  ])('of %s is the difference of two full requests', async (_, element, kind, change, from, to) => {
    for (const further of [{}, { balancing: 'trimmed' }, { assurance: { grade: '2B' } }]) {
      const before = await ask({ ...further, detail: 'losses' });
      const after = await ask({ ...further, loop: flumeWith(from, to) });
      const found = before.rows.find((one) => one.pointer === element && one.kind === kind);
      const grid = found?.savings?.[change]?.grid;
      const rounding = { absolute: SIX_DIGITS * before.best.annualEnergy };
      expectClose(
        grid?.annualEnergy ?? Number.NaN,
        before.best.annualEnergy - after.best.annualEnergy,
        rounding,
      );
      expectClose(
        grid?.annualCost ?? Number.NaN,
        (before.best.annualCost ?? 0) - (after.best.annualCost ?? 0),
        rounding,
      );
      expect(grid?.setting).toBe(after.best.setting);
    }
  });

  it('names the wider pipe', async () => {
    const { rows } = await ask({ detail: 'losses' });
    expect(rows.find(({ pointer }) => pointer === '/discharge/run/0')?.savings?.largerPipe?.name).toBe(
      'sch80 2',
    );
  });
});

describe('a detail that cannot be', () => {
  it.each<[string, unknown]>([
    ['another word', 'all'],
    ['a truth value', true],
    ['null', null],
    ['a list', ['losses']],
  ])('%s is refused at its place', async (_, detail) => {
    const response = await recommend(app, body({ detail }));
    expect(response.status).toBe(422);
    expect((await refused(response)).errors?.[0]?.pointer).toBe('/detail');
  });

  it('of more candidates than it looks into is told with the limit', async () => {
    const pumps = Array.from({ length: 501 }, () => app.pumpId);
    const response = await recommend(app, body({ detail: 'losses', pumps }));
    expect(response.status).toBe(422);
    expect(await refused(response)).toMatchObject({
      code: 'limit-exceeded',
      limit: 500,
      actual: 501,
      errors: [{ pointer: '/detail' }],
    });
  });
});
