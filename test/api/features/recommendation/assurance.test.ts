/** Uncertainty and assurance over HTTP: what holds in the worst case, what that costs a year, what the figures may be off by. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { dutyPointAnswer, recommendationAnswer } from '../../read-answers.ts';
import { created, example, type Json, sent } from '../../requests.ts';
import { answered, recommend, refused, type StockedApp, stockedApp, storeOf } from '../../stocked-app.ts';

const SIX_DIGITS = 1e-5;

const range = z.object({ low: z.number(), high: z.number() });
const uncertainty = z.object({
  ...{ grade: z.string().nullable(), flow: range, power: range, annualEnergy: range },
  laws: z.object({ power: range, annualEnergy: range }),
});
const best = recommendationAnswer.shape.best.unwrap().extend({ uncertainty });
const assuredAnswer = recommendationAnswer.extend({
  best: best.nullable(),
  assurance: z
    .object({
      without: z
        .object({
          candidate: z.int(),
          pump: z.object({ name: z.string() }),
          count: z.int(),
          setting: z.number(),
          annualEnergy: z.number(),
          annualCost: z.number().nullable(),
        })
        .nullable(),
      extraEnergy: z.number().nullable(),
      extraCost: z.number().nullable(),
      badEnd: z
        .object({
          flow: z.number(),
          head: z.number(),
          power: z.number(),
          outlets: z.array(
            z.object({ name: z.string(), flow: z.number(), requiredFlow: z.number().nullable() }),
          ),
        })
        .nullable(),
    })
    .nullable(),
  assumptions: recommendationAnswer.shape.assumptions.extend({ assurance: z.unknown() }),
});

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const body = (further: Json = {}): Json => ({
  loop: example('loop-kelp-flume.json'),
  pumps: [example('pump-canister-250.json')],
  price: 0.21,
  limits: { throughSlotVelocity: null },
  ...further,
});

const ask = async (further: Json = {}) => answered(assuredAnswer, await recommend(app, body(further)));

async function askBest(further: Json = {}) {
  const answer = await ask(further);
  if (answer.best === null) throw new Error('there is no best');
  return { ...answer, best: answer.best };
}

const ASSURANCES = [
  ['a grade', { grade: '2B' }],
  ['a margin', { margin: 0.1 }],
  ['more friction', { frictionMultiplier: 2 }],
] as const;

describe.each(ASSURANCES)('an assurance by %s', (_, assurance) => {
  it.each(['as-built', 'trimmed'])('costs the difference of two full requests, %s', async (balancing) => {
    const [assured, plain] = [await askBest({ assurance, balancing }), await askBest({ balancing })];
    const { without, extraEnergy, extraCost } = assured.assurance ?? {};
    expect(without).toMatchObject({
      ...{ candidate: 0, count: 1, setting: plain.best.setting },
      ...{ annualEnergy: plain.best.annualEnergy, annualCost: plain.best.annualCost },
    });
    const rounding = { absolute: SIX_DIGITS * assured.best.annualEnergy };
    expectClose(extraEnergy ?? 0, assured.best.annualEnergy - plain.best.annualEnergy, rounding);
    expectClose(extraCost ?? 0, (assured.best.annualCost ?? 0) - (plain.best.annualCost ?? 0), rounding);
    expect(assured.best.setting).toBeGreaterThan(plain.best.setting);
  });

  it('serves every outlet in the worst case', async () => {
    const { badEnd } = (await ask({ assurance })).assurance ?? {};
    expect(badEnd?.outlets.map(({ name }) => name)).toEqual(['far end', 'left', 'right']);
    for (const { flow, requiredFlow } of badEnd?.outlets ?? []) {
      expect(flow).toBeGreaterThanOrEqual((requiredFlow ?? 0) * (1 - SIX_DIGITS));
    }
  });

  it('is repeated in the assumptions', async () => {
    expect((await ask({ assurance })).assumptions.assurance).toEqual(assurance);
  });

  it('tells energy alone where there is no price', async () => {
    const put = await app.call(
      '/v1/site',
      sent('PUT', { ...example('site.json'), price: null }, { 'If-Match': '*' }),
    );
    expect(put.status).toBe(200);
    const told = (await ask({ assurance, price: undefined })).assurance;
    expect(told?.extraCost).toBeNull();
    expect(told?.without?.annualCost).toBeNull();
    expect(told?.extraEnergy).toBeGreaterThan(0);
  });

  it('has nothing to tell where no candidate serves', async () => {
    const small = { ...example('pump-canister-250.json'), settings: { min: 30, max: 40, step: 1 } };
    const { best: none, assurance: told } = await ask({ assurance, pumps: [small] });
    expect(none).toBeNull();
    expect(told).toEqual({ without: null, extraEnergy: null, extraCost: null, badEnd: null });
  });

  it('never changes its answer with the unit system', async () => {
    const metric = await askBest({ assurance });
    const text = await (await recommend(app, body({ assurance }))).text();
    // The body is metric: its loop and pump are stored, and asked about by their ids in US units.
    expect(text).not.toBe('');
    const ids = { loop: app.loopId, pumps: [app.pumpId] };
    const us = await answered(assuredAnswer, await recommend(app, body({ ...ids, assurance }), '?units=us'));
    expect(us.best?.setting).toBe(metric.best.setting);
    for (const field of ['power', 'annualEnergy', 'annualCost', 'efficiency'] as const) {
      expectClose(us.best?.[field] ?? 0, metric.best[field] ?? 0, { relative: SIX_DIGITS });
    }
    expectClose(us.assurance?.extraEnergy ?? 0, metric.assurance?.extraEnergy ?? 0, { relative: SIX_DIGITS });
    // A US gallon is 3.785411784 L, exact by definition (NIST SP 811).
    expectClose((us.best?.flow ?? 0) * 3.785411784, metric.best.flow, { relative: SIX_DIGITS });
    expectClose((us.assurance?.badEnd?.flow ?? 0) * 3.785411784, metric.assurance?.badEnd?.flow ?? 0, {
      relative: SIX_DIGITS,
    });
  });
});

describe('an answer without an assurance', () => {
  it('says so', async () => {
    const answer = await ask();
    expect(answer.assurance).toBeNull();
    expect(answer.assumptions.assurance).toBeNull();
  });
});

describe('the uncertainty of a duty', () => {
  const graded = { ...example('pump-canister-250.json'), grade: '2B' };

  it('follows the grade of the pump, without any assurance', async () => {
    const { best: told } = await askBest({ pumps: [graded] });
    expect(told.uncertainty.grade).toBe('2B');
    const { flow, power, annualEnergy } = told.uncertainty;
    expect(flow.low).toBeLessThan(told.flow);
    expect(flow.high).toBeGreaterThan(told.flow);
    expect(power.low).toBeLessThanOrEqual(told.power);
    expect(power.high).toBeGreaterThanOrEqual(1.08 * told.power * (1 - SIX_DIGITS));
    expectClose(annualEnergy.high, 8.76 * power.high, { relative: SIX_DIGITS });
    expectClose(annualEnergy.low, 8.76 * power.low, { relative: SIX_DIGITS });
  });

  it('follows the grade that the assurance states where it states one', async () => {
    const { best: told } = await askBest({ pumps: [graded], assurance: { grade: '3B' } });
    expect(told.uncertainty.grade).toBe('3B');
  });

  it('tells the scatter of the points alone where there is no grade', async () => {
    const { grade: _, ...plain } = graded;
    const narrow = (await askBest({ pumps: [plain] })).best.uncertainty;
    const wide = (await askBest({ pumps: [graded] })).best.uncertainty;
    expect(narrow.grade).toBeNull();
    expect(narrow.flow.low).toBeGreaterThan(wide.flow.low);
  });

  it('holds the worst case of more friction', async () => {
    const { best: told, assurance } = await askBest({ assurance: { frictionMultiplier: 3 } });
    expect(told.uncertainty.flow.low).toBeLessThanOrEqual(assurance?.badEnd?.flow ?? 0);
  });

  it('stands in a duty point too', async () => {
    const id = await created(app, '/v1/pumps', graded);
    const duty = await answered(
      dutyPointAnswer.extend({ uncertainty }),
      await app.call(`${app.loop}/duty-point?pump=${id}&setting=70`),
    );
    const { best: told } = await askBest({ pumps: [graded] });
    expect(told.setting).toBe(70);
    expectClose(duty.uncertainty.flow.low, told.uncertainty.flow.low, { relative: SIX_DIGITS });
    expectClose(duty.uncertainty.power.high, told.uncertainty.power.high, { relative: SIX_DIGITS });
  });
});

describe('an assurance that cannot be', () => {
  it.each<[string, unknown, string]>([
    ['by calibration, which the loop has none of', 'calibration', '/assurance'],
    ['by another word', 'certain', '/assurance'],
    ['of nothing', {}, '/assurance'],
    ['that is null', null, '/assurance'],
    ['that is a number', 0.1, '/assurance'],
    ['that is a list', [{ margin: 0.1 }], '/assurance'],
    ['by an unknown grade', { grade: '4B' }, '/assurance/grade'],
    ['by a grade that is a number', { grade: 2 }, '/assurance/grade'],
    ['by a margin below 0', { margin: -0.01 }, '/assurance/margin'],
    ['by a margin beyond 10', { margin: 10.1 }, '/assurance/margin'],
    ['by a margin in words', { margin: '10 %' }, '/assurance/margin'],
    ['by a multiplier below 1', { frictionMultiplier: 0.99 }, '/assurance/frictionMultiplier'],
    ['by a multiplier beyond 100', { frictionMultiplier: 101 }, '/assurance/frictionMultiplier'],
    ['by a multiplier that is null', { frictionMultiplier: null }, '/assurance/frictionMultiplier'],
    ['by an unknown field', { margins: 0.1 }, '/assurance'],
    ['by two at once', { grade: '2B', margin: 0.1 }, '/assurance/margin'],
  ])('%s is refused at its place', async (_, assurance, pointer) => {
    const before = await storeOf(app);
    const response = await recommend(app, body({ assurance }));
    expect(response.status).toBe(422);
    const { errors } = await refused(response);
    expect(errors?.map((one) => one.pointer)).toContain(pointer);
    expect(await storeOf(app)).toEqual(before);
  });
});
