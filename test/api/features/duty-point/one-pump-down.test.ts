/** Parallel pumps of which one stands still, over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { dutyPointAnswer, recommendationAnswer } from '../../read-answers.ts';
import { created, example, type Json } from '../../requests.ts';
import { answered, recommend, type StockedApp, stockedApp } from '../../stocked-app.ts';

const onePumpStopped = z
  .object({
    checkValves: z.boolean(),
    requiredFlowsMet: z.boolean(),
    flow: z.number(),
    backflow: z.number(),
    power: z.number(),
    outlets: z.array(
      z.object({
        name: z.string(),
        flow: z.number(),
        requiredFlow: z.number().nullable(),
        margin: z.number().nullable(),
      }),
    ),
  })
  .nullable();
const answer = dutyPointAnswer.extend({ onePumpStopped });

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const duty = async (query: string, loop = app.loop) =>
  answered(answer, await app.call(`${loop}/duty-point?pump=${app.pumpId}&${query}`));

async function flumeWith(installed: Json): Promise<string> {
  const document = { ...example('loop-kelp-flume.json'), installed: { pump: app.pumpId, ...installed } };
  return `/v1/loops/${await created(app, '/v1/loops', document)}`;
}

describe('one pump down', () => {
  it('behind check valves is the duty of the others, outlet by outlet', async () => {
    const [three, two] = [await duty('setting=60&count=3'), await duty('setting=60&count=2')];
    expect(three.onePumpStopped).toMatchObject({
      ...{ checkValves: true, backflow: 0, flow: two.flow, power: two.power },
      outlets: two.outlets.map(({ name, flow, requiredFlow, margin }) => ({
        name,
        flow,
        requiredFlow,
        margin,
      })),
    });
    expect(three.cautions.map(({ code }) => code)).toContain('check-valves-assumed');
  });

  it('is told apart from a loop that is still served', async () => {
    expect((await duty('setting=60&count=2')).onePumpStopped?.requiredFlowsMet).toBe(false);
    expect((await duty('setting=90&count=2')).onePumpStopped?.requiredFlowsMet).toBe(true);
  });

  it('without check valves leaves the loop less, and sends water back', async () => {
    const stated = await flumeWith({ count: 2, setting: 80, checkValves: true });
    const without = await flumeWith({ count: 2, setting: 80, checkValves: false });
    const query = 'setting=80&count=2';
    const [held, open] = [await duty(query, stated), await duty(query, without)];
    expect(open.onePumpStopped).toMatchObject({ checkValves: false });
    expect(open.onePumpStopped?.backflow).toBeGreaterThan(0);
    expect(open.onePumpStopped?.flow).toBeLessThan(held.onePumpStopped?.flow ?? 0);
    const codes = (found: typeof held) => found.cautions.map(({ code }) => code);
    expect(codes(open)).toContain('idle-pump-backflow');
    expect(codes(held)).not.toContain('idle-pump-backflow');
    expect(codes(held)).not.toContain('check-valves-assumed');
    // Both pumps run: the valves make no difference.
    expect(open.flow).toBe(held.flow);
  });

  it('is null for a single pump, and where none moves water', async () => {
    expect((await duty('setting=70')).onePumpStopped).toBeNull();
    const lifted = { ...example('loop-kelp-flume.json'), staticHead: 30 };
    const loop = `/v1/loops/${await created(app, '/v1/loops', lifted)}`;
    expect(await duty('setting=70&count=2', loop)).toMatchObject({ flow: 0, onePumpStopped: null });
  });

  it('comes with a recommendation, the same in US units', async () => {
    const shape = recommendationAnswer.shape.best.unwrap().extend({ onePumpStopped });
    const reading = recommendationAnswer.extend({ best: shape });
    const body = { loop: app.loopId, pumps: [{ pump: app.pumpId, count: 2 }] };
    const metric = await answered(reading, await recommend(app, body));
    const us = await answered(reading, await recommend(app, body, '?units=us'));
    const down = metric.best.onePumpStopped;
    const at = await duty(`setting=${metric.best.setting}&count=1`);
    expectClose(down?.flow ?? 0, at.flow, { relative: 1e-5 });
    // 3.785411784 L a US gallon by definition (NIST SP 811).
    expectClose((us.best.onePumpStopped?.flow ?? 0) * 3.785411784, down?.flow ?? 0, { relative: 1e-5 });
    expect(us.best.onePumpStopped?.requiredFlowsMet).toBe(down?.requiredFlowsMet);
  });
});
