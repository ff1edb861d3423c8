/** A loop as large as loops may be: every question about it is answered, and one branch more is refused. */
import { beforeAll, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { dutyPointAnswer, recommendationAnswer, systemCurveAnswer } from '../../read-answers.ts';
import { created, example, type Json } from '../../requests.ts';
import { answered, recommend, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const LEVELS = 32;
const BRANCHES = 2000;
/** A guard against work that grows without bound, not a measure of speed. */
const PATIENCE = 30_000;

const leaf = (place: number): Json => ({
  run: [{ pipe: { insideDiameter: 16 }, length: 1 }, { loss: { head: 1, flow: 3 } }],
  outlet: { name: `outlet ${place}`, requiredFlow: 3 },
});

/** A manifold of 32 levels, outlets at each, 2,000 branches in all unless more are asked for. */
function largeLoop({ more = 0, split = 'tee-90' }: { more?: number; split?: 'tee-90' | null } = {}): Json {
  let places = 0;
  const leaves = (count: number) => Array.from({ length: count }, () => leaf(places++));
  const levelsOf = (level: number): Json => {
    if (level === LEVELS) return leaf(places++);
    const beside = level === 0 ? BRANCHES - LEVELS - 61 * (LEVELS - 1) + more : 61;
    return {
      run: [{ pipe: { insideDiameter: 100 }, length: 0.2 }],
      branches: [levelsOf(level + 1), ...leaves(beside)],
      ...(split === null ? {} : { split }),
    };
  };
  return {
    name: 'Manifold',
    suction: [{ pipe: { insideDiameter: 100 }, length: 1 }],
    discharge: levelsOf(0),
  };
}

describe.each(['tee-90', null] as const)('a loop of 2,000 branches, 32 deep, with split %s', (split) => {
  let app: StockedApp;
  let path: string;
  beforeAll(async () => {
    app = await stockedApp();
    path = `/v1/loops/${await created(app, '/v1/loops', largeLoop({ split }))}`;
  }, PATIENCE);

  it(
    'is read back',
    async () => {
      const response = await app.call(path);
      expect(response.status).toBe(200);
      const { discharge } = JSON.parse(await response.text());
      expect(discharge).toEqual(largeLoop({ split }).discharge);
    },
    PATIENCE,
  );

  it(
    'has a system curve whose outlets carry all of its flow',
    async () => {
      const response = await app.call(`${path}/system-curve?points=50`);
      const { points, requiredDuty } = await answered(systemCurveAnswer, response);
      expect(points).toHaveLength(50);
      expect(requiredDuty?.flow).toBeGreaterThanOrEqual(3 * (BRANCHES - LEVELS));
      const last = points.at(-1);
      const sum = last?.outlets.reduce((total, { flow }) => total + flow, 0) ?? 0;
      // Each of some 2,000 flows is rounded to six digits; the errors do not all go one way.
      expectClose(sum, last?.flow ?? 0, { relative: 1e-5 });
    },
    PATIENCE,
  );

  it(
    'has a duty point where pump and system curve meet',
    async () => {
      const duty = await answered(dutyPointAnswer, await app.call(`${path}/duty-point?pump=${app.pumpId}`));
      const curve = await app.call(`${path}/system-curve?points=1&flow=${duty.flow}`);
      const { points } = await answered(systemCurveAnswer, curve);
      expectClose(points[0]?.head ?? 0, duty.head, { relative: 1e-4 });
    },
    PATIENCE,
  );

  it.each(['as-built', 'trimmed'])(
    'has a recommendation, %s',
    async (balancing) => {
      const body = { loop: largeLoop({ split }), pumps: [app.pumpId], balancing };
      const limits = { allowExtrapolation: true };
      const response = await recommend(app, { ...body, limits });
      const { best, rejected } = await answered(recommendationAnswer, response);
      expect(best?.outlets ?? [], JSON.stringify(rejected)).toHaveLength(BRANCHES - LEVELS + 1);
      for (const { flow } of best?.outlets ?? []) expect(flow).toBeGreaterThanOrEqual(3 - 1e-4);
    },
    PATIENCE,
  );
});

it(
  'a loop of one branch more is refused with the limit',
  async () => {
    const app = await stockedApp();
    const loop = largeLoop({ more: 1 });
    const problem = await refused(await recommend(app, { loop, pumps: [example('pump-canister-250.json')] }));
    expect(problem).toMatchObject({ status: 422, code: 'limit-exceeded', limit: 2000, actual: 2001 });
    expect(problem.errors).toMatchObject([{ pointer: '/loop/discharge', limit: 2000, actual: 2001 }]);
  },
  PATIENCE,
);
