/** A large pump run slow against one of the right size, as more of its power is entered. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { recommendationAnswer } from '../../read-answers.ts';
import { sent } from '../../requests.ts';
import { answered } from '../../stocked-app.ts';

const closeAnswer = recommendationAnswer.extend({
  best: recommendationAnswer.shape.best
    .unwrap()
    .extend({ closeTo: z.array(z.int()) })
    .nullable(),
});

let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

/** A short line, which needs less than a metre. */
const LOOP = {
  name: 'Reef return',
  water: { temperature: 25, salinity: 35 },
  suction: [{ pipe: { insideDiameter: 50 }, length: 1 }],
  discharge: {
    run: [{ pipe: { insideDiameter: 40 }, length: 4 }],
    outlet: { name: 'tank', requiredFlow: 5000 },
  },
};

type Powers = readonly (readonly [setting: number, power: number])[];

/** A pump whose head is shutoff x (1 - (Q/zero)^2) at full speed. */
const pump = (
  name: string,
  { shutoff, zero, powers }: { shutoff: number; zero: number; powers: Powers },
) => ({
  name,
  headPoints: [0, 0.2, 0.4, 0.6, 0.8, 0.9].map((share) => ({
    flow: share * zero,
    head: shutoff * (1 - share ** 2),
  })),
  powerPoints: powers.map(([setting, power]) => ({ setting, power })),
  settings: { min: 15, max: 100, step: 1 },
});

const LARGE = { shutoff: 24, zero: 40_000 };
const right = pump('Canister 200', {
  ...{ shutoff: 6, zero: 10_000 },
  powers: [
    [100, 200],
    [40, 25],
  ],
});

async function asked(powers: Powers, price?: number) {
  const pumps = [pump('Giant 1200', { ...LARGE, powers }), right];
  const body = { loop: LOOP, pumps, ...(price === undefined ? {} : { price }) };
  const answer = await answered(closeAnswer, await app.call('/v1/recommendations', sent('POST', body)));
  const { best, ranking, summary } = answer;
  const large = ranking.find(({ candidate }) => candidate === 0);
  if (best === null || large === undefined) throw new Error('a pump does not serve');
  return { best, large, summary };
}

/** P = 1200 W (s + (1 - s) r^3) at a setting [%]. */
const assumed = (setting: number, share: number): number =>
  1200 * (share + (1 - share) * (setting / 100) ** 3);

describe('a large pump run slow', () => {
  it('entered at one speed does not win by a cube of speed, and is said to be too close to call', async () => {
    const { best, large, summary } = await asked([[100, 1200]]);
    expect(best.pump.name).toBe('Canister 200');
    expect(best.closeTo).toEqual([0]);
    expectClose(large.power, assumed(large.setting, 0.08), { relative: 1e-5 });
    // By the cube alone it would have been the cheaper of the two by far.
    expect(assumed(large.setting, 0)).toBeLessThan(best.power);
    expectClose(large.uncertainty.laws.power.low, assumed(large.setting, 0), { relative: 1e-5 });
    expectClose(large.uncertainty.laws.power.high, assumed(large.setting, 0.2), { relative: 1e-5 });
    expect(summary).toContain('too close to call against pump "Giant 1200"');
    expect(summary).toContain(`Measure the power of pump "Giant 1200" at ${large.setting} %`);
    expect(large.cautions.map(({ code }) => code)).toContain('power-exponent-assumed');
  });

  it('entered at two speeds lies between both laws', async () => {
    const { best, large, summary } = await asked([
      [100, 1200],
      [80, 700],
    ]);
    const r = large.setting / 100;
    // k = ln(700/1200)/ln 0.8 = 2.415; F = (700 - 1200 x 0.512)/0.488 = 175.41 W.
    const byExponent = 1200 * r ** (Math.log(700 / 1200) / Math.log(0.8));
    const fixed = (700 - 1200 * 0.512) / 0.488;
    const byFixedLoss = fixed + (1200 - fixed) * r ** 3;
    expectClose(large.power, byFixedLoss, { relative: 1e-5 });
    expectClose(large.uncertainty.laws.power.low, byExponent, { relative: 1e-5 });
    expectClose(large.uncertainty.laws.power.high, byFixedLoss, { relative: 1e-5 });
    expect(best).toMatchObject({ pump: { name: 'Canister 200' }, closeTo: [0] });
    expect(summary).toContain('too close to call');
    const [caution] = large.cautions.filter(({ code }) => code === 'power-extrapolated');
    expect(caution).toMatchObject({
      severity: 'warning',
      value: large.setting,
      limit: 80,
      quantity: 'speed',
    });
  });

  it('entered at four speeds, down to where it runs, is the dearer one', async () => {
    const { best, large, summary } = await asked([
      [100, 1200],
      [80, 700],
      [50, 330],
      [15, 180],
    ]);
    expect(large.uncertainty.laws.power.low).toBe(large.uncertainty.laws.power.high);
    expect(large.power).toBeGreaterThan(150);
    expect(best).toMatchObject({ pump: { name: 'Canister 200' }, closeTo: [] });
    expect(summary).not.toContain('too close to call');
  });

  it('is compared by cost where there is a price, with the same outcome', async () => {
    expect((await asked([[100, 1200]], 0.3)).best.closeTo).toEqual([0]);
  });
});
