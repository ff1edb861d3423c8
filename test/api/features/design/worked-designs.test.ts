/** The two worked designs over HTTP, and the loops that they answer, stored and run as any other. */
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { type WorkedDesign, workedDesigns } from '../../../reference/worked-designs.ts';
import { created, sent } from '../../requests.ts';
import { answered, type StockedApp, stockedApp } from '../../stocked-app.ts';
import { bestOf, designAnswer } from './read-design.ts';
import { workedRequest } from './worked-request.ts';

/** Stated to the cent, and to six figures. */
const CENT = { absolute: 0.00501 };
const SIX_FIGURES = { relative: 5e-6 };

let app: StockedApp;
beforeAll(async () => {
  app = await stockedApp();
});

const designed = async (worked: WorkedDesign) =>
  answered(designAnswer, await app.call('/v1/designs', sent('POST', workedRequest(worked))));

const duty = z.object({
  power: z.number(),
  head: z.number(),
  outlets: z.array(z.object({ name: z.string(), flow: z.number(), requiredFlow: z.number() })),
});

describe.each(workedDesigns.map((worked) => [worked.loop.name, worked] as const))('%s', (_, worked) => {
  it('is answered as the enumeration found it, to the cent', async () => {
    const answer = await designed(worked);
    const best = bestOf(answer);
    const { candidate, setting, bores } = worked.best;
    expect([best.candidate, best.setting]).toEqual([candidate, setting]);
    expect(best.runs.map(({ pipe }) => pipe)).toEqual(bores.map((insideDiameter) => ({ insideDiameter })));
    for (const cost of ['pumpCost', 'energyCost', 'pipeCost', 'trimCost', 'presentValue'] as const) {
      expectClose(best[cost], worked.best[cost], CENT);
    }
    for (const figure of ['requiredHead', 'head', 'power'] as const) {
      expectClose(best[figure], worked.best[figure], SIX_FIGURES);
    }
    expect([answer.solution, answer.optimalityGap, answer.rejected]).toEqual(['optimal', 0, []]);
  });

  it('ranks the best design of each other pump', async () => {
    const { ranking } = await designed(worked);
    expect(ranking.map(({ candidate, setting }) => [candidate, setting])).toEqual(
      worked.others.map(({ candidate, setting }) => [candidate, setting]),
    );
    for (const [place, { presentValue }] of worked.others.entries()) {
      expectClose(ranking[place]?.presentValue ?? Number.NaN, presentValue, CENT);
    }
  });

  it('has a loop that gives each outlet its requirement at the stated power, once stored', async () => {
    const best = bestOf(await designed(worked));
    const loopId = await created(app, '/v1/loops', best.loop);
    const pumps = z.array(z.object({ pump: z.unknown() })).parse(workedRequest(worked).pumps);
    const pumpId = await created(app, '/v1/pumps', pumps[best.candidate]?.pump);
    const query = `pump=${pumpId}&count=${best.count}&setting=${best.setting}`;
    const found = await answered(duty, await app.call(`/v1/loops/${loopId}/duty-point?${query}`));
    for (const { flow, requiredFlow } of found.outlets) expectClose(flow, requiredFlow, { relative: 1e-4 });
    expectClose(found.power, best.power, { relative: 1e-4 });
    expectClose(found.head, best.head, { relative: 1e-4 });
  });

  it('keeps the frontier falling, with the chosen pipes on it', async () => {
    const answer = await designed(worked);
    const { frontier } = answer;
    for (const [place, { head, cost }] of frontier.slice(1).entries()) {
      expect(head).toBeGreaterThan(frontier[place]?.head ?? Number.NaN);
      expect(cost).toBeLessThan(frontier[place]?.cost ?? Number.NaN);
    }
    const best = bestOf(answer);
    expect(frontier).toContainEqual({ head: best.requiredHead, cost: best.pipeCost });
  });
});

describe('the first worked design', () => {
  const [one] = workedDesigns;

  it('says in its summary what it runs, what it costs and what the sizes bring', async () => {
    if (one === undefined) throw new Error('there is no worked design');
    const { summary } = await designed(one);
    expect(summary).toContain('Run pump "Small" at 82 % on loop "one run": 46.9 W, 411 kWh and EUR');
    expect(summary).toContain(
      'The design costs EUR 1511.55 over 10 years: pump EUR 362.42, energy EUR 973.63, pipes EUR 163.50, trims EUR 12.00.',
    );
    expect(summary).toContain('No trimmed design of these sizes and pumps costs less.');
    expect(summary).toMatch(/it has 53\.6 mm at \/discharge\/run\/0: /);
  });

  it('states what the next sizes would change', async () => {
    if (one === undefined) throw new Error('there is no worked design');
    const { sizeChanges, pipeCost } = bestOf(await designed(one));
    expect(sizeChanges.map(({ direction }) => direction)).toEqual(['smaller', 'larger']);
    // 15 m at 15.60 and at 7.20 in place of 10.90 a metre.
    expectClose(sizeChanges[1]?.cost ?? Number.NaN, 15 * 15.6 - pipeCost, { relative: 1e-9 });
    expectClose(sizeChanges[0]?.cost ?? Number.NaN, 15 * 7.2 - pipeCost, { relative: 1e-9 });
    for (const { presentValue = Number.NaN } of sizeChanges) expect(presentValue).toBeGreaterThan(1511.55);
  });
});
