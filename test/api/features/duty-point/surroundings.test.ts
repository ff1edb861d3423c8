/** Animals, heat, floods and people in loops, duty points and recommendations over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { dutyPointAnswer, recommendationAnswer } from '../../read-answers.ts';
import { created, example, type Json, jsonOf, sent } from '../../requests.ts';
import { answered, recommend, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const SIX_DIGITS = 1e-5;
const FLUME = example('loop-kelp-flume.json');
const RACEWAYS = example('loop-nursery-raceways.json');
const POOL = example('loop-touch-pool.json');

const surroundings = z.object({
  screen: z.object({ meanVelocity: z.number(), peakVelocity: z.number() }).nullable(),
  heat: z.object({
    power: z.number(),
    motorEfficiencyAssumed: z.boolean(),
    dailyRise: z.number().nullable(),
    annualEnergy: z.number().nullable(),
    annualCost: z.number().nullable(),
  }),
  coveredIntake: z.object({ suctionHead: z.number(), force: z.number() }).nullable(),
});
const outlets = z.array(
  z.object({
    name: z.string(),
    velocity: z.number().nullable(),
    reach: z.object({ velocity: z.number(), distance: z.number() }).nullable(),
  }),
);
const drainBack = z
  .object({ volume: z.number(), floods: z.boolean().nullable(), deepestSiphonBreak: z.number().nullable() })
  .nullable();
const withoutScreenLimit = z
  .object({
    pump: z.object({ name: z.string() }),
    meanVelocity: z.number(),
    screen: z.object({ length: z.number(), count: z.int() }).nullable(),
  })
  .nullable();
const dutyAnswer = dutyPointAnswer.extend({ ...surroundings.shape, outlets, drainBack });
const mainAnswer = recommendationAnswer.extend({
  best: surroundings
    .extend({ setting: z.number(), cautions: z.array(z.object({ code: z.string() })) })
    .nullable(),
  drainBack,
  withoutScreenLimit,
});

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const duty = async (query: string, loop = app.loop) =>
  answered(dutyAnswer, await app.call(`${loop}/duty-point?pump=${app.pumpId}&setting=70${query}`));
const asked = async (body: Json) => answered(mainAnswer, await recommend(app, body));
const codes = (cautions: readonly { code: string }[]) => cautions.map(({ code }) => code);

describe('a duty point', () => {
  it('has the screen velocity of the published solution, 0.127 m/s on average, and a higher peak', async () => {
    const { screen } = await duty('');
    expectClose(screen?.meanVelocity ?? 0, 0.127, { relative: 2e-3 });
    expect(screen?.peakVelocity).toBeGreaterThan(0.1524);
  });

  it('tells how far every outlet reaches at a velocity: B d u0/v with B = 6', async () => {
    const found = await duty('&velocity=0.1');
    for (const [i, nozzle] of [0.015, 0.014, 0.014].entries()) {
      const { velocity, reach } = found.outlets[i] ?? {};
      expectClose(reach?.distance ?? 0, (6 * nozzle * (velocity ?? 0)) / 0.1, { relative: 2 * SIX_DIGITS });
    }
    expect(codes(found.cautions)).toContain('jet-too-far');
    const us = await answered(
      dutyAnswer,
      await app.call(`${app.loop}/duty-point?pump=${app.pumpId}&setting=70&velocity=0.1%20m/s&units=us`),
    );
    expectClose((us.outlets[0]?.reach?.distance ?? 0) * 0.3048, found.outlets[0]?.reach?.distance ?? 0, {
      relative: 2 * SIX_DIGITS,
    });
  });

  it('tells the reach that an outlet states, and no other', async () => {
    expect((await duty('')).outlets.map(({ reach }) => reach)).toEqual([null, null, null]);
    const outlet = { name: 'only', nozzleDiameter: 15, reach: { distance: 2.5, velocity: 0.1 } };
    const discharge = { run: [{ pipe: 'sch80 1-1/2', length: 2 }], outlet };
    const id = await created(app, '/v1/loops', { ...FLUME, discharge });
    const found = await duty('', `/v1/loops/${id}`);
    expect(found.outlets[0]?.reach?.velocity).toBe(0.1);
  });

  it('warms the tank by (P - standby) x 0.8 a day: 66.16 W into 2400 L are 0.5822 K', async () => {
    const { heat, power } = await duty('');
    expectClose(heat.power, (power - 3) * 0.8, { relative: SIX_DIGITS });
    expectClose(heat.dailyRise ?? 0, (heat.power * 86_400) / (1023.343 * 3997.68 * 2.4), { relative: 2e-5 });
    expect(heat).toMatchObject({ annualEnergy: null, annualCost: null });
  });

  it('pulls with its shutoff head on a covered intake', async () => {
    const { coveredIntake } = await duty('');
    // 5.0946 m fitted at full speed, 70 % of it squared; the screen is 60 mm by 0.5 m.
    expectClose(coveredIntake?.suctionHead ?? 0, 0.49 * 5.0946, { relative: 1e-3 });
    const byHand = 1023.343 * 9.80665 * (coveredIntake?.suctionHead ?? 0) * 0.06 * 0.5;
    expectClose(coveredIntake?.force ?? 0, byHand, { relative: 2 * SIX_DIGITS });
  });

  it.each(['0', '-1', 'fast', '31', '1 L/h'])('refuses a reach to %s', async (velocity) => {
    const response = await app.call(
      `${app.loop}/duty-point?pump=${app.pumpId}&velocity=${encodeURIComponent(velocity)}`,
    );
    const problem = await refused(response);
    expect(problem.status).toBe(422);
    expect(problem.errors?.map(({ parameter }) => parameter)).toEqual(['velocity']);
  });
});

describe('a recommendation for the touch pool', () => {
  const pumps = [example('pump-canister-120.json'), example('pump-canister-250.json')];
  const question = { loop: POOL, pumps, price: 0.21 };

  it('says why the screen changed the answer, and what screen would lift that', async () => {
    const found = await asked(question);
    expect(found.withoutScreenLimit?.pump.name).toBe('Canister 120');
    expect(found.withoutScreenLimit?.meanVelocity).toBeGreaterThan(0.1524);
    expect(found.summary).toContain('run pump "Canister 250"');
    expect(found.summary).toContain('The intake screen decides: Canister 120');
    expect(found.summary).toContain('one flat screen 0.3 m wide');
    const length = found.withoutScreenLimit?.screen?.length ?? 0;
    expect(length).toBeGreaterThan(0.13);
    const screen = { ...z.any().parse(POOL.intake).screen, length: 1.0001 * length };
    const intake = { ...z.any().parse(POOL.intake), screen };
    const longer = await asked({ ...question, loop: { ...POOL, intake } });
    expect(longer.summary).toContain('run pump "Canister 120"');
    expect(longer.withoutScreenLimit).toBeNull();
  });

  it('is silent about the screen where it is not judged', async () => {
    const found = await asked({ ...question, limits: { throughSlotVelocity: null } });
    expect(found.withoutScreenLimit).toBeNull();
    expect(found.summary).not.toContain('screen');
  });

  it('warns that visitors can reach the intake', async () => {
    expect(codes((await asked(question)).best?.cautions ?? [])).toContain('intake-holds-fast');
  });
});

describe('a recommendation with heat', () => {
  const question = { loop: FLUME, pumps: [example('pump-canister-250.json')], price: 0.21 };

  it('tells what a chiller takes, and what a heater is spared', async () => {
    const cooled = await asked({ ...question, heat: { cop: 3, mode: 'cooling' } });
    const heat = cooled.best?.heat;
    expectClose(heat?.annualEnergy ?? 0, ((heat?.power ?? 0) * 8.76) / 3, { relative: 2 * SIX_DIGITS });
    expectClose(heat?.annualCost ?? 0, 0.21 * (heat?.annualEnergy ?? 0), { relative: 2 * SIX_DIGITS });
    const heated = await asked({ ...question, heat: { cop: 3, mode: 'heating' } });
    expect(heated.best?.heat.annualEnergy).toBe(-(heat?.annualEnergy ?? 0));
  });

  it.each([
    [{ mode: 'cooling' }, '/heat/cop'],
    [{ cop: 0, mode: 'cooling' }, '/heat/cop'],
    [{ cop: '3', mode: 'cooling' }, '/heat/cop'],
    [{ cop: 3 }, '/heat/mode'],
    [{ cop: 3, mode: 'both' }, '/heat/mode'],
    [{ cop: 3, mode: 'cooling', inRanking: 'yes' }, '/heat/inRanking'],
    [{ cop: 3, mode: 'cooling', price: 1 }, '/heat/price'],
    [null, '/heat'],
  ])('refuses heat of %o', async (heat, pointer) => {
    const problem = await refused(await recommend(app, { ...question, heat }));
    expect(problem.status).toBe(422);
    expect(problem.errors?.map((error) => error.pointer)).toContain(pointer);
  });
});

describe('a recommendation for the nursery raceways', () => {
  const question = { loop: RACEWAYS, pumps: [example('pump-canister-600.json')] };

  it('warns that a power cut floods the basin, until the siphon break is raised', async () => {
    const found = await asked(question);
    expect(found.drainBack?.floods).toBe(true);
    expect(found.cautions).toContainEqual(
      expect.objectContaining({ code: 'basin-floods', severity: 'danger' }),
    );
    const raised = await asked({ ...question, loop: { ...RACEWAYS, siphonBreakDepth: 0.04 } });
    expect(raised.drainBack?.floods).toBe(false);
    expect(codes(raised.cautions)).not.toContain('basin-floods');
  });

  it('warns where the pump delivers more than the overflow carries', async () => {
    const { best } = await asked({ ...question, loop: { ...RACEWAYS, overflowCapacity: 9000 } });
    expect(codes(best?.cautions ?? [])).toContain('overflow-exceeded');
    expect(codes((await asked(question)).best?.cautions ?? [])).not.toContain('overflow-exceeded');
  });
});

describe('a loop', () => {
  const intakeWith = (screen: Json) => ({ lossCoefficient: 0.5, screen: { length: 0.5, ...screen } });
  const box = { shape: 'box', width: 0.3, height: 0.2, hole: 3, pitch: 5, pattern: 'staggered' };

  it('with a box of holes is read back with its open fraction, and taken again as it was read', async () => {
    const id = await created(app, '/v1/loops', { ...FLUME, intake: intakeWith(box) });
    const read = await jsonOf(await app.call(`/v1/loops/${id}`));
    expect(read.intake).toMatchObject(intakeWith(box));
    const { openFraction } = z.any().parse(read.intake).screen;
    expectClose(openFraction, (Math.PI * 9) / (2 * Math.sqrt(3) * 25), { relative: 1e-12 });
    const again = await app.call(`/v1/loops/${id}`, sent('PUT', read, { 'If-Match': '*' }));
    expect(again.status).toBe(200);
  });

  it('of raceways is taken in US units as it was read in them', async () => {
    const id = await created(app, '/v1/loops', RACEWAYS);
    const path = `/v1/loops/${id}?units=us`;
    const read = await jsonOf(await app.call(path));
    expect((await app.call(path, sent('PUT', read, { 'If-Match': '*' }))).status).toBe(200);
    const back = z.any().parse(await jsonOf(await app.call(`/v1/loops/${id}`)));
    expectClose(back.siphonBreakDepth, 0.06, { relative: 1e-9 });
    expectClose(back.basin.area, 1.6, { relative: 1e-9 });
    expectClose(back.overflowCapacity, 13_000, { relative: 1e-9 });
  });

  it.each([
    [{ basin: { area: 1.6 } }, '/basin/freeboard'],
    [{ basin: { area: 0, freeboard: 0.2 } }, '/basin/area'],
    [{ basin: { area: 1, freeboard: -0.1 } }, '/basin/freeboard'],
    [{ basin: 3 }, '/basin'],
    [{ siphonBreakDepth: -0.01 }, '/siphonBreakDepth'],
    [{ siphonBreakDepth: '5 L' }, '/siphonBreakDepth'],
    [{ overflowCapacity: 0 }, '/overflowCapacity'],
    [{ intake: { smallestAnimal: 0 } }, '/intake/smallestAnimal'],
    [{ intake: { smallestAnimal: 'shrimp' } }, '/intake/smallestAnimal'],
    [{ intake: { reachable: 'yes' } }, '/intake/reachable'],
    [{ intake: intakeWith({ ...box, height: 0 }) }, '/intake/screen/height'],
    [{ intake: intakeWith({ ...box, pattern: undefined }) }, '/intake/screen/pattern'],
    [{ intake: intakeWith({ ...box, pitch: 3 }) }, '/intake/screen/pitch'],
    [{ intake: intakeWith({ ...box, slot: 3 }) }, '/intake/screen/hole'],
    [{ intake: intakeWith({ ...box, openFraction: 0.9 }) }, '/intake/screen/openFraction'],
    [{ intake: intakeWith({ shape: 'flat', width: 0.3 }) }, '/intake/screen/openFraction'],
  ])('is refused with %o', async (change, pointer) => {
    const problem = await refused(await app.call('/v1/loops', sent('POST', { ...FLUME, ...change })));
    expect(problem.status).toBe(422);
    expect(problem.errors?.map((error) => error.pointer)).toContain(pointer);
  });
});
