/** Plans and summaries in a worker thread of the process, and setpoints meanwhile. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Child, runTypescript } from '../../child-process.ts';
import { example, type Json, sent } from '../../requests.ts';
import { removeDirectory, temporaryDirectory } from '../../store/opened.ts';

const PATIENCE = 120_000;
/** On the thread of the plan one setpoint at most would be answered before it begins. */
const ANSWERED_LEAST = 3;

describe('the process', () => {
  let directory: string;
  let child: Child;
  let url: string;
  let loop: string;
  const post = async (path: string, body: Json) => {
    const response = await fetch(`${url}${path}`, sent('POST', body));
    return { status: response.status, body: JSON.parse(await response.text()) };
  };
  beforeAll(async () => {
    directory = temporaryDirectory();
    child = runTypescript('api/main.ts', [], { cwd: directory, env: { PORT: '0', LOG_LEVEL: 'info' } });
    await child.untilOutputHas('"listening"');
    url = /"url":"([^"]+)"/.exec(child.output())?.[1] ?? '';
    const pump = (await post('/v1/pumps', example('pump-canister-250.json'))).body.id;
    const document = { ...example('loop-kelp-flume.json'), installed: { pump, count: 1, setting: 80 } };
    loop = (await post('/v1/loops', document)).body.id;
  }, PATIENCE);
  afterAll(async () => {
    child.process.kill('SIGKILL');
    await child.ended;
    removeDirectory(directory);
  });

  it(
    'sums its loops in a thread',
    async () => {
      const summary = JSON.parse(await (await fetch(`${url}/v1/summary`)).text());
      expect(summary).toMatchObject({ loops: { total: 1 }, aboveNeed: { count: 1 } });
    },
    PATIENCE,
  );

  it(
    'answers a plan of many candidates, proven or with its gap, and setpoints meanwhile',
    async () => {
      const candidates = Array.from({ length: 300 }, (_, place) => ({
        name: `upgrade ${place}`,
        cost: 500 + ((place * 7919) % 1000),
        yearlySaving: 90 + ((place * 104729) % 170),
        lifeYears: 5 + (place % 9),
      }));
      const question = { years: 20, budget: Array(20).fill(3000), discountRate: 0.06, candidates };
      let isRunning = true;
      const plan = post('/v1/upgrade-plans', question).finally(() => {
        isRunning = false;
      });
      let answeredMeanwhile = 0;
      while (isRunning) {
        const setpoint = await fetch(`${url}/v1/loops/${loop}/setpoint`);
        expect(setpoint.status).toBe(200);
        await setpoint.text();
        answeredMeanwhile += 1;
      }
      const { status, body } = await plan;
      expect(status, JSON.stringify(body).slice(0, 500)).toBe(201);
      expect(answeredMeanwhile).toBeGreaterThan(ANSWERED_LEAST);
      // How near the search comes to the best plan within its time depends on the machine.
      expect(body.gap).toBeGreaterThanOrEqual(0);
      const isProven = body.status === 'optimal';
      expect(body.cautions.some((one: { code: string }) => one.code === 'plan-not-proven')).toBe(!isProven);
    },
    PATIENCE,
  );
});
