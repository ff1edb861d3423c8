/** The summary of a site, held against the answers about each of its loops. */
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { dutyPointAnswer, recommendationAnswer } from '../../read-answers.ts';
import { sent } from '../../requests.ts';
import { answered } from '../../stocked-app.ts';
import { summaryOf } from './read-summary.ts';
import { type Station, station } from './world.ts';

/** Answers have six digits; sums of them lose a few. */
const SUMMED = { relative: 1e-5 };
const DIFFERENCE = { relative: 1e-4, absolute: 1e-3 };

let app: Station;
beforeAll(async () => {
  app = await station();
});

const dutyOf = async (loop: string) =>
  answered(dutyPointAnswer, await app.call(`/v1/loops/${loop}/duty-point`));
const bestsOf = async (loop: string) =>
  answered(recommendationAnswer, await app.call(`/v1/loops/${loop}/recommendation`));

describe('the summary of a site', () => {
  it('sums the duty points of its loops as they are installed', async () => {
    const summary = await summaryOf(app);
    const duties = await Promise.all(Object.values(app.loops).map(dutyOf));
    const sum = (figure: (duty: (typeof duties)[number]) => number | null) =>
      duties.reduce((total, duty) => total + (figure(duty) ?? Number.NaN), 0);
    expectClose(
      summary.power,
      sum(({ power }) => power),
      SUMMED,
    );
    expectClose(
      summary.annualEnergy,
      sum(({ annualEnergy }) => annualEnergy),
      SUMMED,
    );
    expectClose(
      summary.annualCost ?? 0,
      sum(({ annualCost }) => annualCost),
      SUMMED,
    );
    expect(summary).toMatchObject({ currency: 'EUR' });
    expect(summary.counts).toEqual({
      ...{ loops: 4, scheduled: 0, withoutPump: 0, withoutRequirement: 0, unsolved: 0 },
      ...{ installedPumps: 6, storedPumps: 4 },
    });
  });

  it('names the loops of which an outlet is below its required flow, and no other', async () => {
    const { belowRequired } = await summaryOf(app);
    for (const [name, loop] of Object.entries(app.loops)) {
      const worst = (await dutyOf(loop)).outlets
        .filter(({ margin }) => margin !== null && margin < 0)
        .toSorted((a, b) => (a.margin ?? 0) - (b.margin ?? 0))[0];
      const told = belowRequired.loops.find((one) => one.loop.id === loop);
      expect(told?.outlet, name).toBe(worst?.name);
      if (told !== undefined && worst !== undefined) expectClose(told.flow, worst.flow, SUMMED);
    }
    expect(belowRequired).toMatchObject({
      count: 1,
      loops: [{ loop: { name: 'Kelp flume' }, outlet: 'far end' }],
    });
  });

  it('tells what the pump that is there saves at the lowest setting that serves', async () => {
    const { canTurnDown } = await summaryOf(app);
    const { loop, setting, annualEnergySaving, annualCostSaving } = canTurnDown.loops[0] ?? expect.fail();
    expect(loop.id).toBe(app.loops.raceways);
    const path = `/v1/loops/${app.loops.raceways}/recommendation?pump=${app.pumps.large}`;
    const { best } = await answered(recommendationAnswer, await app.call(path));
    const now = await dutyOf(app.loops.raceways);
    expect(setting).toBe(best?.setting);
    expectClose(annualEnergySaving, now.annualEnergy - (best?.annualEnergy ?? 0), DIFFERENCE);
    expectClose(annualCostSaving ?? 0, (now.annualCost ?? 0) - (best?.annualCost ?? 0), DIFFERENCE);
  });

  it('finds of each loop the saving of the best pump that the recommendation finds', async () => {
    const { largestSavings: savings } = await summaryOf(app);
    const { bank } = app.loops;
    const saving = savings.find(({ loop }) => loop.id === bank) ?? expect.fail();
    const other = (await bestsOf(bank)).ranking.find(({ pump }) => pump.id !== app.pumps.small);
    const now = await dutyOf(bank);
    expect(saving).toMatchObject({ kind: 'pump', count: 1, pump: { id: other?.pump.id }, purchaseCost: 780 });
    expect(saving.setting).toBe(other?.setting);
    expectClose(saving.annualCostSaving ?? 0, (now.annualCost ?? 0) - (other?.annualCost ?? 0), DIFFERENCE);
    expectClose(saving.payback.simple ?? 0, 780 / (saving.annualCostSaving ?? 0), { relative: 1e-4 });
    const beyond = (saving.annualCostSaving ?? 0) - (saving.turnDown?.annualCostSaving ?? 0);
    expectClose(saving.payback.beyondTurnDown ?? 0, 780 / beyond, { relative: 1e-3 });
  });

  it('ranks savings by money, at most one a loop, and pays nothing for a setting', async () => {
    const { largestSavings: savings } = await summaryOf(app);
    const money = savings.map(({ annualCostSaving }) => annualCostSaving ?? 0);
    expect(money).toEqual(money.toSorted((a, b) => b - a));
    expect(new Set(savings.map(({ loop }) => loop.id)).size).toBe(savings.length);
    expect(savings[0]).toMatchObject({
      kind: 'setting',
      pump: null,
      purchaseCost: 0,
      payback: { simple: 0 },
    });
  });

  it('counts the service of installed pumps: devices x minutes x times a year', async () => {
    const { upkeep } = await summaryOf(app);
    const pumps = await Promise.all(
      Object.values(app.loops).map(async (loop) => {
        const { installed } = z
          .object({ installed: z.object({ pump: z.string(), count: z.int() }) })
          .parse(JSON.parse(await (await app.call(`/v1/loops/${loop}`)).text()));
        const pump = JSON.parse(await (await app.call(`/v1/pumps/${installed.pump}`)).text());
        return { ...pump.service, count: installed.count };
      }),
    );
    const hours = pumps.reduce(
      (sum, one) => sum + (one.count * (12 / one.everyMonths) * one.minutes) / 60,
      0,
    );
    const parts = pumps.reduce((sum, one) => sum + one.count * (12 / one.everyMonths) * one.parts, 0);
    expectClose(upkeep.service.annualHours, hours, SUMMED);
    expectClose(upkeep.service.annualParts, parts, SUMMED);
    expectClose(upkeep.annualCost ?? 0, 30 * hours + parts, SUMMED);
  });

  it('is told in sentences, with what to look at first, and cautions', async () => {
    const { summary, cautions } = await summaryOf(app);
    expect(summary).toContain('Kelp flume');
    expect(summary).toContain('Nursery raceways at setting');
    const codes = cautions.map(({ code }) => code);
    expect(codes).toEqual(['outlets-below-required', 'savings-before-check', 'site-as-stated', 'estimate']);
  });

  it('is a table of savings in CSV, one value by its pointer, and in other units', async () => {
    const csv = await (await app.call('/v1/summary', { headers: { Accept: 'text/csv' } })).text();
    expect(csv.split('\r\n')[0]).toBe(
      'loopName,kind,pumpName,count,setting [%],annualEnergySaving [kWh],annualCostSaving [EUR],purchaseCost [EUR],paybackSimple,paybackBeyondTurnDown',
    );
    const power = await app.call('/v1/summary?pointer=/power');
    expectClose(Number(await power.text()), (await summaryOf(app)).power, SUMMED);
    const us = await summaryOf(app, '?units=us');
    expectClose(us.belowRequired.loops[0]?.requiredFlow ?? 0, 3000 / 3.785411784, SUMMED);
  });

  it('is answered by 304 until something changes', async () => {
    const etag = (await app.call('/v1/summary')).headers.get('etag') ?? '';
    const again = { headers: { 'If-None-Match': etag } };
    expect((await app.call('/v1/summary', again)).status).toBe(304);
    const before = await summaryOf(app);
    const site = JSON.parse(await (await app.call('/v1/site')).text());
    await app.call('/v1/site', sent('PUT', { ...site, price: 0.42 }, { 'If-Match': '*' }));
    expect((await app.call('/v1/summary', again)).status).toBe(200);
    const after = await summaryOf(app);
    expectClose(after.annualCost ?? 0, 2 * (before.annualCost ?? 0), SUMMED);
    expectClose(after.annualEnergy, before.annualEnergy, SUMMED);
  });
});
