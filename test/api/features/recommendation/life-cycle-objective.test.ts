/** Recommendations that rank by life-cycle cost. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { example, type Json, sent } from '../../requests.ts';
import { answered, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const duty = z.object({
  pump: z.object({ name: z.string() }),
  annualCost: z.number().nullable(),
  lifeCycleCost: z.number().nullable(),
  cautions: z.array(z.object({ code: z.string() })),
});
const answer = z.object({
  best: duty.nullable(),
  ranking: z.array(duty),
  assumptions: z.object({ objective: z.string(), lifeCycle: z.record(z.string(), z.number()).nullable() }),
  summary: z.string(),
});

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const small = { ...example('pump-canister-250.json'), name: 'cheap', price: 300, expectedLifeYears: 10 };
/** The same pump, thriftier by a tenth and dearer by far. */
const thrifty = {
  ...small,
  name: 'thrifty',
  price: 3000,
  powerPoints: [
    { setting: 100, power: 220, flow: 9000 },
    { setting: 60, power: 49.8 },
  ],
};

const asked = (more: Json = {}) => ({
  loop: app.loopId,
  pumps: [thrifty, small],
  price: 0.2,
  objective: 'life-cycle-cost',
  ...more,
});
const ask = (body: unknown) => app.call('/v1/recommendations', sent('POST', body));

describe('a ranking by life-cycle cost', () => {
  it('puts the cheaper pump first where energy alone would not', async () => {
    const byEnergy = await answered(answer, await ask(asked({ objective: 'energy-cost' })));
    expect(byEnergy.best?.pump.name).toBe('thrifty');
    expect([byEnergy.best?.lifeCycleCost, byEnergy.assumptions.lifeCycle]).toEqual([null, null]);
    const byLife = await answered(answer, await ask(asked()));
    expect(byLife.ranking.map(({ pump }) => pump.name)).toEqual(['cheap', 'thrifty']);
    expect(byLife.summary).toContain('over 10 years, the least of all feasible candidates.');
  });

  it('adds up purchase, energy, service and failures of ten years, by hand', async () => {
    // 300 + 10 x (energy + 2 x (45/60 h x 30 + 20) + 2/30 failures x 2 h x 30), without interest, at 30 an hour.
    const found = await answered(answer, await ask(asked({ lifeCycle: { labourRate: 30 } })));
    const yearly = (found.best?.annualCost ?? 0) + 2 * (0.75 * 30 + 20) + (2 / 30) * 2 * 30;
    expectClose(found.best?.lifeCycleCost ?? 0, 300 + 10 * yearly, { relative: 2e-6 });
  });

  it('turns with the price of energy, at which the thrifty pump pays', async () => {
    const dear = asked({ price: 5 });
    expect((await answered(answer, await ask(dear))).best?.pump.name).toBe('thrifty');
  });

  it('ranks a pump without a price after those with one, and says so', async () => {
    const { price: _, ...free } = small;
    const both = await answered(answer, await ask(asked({ pumps: [free, thrifty] })));
    expect(both.ranking.map(({ pump }) => pump.name)).toEqual(['thrifty', 'cheap']);
    const found = await answered(answer, await ask(asked({ pumps: [free] })));
    expect(found.best?.lifeCycleCost).toBeNull();
    expect(found.summary).not.toContain('Bought anew');
    expect(found.best?.cautions.map(({ code }) => code)).toContain('purchase-not-counted');
  });

  it('is to be had by query as well', async () => {
    const response = await app.call(
      `${app.loop}/recommendation?pump=${app.pumpId}&objective=life-cycle-cost`,
    );
    expect((await answered(answer, response)).best?.lifeCycleCost).toBeGreaterThan(780);
  });

  it.each([
    { why: 'no years', body: { lifeCycle: { years: 0 } }, pointer: '/lifeCycle/years' },
    {
      why: 'a discount of -100 %',
      body: { lifeCycle: { discountRate: -1 } },
      pointer: '/lifeCycle/discountRate',
    },
    {
      why: 'rates that lead beyond all numbers',
      body: { lifeCycle: { years: 100, discountRate: -0.9999999 } },
      pointer: '/lifeCycle/discountRate',
    },
    { why: 'an unknown term', body: { lifeCycle: { tax: 1 } }, pointer: '/lifeCycle/tax' },
    { why: 'another objective', body: { objective: 'beauty' }, pointer: '/objective' },
  ])('refuses $why', async ({ body, pointer }) => {
    const { status, errors } = await refused(await ask(asked(body)));
    expect([status, errors?.[0]?.pointer]).toEqual([422, pointer]);
  });

  it('refuses to hold energy without a price against purchase', async () => {
    await app.call('/v1/site', sent('PUT', { ...example('site.json'), price: null }, { 'If-Match': '*' }));
    const { errors } = await refused(await ask(asked({ price: undefined })));
    expect(errors?.[0]?.pointer).toBe('/objective');
  });
});
