/** Summaries of sites that are empty, large, scheduled, unpriced, or too large. */

import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { DEFAULT_SITE_ID } from '../../../../api/access/site.ts';
import { CALIBRATIONS } from '../../../../api/features/calibration/kind.ts';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import { PUMPS } from '../../../../api/records/pump/kind.ts';
import type { Kind } from '../../../../api/store/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { sameThread } from '../../../../api/threads/same-thread.ts';
import { TooMuchWaiting } from '../../../../api/threads/worker-pool.ts';
import { expectClose } from '../../../expect-close.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { created, example, sent } from '../../requests.ts';
import { answered, refused } from '../../stocked-app.ts';
import { summaryOf } from './read-summary.ts';
import { quickLoop, station } from './world.ts';

const pumpOf = (app: AppUnderTest, change: object = {}): Promise<string> =>
  created(app, '/v1/pumps', { ...example('pump-canister-250.json'), ...change });

describe('the summary of a site', () => {
  it('without loops is an answer', async () => {
    const app = await appUnderTest();
    const summary = await summaryOf(app);
    expect(summary).toMatchObject({
      power: 0,
      annualEnergy: 0,
      annualCost: 0,
      largestSavings: [],
    });
    expect(summary.summary).toBe('No loop with an installed pump is stored. There is nothing to sum.');
  });

  it('counts loops without a pump or a requirement, and sums the others', async () => {
    const app = await appUnderTest();
    const pump = await pumpOf(app);
    const installed = { pump, count: 1, setting: 60 };
    await created(app, '/v1/loops', quickLoop('no pump', 3000));
    const { outlets: _, ...idle } = quickLoop('no need', 0, installed);
    await created(app, '/v1/loops', { ...idle, outlets: [{ name: 'jet', share: 1 }] });
    await created(app, '/v1/loops', quickLoop('whole', 3000, installed));
    const { counts, canTurnDown } = await summaryOf(app);
    expect(counts).toMatchObject({ loops: 3, withoutPump: 1, withoutRequirement: 1 });
    expect(canTurnDown.loops.map(({ loop }) => loop.name)).toEqual(['whole']);
  });

  it('has no cost without a price, and then ranks by energy', async () => {
    const app = await appUnderTest();
    const pump = await pumpOf(app);
    for (const setting of [70, 90, 80]) {
      await created(app, '/v1/loops', quickLoop(`at ${setting}`, 3000, { pump, count: 1, setting }));
    }
    const summary = await summaryOf(app);
    expect(summary.annualCost).toBeNull();
    expect(summary.largestSavings.map(({ loop }) => loop.name)).toEqual(['at 90', 'at 80', 'at 70']);
    expect(summary.largestSavings[0]).toMatchObject({ annualCostSaving: null, payback: { simple: null } });
    expect(summary.summary).toContain('without a price');
  });

  it('goes page by page through many loops, and names the worst of them alone', async () => {
    const app = await appUnderTest();
    const pump = await pumpOf(app);
    const count = 70;
    for (let place = 0; place < count; place++) {
      const installed = { pump, count: 1, setting: 30 };
      await created(app, '/v1/loops', quickLoop(`loop ${place}`, 6000 + 10 * place, installed));
    }
    const one = await appUnderTest();
    const same = { pump: await pumpOf(one), count: 1, setting: 30 };
    await created(one, '/v1/loops', quickLoop('loop', 6000, same));
    const [all, single] = [await summaryOf(app), await summaryOf(one)];
    expect(all.counts.loops).toBe(count);
    expectClose(all.annualEnergy, count * single.annualEnergy, { relative: 1e-5 });
    expect(all.belowRequired.count).toBe(count);
    expect(all.belowRequired.loops).toHaveLength(50);
    expect(all.belowRequired.loops[0]?.loop.name).toBe(`loop ${count - 1}`);
    const margins = all.belowRequired.loops.map(({ margin }) => margin);
    expect(margins).toEqual(margins.toSorted((a, b) => a - b));
    // Asked again, all is known, and others still get their turn between the pages.
    let isDone = false;
    const again = summaryOf(app).finally(() => {
      isDone = true;
    });
    let turns = 0;
    for (; !isDone; turns++) await new Promise(setImmediate);
    expect(await again).toEqual(all);
    expect(turns).toBeGreaterThanOrEqual(Math.floor(count / 25));
  });

  it('looks through more pumps than one job takes', async () => {
    const app = await appUnderTest();
    const wasteful = { powerPoints: [{ setting: 100, power: 900 }], standbyPower: 0 };
    const installed = { pump: await pumpOf(app, wasteful), count: 1, setting: 100 };
    const others = 230;
    for (let place = 0; place < others; place++) {
      await pumpOf(app, { name: `pump ${place}`, powerPoints: [{ setting: 100, power: 800 - place }] });
    }
    await created(app, '/v1/loops', quickLoop('whole', 3000, installed));
    const { largestSavings: savings, counts } = await summaryOf(app);
    expect(counts.storedPumps).toBe(others + 1);
    expect(savings).toMatchObject([{ kind: 'pump', pump: { name: `pump ${others - 1}` } }]);
  });

  it('takes loops with a schedule by their year', async () => {
    const app = await station();
    const phases = [
      { name: 'day', from: '07:00', factor: 1 },
      { name: 'night', from: '22:00', factor: 0.6 },
    ];
    const path = `/v1/loops/${app.loops.bank}/schedule`;
    const before = await summaryOf(app);
    await app.call(path, sent('PUT', { phases }));
    const after = await summaryOf(app);
    const year = z.object({ annualEnergy: z.number(), annualCost: z.number() });
    const scheduled = await answered(year, await app.call(path));
    const duty = await answered(year, await app.call(`/v1/loops/${app.loops.bank}/duty-point`));
    expect(after.counts.scheduled).toBe(1);
    const less = duty.annualEnergy - scheduled.annualEnergy;
    expectClose(before.annualEnergy - after.annualEnergy, less, { relative: 1e-4 });
    const cheaper = duty.annualCost - scheduled.annualCost;
    expectClose((before.annualCost ?? 0) - (after.annualCost ?? 0), cheaper, { relative: 1e-4 });
    expect(after.largestSavings.find(({ loop }) => loop.id === app.loops.bank)).toMatchObject({
      kind: 'pump',
    });
  });

  it('names the phase in which a scheduled loop is short', async () => {
    const app = await station();
    const phases = [
      { name: 'feeding', from: '12:00', factor: 9 },
      { name: 'rest', from: '13:00', factor: 0.5 },
    ];
    await app.call(`/v1/loops/${app.loops.pool}/schedule`, sent('PUT', { phases }));
    const { belowRequired } = await summaryOf(app);
    const told = belowRequired.loops.find(({ loop }) => loop.id === app.loops.pool);
    expect(told).toMatchObject({ phase: 'feeding' });
  });
});

