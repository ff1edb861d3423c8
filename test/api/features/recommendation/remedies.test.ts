/** Remedies over HTTP: the valve that makes a pump feasible, a loop that needs no pump, limits that a loop states itself. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { dutyPointAnswer, recommendationAnswer } from '../../read-answers.ts';
import { created, type Json, jsonOf, sent } from '../../requests.ts';
import { answered } from '../../stocked-app.ts';

const STATED = { relative: 1e-4 };

const rejected = recommendationAnswer.shape.rejected.element.extend({
  remedy: z
    .object({
      throttle: z.object({ head: z.number(), kv: z.number(), cv: z.number() }),
      ...{ setting: z.number(), flow: z.number(), power: z.number() },
      ...{ annualEnergy: z.number(), annualCost: z.number().nullable() },
    })
    .optional(),
});
const remedyAnswer = recommendationAnswer.extend({ rejected: z.array(rejected) });

let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

const pipe = (insideDiameter: number, length: number) => ({ pipe: { insideDiameter }, length });

/** H = 7 m (1 - (Q/14 000 L/h)^2). */
const PUMP_W = {
  name: 'Inline 70',
  headPoints: [0, 2800, 5600, 8400, 11_200, 12_600].map((flow) => ({
    flow,
    head: 7 * (1 - (flow / 14_000) ** 2),
  })),
  powerPoints: [
    { setting: 100, power: 400 },
    { setting: 30, power: 10.8 },
  ],
};

const line = (facts: Json = {}, outlet: Json = {}): Json => ({
  ...{ name: 'Sump return', water: { temperature: 25, salinity: 35 }, intake: { lossCoefficient: 0.5 } },
  suction: [pipe(45, 1)],
  discharge: { run: [pipe(38, 3)], outlet: { name: 'tank', requiredFlow: 5000, ...outlet } },
  ...facts,
});

const asked = async (loop: unknown, further: Json = {}, query = '') =>
  answered(
    remedyAnswer,
    await app.call(
      `/v1/recommendations${query}`,
      sent('POST', { loop, pumps: [PUMP_W], price: 0.2, ...further }),
    ),
  );

describe('a pump above its greatest flow', () => {
  const limited = { pumps: [{ ...PUMP_W, flowLimits: { max: 9000 } }] };

  it('is rejected with the valve that makes it feasible (figures of a separate calculation)', async () => {
    const answer = await asked(line(), limited);
    const [first] = answer.rejected;
    expect(answer.best).toBeNull();
    expect(first?.reasons).toEqual(['pump-above-maximum']);
    const { remedy } = first ?? {};
    expect(remedy?.setting).toBe(56);
    expectClose(remedy?.flow ?? 0, 5040, STATED);
    expectClose(remedy?.throttle.head ?? 0, 1.04243, STATED);
    expectClose(remedy?.throttle.kv ?? 0, 15.7633, STATED);
    expectClose(remedy?.throttle.cv ?? 0, 18.2239, STATED);
    // Of the exponent through both points, k = ln(400/10.8)/ln(100/30) = 3: 400 W x 0.56^3, 8760 h, 0.2 a kWh.
    const power = 400 * 0.56 ** (Math.log(400 / 10.8) / Math.log(100 / 30));
    expectClose(remedy?.power ?? 0, power, STATED);
    expectClose(remedy?.annualEnergy ?? 0, 8.76 * power, STATED);
    expectClose(remedy?.annualCost ?? 0, 0.2 * 8.76 * power, STATED);
    expect(answer.summary).toContain('A valve of Kv 15.76');
  });

  it('has the remedy in the units that are asked for', async () => {
    // A stored loop is the same loop in either system.
    const id = await created(app, '/v1/loops', line());
    const pump = await created(app, '/v1/pumps', limited.pumps[0]);
    const us = await asked(id, { pumps: [pump] }, '?units=us');
    expectClose(us.rejected[0]?.remedy?.throttle.head ?? 0, 1.04243 / 0.3048, STATED);
    expectClose(us.rejected[0]?.remedy?.flow ?? 0, 5040 / 3.785411784, STATED);
  });

  it('has no remedy where another reason would stay', async () => {
    const [first] = (await asked(line({}, { requiredFlow: 9500 }), limited)).rejected;
    expect(first?.remedy).toBeUndefined();
  });
});

describe('a loop that gravity serves', () => {
  const falling = (facts: Json = {}) => line({ staticHead: -0.3, ...facts });

  it('says so first, with the flow that runs, and chooses a pump all the same', async () => {
    const { best, cautions, summary } = await asked(falling());
    expect(best).not.toBeNull();
    const note = cautions.find(({ code }) => code === 'gravity-suffices');
    expect(note).toMatchObject({ severity: 'note', limit: 5000, quantity: 'flow' });
    expect(note?.value).toBeGreaterThan(5000);
    expect(summary).toMatch(
      /^No pump is needed: [\d,. ]+ L\/h runs by gravity alone, 5000 L\/h is required\. /,
    );
  });

  it('rejects every pump where the request or the loop asks for it', async () => {
    const limits = { gravity: 'reject' };
    for (const answer of [await asked(falling(), { limits }), await asked(falling({ limits }))]) {
      expect(answer.best).toBeNull();
      expect(answer.rejected.map(({ reasons }) => reasons)).toEqual([['gravity-suffices']]);
    }
    expect((await asked(falling({ limits }), { limits: { gravity: 'report' } })).best).not.toBeNull();
  });

  it('says so of a duty point too', async () => {
    const loop = await created(app, '/v1/loops', falling());
    const pump = await created(app, '/v1/pumps', PUMP_W);
    const answer = await answered(
      dutyPointAnswer,
      await app.call(`/v1/loops/${loop}/duty-point?pump=${pump}&setting=60`),
    );
    expect(answer.cautions.map(({ code }) => code)).toContain('gravity-suffices');
    expect(answer.summary).toMatch(/^No pump is needed/);
  });
});

describe('the limits of a loop', () => {
  it('hold in every answer about it that states no other, and are read back as entered', async () => {
    const limits = { maximumEfficiency: 0.05 };
    const loop = await created(app, '/v1/loops', line({ limits }));
    const stored = await jsonOf(await app.call(`/v1/loops/${loop}`));
    expect(stored.limits).toEqual(limits);
    const answer = await asked(loop);
    expect(answer.rejected[0]?.reasons).toContain('efficiency-impossible');
    expect((await asked(loop, { limits: { maximumEfficiency: 0.9 } })).best).not.toBeNull();
    // A limit that the request leaves out is still the loop's.
    const other = await asked(loop, { limits: { pipeVelocity: 3 } });
    expect(other.rejected[0]?.reasons).toContain('efficiency-impossible');
  });
});
