/** Plans of large loops are made in a worker thread, once; where too much waits for one, nothing is stored. */
import { describe, expect, it } from 'vitest';
import { TooMuchWaiting, type WorkerPool } from '../../../../api/threads/worker-pool.ts';
import { expectClose } from '../../../expect-close.ts';
import { appUnderTest } from '../../app-under-test.ts';
import { created, example, type Json, jsonOf, sent } from '../../requests.ts';
import { refused } from '../../stocked-app.ts';

const OUTLETS = 400;

/** Jobs that go out and come back as they would between threads. */
function cloning(): { readonly work: WorkerPool; readonly jobs: string[] } {
  const jobs: string[] = [];
  const work: WorkerPool = {
    run: async ({ name, computeSent }, sent) => {
      jobs.push(name);
      return structuredClone(await computeSent(structuredClone(sent)));
    },
    close: async () => {},
  };
  return { work, jobs };
}

/** Alike outlets at one node: whatever their number, the pump sees as much pipe and nozzle as for one of all their width. */
const manifold = (outlets: number, pump: string): Json => ({
  name: 'Manifold',
  suction: [{ pipe: { insideDiameter: 60 }, length: 1 }],
  discharge: {
    run: [{ pipe: { insideDiameter: 60 }, length: 1 }],
    branches: Array.from({ length: outlets }, (_, i) => ({
      run: [{ loss: { head: 1.5, flow: 4800 / outlets } }],
      outlet: { name: `outlet ${i}`, requiredFlow: 4000 / outlets, nozzleDiameter: 40 / Math.sqrt(outlets) },
    })),
  },
  installed: { pump, count: 1, setting: 80 },
});

const SCHEDULE = {
  phases: [
    { name: 'day', from: '07:00', factor: 1, rampMinutes: 20 },
    { name: 'night', from: '22:00', factor: 0.6 },
  ],
};

async function facility(outlets: number, workers: WorkerPool) {
  const app = await appUnderTest({ change: { workers } });
  const pump = await created(app, '/v1/pumps', example('pump-canister-250.json'));
  const loop = await created(app, '/v1/loops', manifold(outlets, pump));
  return { ...app, loop: `/v1/loops/${loop}` };
}

describe('the plan of a large loop', () => {
  it('is worked out as a job, once, for setpoints of any time of the day', async () => {
    const { work, jobs } = cloning();
    const { call, loop } = await facility(OUTLETS, work);
    const made = await call(`${loop}/schedule`, sent('PUT', SCHEDULE));
    expect(made.status).toBe(201);
    expect(jobs).toEqual(['schedule']);
    const paths = [`${loop}/setpoint`, `${loop}/setpoints`, `${loop}/setpoint?at=2026-01-15T09:00:00Z`];
    const together = await Promise.all(paths.map(async (path) => call(path)));
    expect(together.map(({ status }) => status)).toEqual([200, 200, 200]);
    expect((await call(`${loop}/setpoint?at=2026-01-15T23:00:00Z`)).status).toBe(200);
    expect(jobs).toEqual(['schedule', 'schedule']);
  });

  it('gives the figures that the same water gives in a small one, planned in the thread that answers', async () => {
    const { work, jobs } = cloning();
    const [large, small] = [await facility(OUTLETS, work), await facility(1, work)];
    const answers = [];
    for (const { call, loop } of [large, small]) {
      const schedule = await jsonOf(await call(`${loop}/schedule`, sent('PUT', SCHEDULE)));
      const setpoint = await jsonOf(await call(`${loop}/setpoint`));
      answers.push({ schedule, setpoint });
    }
    const [one, other] = answers;
    expect(jobs).toHaveLength(2);
    expect(one?.setpoint.setting).toBe(other?.setpoint.setting);
    expect(one?.setpoint.fallback).toEqual(other?.setpoint.fallback);
    expectClose(Number(one?.schedule.annualEnergy), Number(other?.schedule.annualEnergy), { relative: 1e-4 });
    expectClose(Number(one?.setpoint.power), Number(other?.setpoint.power), { relative: 1e-4 });
  });

  it('is refused with the time to wait where too much waits, and the schedule is not stored', async () => {
    const full: WorkerPool = { run: () => Promise.reject(new TooMuchWaiting()), close: async () => {} };
    const { call, loop } = await facility(OUTLETS, full);
    for (const response of [
      await call(`${loop}/setpoint`),
      await call(`${loop}/setpoints`),
      await call(`${loop}/schedule`, sent('PUT', SCHEDULE)),
    ]) {
      expect(response.headers.get('retry-after')).toBe('5');
      expect(await refused(response)).toMatchObject({ status: 503, code: 'unavailable' });
    }
    expect((await call(`${loop}/schedule`)).status).toBe(404);
  });
});