describe('the summary of a calibrated loop', () => {
  it('rests on the calibration: the same as of a loop of that friction, times the power', async () => {
    const single = async (frictionMultiplier: number) => {
      const app = await appUnderTest();
      const pump = await pumpOf(app);
      const installed = { pump, count: 1, setting: 90 };
      const flume = { ...example('loop-kelp-flume.json'), frictionMultiplier, installed };
      return { app, pump, loop: await created(app, '/v1/loops', flume) };
    };
    const { app, pump, loop } = await single(1);
    const { store } = app.api.deps;
    const { fit } = (await store.of(DEFAULT_SITE_ID, PUMPS).get(pump)) ?? expect.fail();
    const before = await summaryOf(app);
    const calibration = {
      ...{ parameters: [], from: 0, to: 1, readingCount: 9, modelVersion: '1', pump: { id: pump, fit } },
      factors: { friction: 1.5, head: 1, power: 1.2 },
      worstCase: { friction: 1.5, head: 1 },
    };
    await store
      .of(DEFAULT_SITE_ID, CALIBRATIONS)
      .apply({ id: loop, now: 1, expectedVersion: 'any', calibration });
    const after = await summaryOf(app);
    const entered = await summaryOf((await single(1.5)).app);
    expectClose(after.power, 1.2 * entered.power, { relative: 1e-5 });
    expect(after.power).not.toBe(before.power);
    expect(after.canTurnDown.loops[0]?.setting).toBe(entered.canTurnDown.loops[0]?.setting);
  });
});

/** A store that counts so many loops. */
const withLoops = (store: Store, loops: number): Store => ({
  ...store,
  of<Operations extends object>(siteId: string, kind: Kind<Operations>): Operations {
    const operations = store.of(siteId, kind);
    return kind.name === LOOPS.name ? { ...operations, count: async () => loops } : operations;
  },
});

describe('a summary is refused', () => {
  it('of more loops than it judges', async () => {
    const { api } = await appUnderTest();
    const store = withLoops(api.deps.store, 20_001);
    const problem = await refused(await (await appUnderTest({ change: { store } })).call('/v1/summary'));
    expect(problem).toMatchObject({ status: 422, code: 'limit-exceeded', limit: 20_000, actual: 20_001 });
  });

  it('of more loops times pumps than it judges', async () => {
    const plain = await appUnderTest();
    for (let place = 0; place < 30; place++) await pumpOf(plain);
    const store = withLoops(plain.api.deps.store, 20_000);
    const problem = await refused(await (await appUnderTest({ change: { store } })).call('/v1/summary'));
    expect(problem).toMatchObject({ code: 'limit-exceeded', limit: 500_000, actual: 600_000 });
  });

  it('for now, where too much long work waits', async () => {
    const workers = { ...sameThread, run: () => Promise.reject(new TooMuchWaiting()) };
    const response = await (await station({ workers })).call('/v1/summary');
    expect(response.headers.get('retry-after')).toBe('5');
    expect((await refused(response)).status).toBe(503);
  });

  it('with a parameter that it does not know', async () => {
    const problem = await refused(await (await appUnderTest()).call('/v1/summary?loops=3'));
    expect(problem).toMatchObject({ status: 422, errors: [{ parameter: 'loops' }] });
  });
});
