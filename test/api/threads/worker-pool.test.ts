/** Long work beside the thread that answers: the same answers, small questions not delayed, a full queue refused. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sameThread } from '../../../api/threads/same-thread.ts';
import { TooMuchWaiting } from '../../../api/threads/worker-pool.ts';
import { appUnderTest } from '../app-under-test.ts';
import { type Child, runTypescript } from '../child-process.ts';
import { example, type Json, jsonOf, sent } from '../requests.ts';
import { recommend, refused, stockedApp } from '../stocked-app.ts';
import { removeDirectory, temporaryDirectory } from '../store/opened.ts';

const PATIENCE = 120_000;
/** Enough for a selection of one pump to be called long, and for a duty point. */
const OUTLETS = { selection: 400, dutyPoint: 1200 } as const;

const manifold = (outlets: number): Json => ({
  name: 'Manifold',
  suction: [{ pipe: { insideDiameter: 60 }, length: 1 }],
  discharge: {
    run: [{ pipe: { insideDiameter: 60 }, length: 1 }],
    branches: Array.from({ length: outlets }, (_, i) => ({
      run: [
        { pipe: { insideDiameter: 16 }, length: 1 + i / 100 },
        { loss: { head: 1.5, flow: 4800 / outlets } },
      ],
      outlet: { name: `outlet ${i}`, requiredFlow: 4000 / outlets },
    })),
    split: 'tee-90',
  },
});
const question: Json = {
  loop: manifold(OUTLETS.selection),
  pumps: [example('pump-canister-250.json')],
  price: 0.21,
};

describe('the process', () => {
  let directory: string;
  let child: Child;
  let url: string;
  beforeAll(async () => {
    directory = temporaryDirectory();
    child = runTypescript('api/main.ts', [], { cwd: directory, env: { PORT: '0', LOG_LEVEL: 'info' } });
    await child.untilOutputHas('"listening"');
    url = /"url":"([^"]+)"/.exec(child.output())?.[1] ?? '';
  }, PATIENCE);
  afterAll(async () => {
    child.process.kill('SIGKILL');
    await child.ended;
    removeDirectory(directory);
  });

  const ask = (body: Json) => fetch(`${url}/v1/recommendations`, sent('POST', body));

  it(
    'answers a long selection in a thread as it is answered in the thread that asks',
    async () => {
      const app = await appUnderTest();
      const here = await recommend(app, question);
      const there = await ask(question);
      expect([here.status, there.status]).toEqual([200, 200]);
      const answer = await jsonOf(there);
      expect(answer.best).not.toBeNull();
      expect(answer).toEqual(await jsonOf(here));
    },
    PATIENCE,
  );

  it(
    'answers long system curves and duty points alike',
    async () => {
      const app = await stockedApp();
      const path = async (call: typeof app.call) => {
        const pump = await jsonOf(await call('/v1/pumps', sent('POST', example('pump-canister-250.json'))));
        const loop = await jsonOf(await call('/v1/loops', sent('POST', manifold(OUTLETS.dutyPoint))));
        return [
          `/v1/loops/${loop.id}/system-curve?points=500`,
          `/v1/loops/${loop.id}/duty-point?pump=${pump.id}`,
        ];
      };
      const call: typeof app.call = (where, init) => fetch(`${url}${where}`, init);
      const [here, there] = [await path(app.call), await path(call)];
      for (const [place, where] of there.entries()) {
        const local = await jsonOf(await app.call(here[place] ?? ''));
        const remote = await jsonOf(await call(where));
        expect(remote.points).toEqual(local.points);
        expect(remote.outlets).toEqual(local.outlets);
        expect(remote.flow).toEqual(local.flow);
      }
    },
    PATIENCE,
  );

  it(
    'plans a large loop alike',
    async () => {
      const app = await stockedApp();
      const setpoint = async (call: typeof app.call) => {
        const pump = await jsonOf(await call('/v1/pumps', sent('POST', example('pump-canister-250.json'))));
        const installed = { pump: pump.id, count: 1, setting: 80 };
        const body = { ...manifold(OUTLETS.selection), installed };
        const loop = await jsonOf(await call('/v1/loops', sent('POST', body)));
        const { basis, from, to, summary, ...figures } = await jsonOf(
          await call(`/v1/loops/${loop.id}/setpoint`),
        );
        return figures;
      };
      const there = await setpoint(async (where, init) => fetch(`${url}${where}`, init));
      expect(there.setting).toBeGreaterThan(0);
      expect(there).toEqual(await setpoint(app.call));
    },
    PATIENCE,
  );

  it(
    'refuses what no longer fits into its queue, and answers the rest and small questions',
    async () => {
      const pump = await fetch(`${url}/v1/pumps`, sent('POST', example('pump-canister-250.json')));
      const loop = await fetch(`${url}/v1/loops`, sent('POST', manifold(OUTLETS.dutyPoint)));
      expect([pump.status, loop.status]).toEqual([201, 201]);
      const path = `${url}${loop.headers.get('location')}/recommendation`;
      const many = Array.from({ length: 80 }, (_, i) => fetch(`${path}?price=${i}`));
      const small = await fetch(`${url}/v1/reference/water`);
      expect(small.status).toBe(200);
      const responses = await Promise.all(many);
      const answered = responses.filter(({ status }) => status === 200);
      const turnedAway = responses.filter(({ status }) => status === 503);
      expect(answered.length + turnedAway.length).toBe(80);
      expect(answered.length).toBeGreaterThanOrEqual(32);
      expect(turnedAway.length).toBeGreaterThan(0);
      for (const response of turnedAway) {
        expect(Number(response.headers.get('retry-after'))).toBeGreaterThan(0);
        expect((await refused(response)).code).toBe('unavailable');
      }
      expect((await ask(question)).status).toBe(200);
    },
    PATIENCE,
  );

  it(
    'stops at once although threads are waiting for work',
    async () => {
      child.process.kill('SIGTERM');
      expect(await child.ended).toBe(0);
      expect(child.errors()).toBe('');
    },
    PATIENCE,
  );
});

describe('a queue that is full', () => {
  it('is told as 503 with the time to wait, on every route that computes', async () => {
    const full = { ...sameThread, run: () => Promise.reject(new TooMuchWaiting()) };
    const app = await stockedApp({ workers: full });
    const { id } = await jsonOf(await app.call('/v1/loops', sent('POST', manifold(OUTLETS.dutyPoint))));
    for (const response of [
      await recommend(app, question),
      await app.call(`/v1/loops/${id}/recommendation`),
      await app.call(`/v1/loops/${id}/duty-point?pump=${app.pumpId}`),
      await app.call(`/v1/loops/${id}/system-curve?points=500`),
    ]) {
      expect(response.headers.get('retry-after')).toBe('5');
      expect(await refused(response)).toMatchObject({ status: 503, code: 'unavailable' });
    }
    expect((await app.call(`${app.loop}/recommendation`)).status).toBe(200);
  });
});
