/** Trimmed recommendations over HTTP: the valve to set, and what that saves. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { recommendationAnswer } from '../../read-answers.ts';
import { example, type Json } from '../../requests.ts';
import { answered, recommend, type StockedApp, stockedApp } from '../../stocked-app.ts';

const SIX_DIGITS = 1e-5;

const trim = z.object({
  pointer: z.string(),
  closed: z.boolean(),
  valvePointer: z.string().nullable(),
  opening: z.number().nullable(),
});
const trimmedAnswer = recommendationAnswer.extend({
  best: recommendationAnswer.shape.best
    .unwrap()
    .extend({ trims: z.array(trim) })
    .nullable(),
  trimEffect: z
    .object({
      candidate: z.int(),
      pump: z.object({ name: z.string() }),
      count: z.int(),
      setting: z.number(),
      annualEnergy: z.number(),
      annualCost: z.number().nullable(),
      annualEnergySaving: z.number(),
      annualCostSaving: z.number().nullable(),
    })
    .nullable(),
});

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

/** The flume with a valve in its second branch. */
function flume(valve: Json): Json {
  const loop = structuredClone(example('loop-kelp-flume.json'));
  const shape = z.object({
    discharge: z.looseObject({ branches: z.array(z.looseObject({ run: z.array(z.unknown()) })) }),
  });
  const { discharge } = shape.parse(loop);
  discharge.branches[1]?.run.push(valve);
  return { ...loop, discharge };
}

async function ask(loop: Json, balancing: 'as-built' | 'trimmed', further: Json = {}) {
  const pumps = [example('pump-canister-250.json'), example('pump-canister-600.json')];
  const answer = await answered(
    trimmedAnswer,
    await recommend(app, { loop, pumps, price: 0.21, balancing, ...further }),
  );
  if (answer.best === null) throw new Error('there is no best');
  return { ...answer, best: answer.best };
}

describe('a trimmed recommendation', () => {
  it('tells the valve of the branch and the opening that makes the trim', async () => {
    const { best } = await ask(flume({ valve: 'ball' }), 'trimmed');
    const [first] = best.trims;
    expect(first).toMatchObject({
      pointer: '/discharge/branches/1',
      valvePointer: '/discharge/branches/1/run/1',
    });
    const opening = first?.opening ?? Number.NaN;
    // The loop as built with that opening is the trimmed loop.
    const set = await ask(flume({ valve: 'ball', opening }), 'as-built');
    expect(set.best.setting).toBe(best.setting);
    expectClose(set.best.flow, best.flow, { relative: SIX_DIGITS });
    expectClose(set.best.annualCost ?? 0, best.annualCost ?? 0, { relative: SIX_DIGITS });
  });

  it('tells no valve where none is known', async () => {
    const { best } = await ask(flume({ valve: { kv: 30 } }), 'trimmed');
    expect(best.trims[0]).toMatchObject({ valvePointer: null, opening: null });
  });

  it('saves the difference of two full requests', async () => {
    const loop = flume({ valve: 'ball' });
    const [trimmed, asBuilt] = [await ask(loop, 'trimmed'), await ask(loop, 'as-built')];
    const { trimEffect: saved } = trimmed;
    expect(saved).toMatchObject({
      ...{ candidate: asBuilt.best.candidate, setting: asBuilt.best.setting, count: 1 },
      ...{ annualEnergy: asBuilt.best.annualEnergy, annualCost: asBuilt.best.annualCost },
    });
    const rounding = { absolute: SIX_DIGITS * asBuilt.best.annualEnergy };
    expectClose(
      saved?.annualEnergySaving ?? 0,
      asBuilt.best.annualEnergy - trimmed.best.annualEnergy,
      rounding,
    );
    expectClose(
      saved?.annualCostSaving ?? 0,
      (asBuilt.best.annualCost ?? 0) - (trimmed.best.annualCost ?? 0),
      rounding,
    );
    expect(saved?.annualEnergySaving).toBeGreaterThan(0);
    expect(asBuilt.trimEffect).toBeNull();
    expect(asBuilt.best.trims).toEqual([]);
  });

  it('tells energy alone where there is no price', async () => {
    const site = { ...example('site.json'), price: null };
    const headers = { 'If-Match': '*', 'Content-Type': 'application/json' };
    const put = await app.call('/v1/site', { method: 'PUT', headers, body: JSON.stringify(site) });
    expect(put.status).toBe(200);
    const { trimEffect } = await ask(flume({ valve: 'ball' }), 'trimmed', { price: undefined });
    expect(trimEffect).toMatchObject({ annualCost: null, annualCostSaving: null });
    expect(trimEffect?.annualEnergySaving).toBeGreaterThan(0);
  });

  it('has nothing to compare with where the loop as built is served by no setting', async () => {
    // Above the maximum everywhere as built: the near outlets take what the far end needs pushed through.
    const loop = flume({ valve: 'ball' });
    const text = JSON.stringify(loop).replaceAll(
      '"requiredFlow":2000',
      '"requiredFlow":2000,"maximumFlow":2150',
    );
    const { trimEffect, best } = await ask(JSON.parse(text), 'trimmed');
    expect(best.trims.length).toBeGreaterThan(0);
    expect(trimEffect).toBeNull();
  });
});

describe('a trimmed loop with an outlet that requires nothing', () => {
  /** The flume whose right outlet rests; or is not there at all, by another way to the same water. */
  const resting = (): Json =>
    JSON.parse(
      JSON.stringify(example('loop-kelp-flume.json')).replace(
        '"name":"right","requiredFlow":2000',
        '"name":"right","requiredFlow":0',
      ),
    );
  function without(): Json {
    const text = JSON.stringify(resting());
    const right = '{"run":[],"outlet":{"name":"right","requiredFlow":0,"nozzleDiameter":14}}';
    return JSON.parse(text.replace(`,${right}`, ''));
  }

  it('requires what the others do, the resting one shut', async () => {
    const answer = await ask(resting(), 'trimmed');
    // 3000 + 2000 L/h, and the head of a loop that has no such outlet.
    expectClose(answer.requiredDuty?.flow ?? 0, 5000, { relative: SIX_DIGITS });
    const { best, requiredDuty } = await ask(without(), 'trimmed');
    expectClose(answer.requiredDuty?.head ?? 0, requiredDuty?.head ?? 1, { relative: SIX_DIGITS });
    expect(answer.best.setting).toBe(best.setting);
    expectClose(answer.best.power, best.power, { relative: SIX_DIGITS });
    expect(answer.best.outlets.find(({ name }) => name === 'right')).toMatchObject({ flow: 0 });
    expect(answer.best.trims.find(({ closed }) => closed)?.pointer).toBe('/discharge/branches/1/branches/1');
  });
});
