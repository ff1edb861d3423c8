/** Duties of worked loops with check valves, outlets in air and steps of bore, over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { DRY } from '../../../reference/one-way-runs.ts';
import { STEPPED_RUNS } from '../../../reference/steps-of-bore.ts';
import { dutyPointAnswer } from '../../read-answers.ts';
import { created, type Json } from '../../requests.ts';
import { answered, type StockedApp, stockedApp } from '../../stocked-app.ts';

/** Worked for pipes of 0.0015 mm roughness, calculated apart; answers have six digits. */
const WORKED = { relative: 1e-4 };
const METRES_PER_FOOT = 0.3048;

const caution = z.object({
  code: z.string(),
  severity: z.string(),
  detail: z.string(),
  pointer: z.string().optional(),
  value: z.number().optional(),
  limit: z.number().optional(),
  quantity: z.string().optional(),
});
const dutyAnswer = dutyPointAnswer.extend({
  cautions: z.array(caution),
  units: z.record(z.string(), z.string()),
});

const pipe = (insideDiameter: number, length: number): Json => ({ pipe: { insideDiameter }, length });

/** H = 7 m (1 - (Q/14000 L/h)^2), entered at six flows. */
const PUMP: Json = {
  name: 'Inline 60',
  headPoints: [0, 2800, 5600, 8400, 11_200, 12_600].map((flow) => ({
    flow,
    head: 7 * (1 - (flow / 14_000) ** 2),
  })),
  powerPoints: [{ setting: 100, power: 300 }],
};

const highBranch = (outlet: Json, valve: readonly Json[] = []): Json => ({
  run: [pipe(22, 2), ...valve],
  outlet: { name: 'high', ...outlet },
});
const CHECKED = highBranch({}, [{ valve: 'check-swing-clear' }]);
const RAISED = highBranch({ staticHead: 0.8 });

const lowAndHigh = (high: Json, root: Json = {}): Json => ({
  name: 'Kelp flume',
  staticHead: 1.6,
  suction: [pipe(45, 1.5)],
  discharge: {
    run: [pipe(45, 2.5)],
    branches: [{ run: [pipe(28, 5)], outlet: { name: 'low', staticHead: -1.2 } }, high],
    ...root,
  },
});

let app: StockedApp;
let pump: string;
beforeEach(async () => {
  app = await stockedApp();
  pump = await created(app, '/v1/pumps', PUMP);
});

async function dutyOf(loop: Json, setting: number, query = '') {
  const id = await created(app, '/v1/loops', loop);
  const path = `/v1/loops/${id}/duty-point?pump=${pump}&setting=${setting}${query}`;
  return answered(dutyAnswer, await app.call(path));
}

type Answer = Awaited<ReturnType<typeof dutyOf>>;
const flowsOf = ({ outlets }: Answer) => outlets.map(({ flow }) => flow);
const given = ({ cautions }: Answer, code: string) => cautions.filter((one) => one.code === code);

describe('a high branch', () => {
  it.each<[string, Json, number, readonly number[]]>([
    ['behind a check valve that closes', CHECKED, 42, [3027.18, 0]],
    ['behind a check valve that opens', CHECKED, 80, [5974.61, 1924.56]],
    ['open to the tank', highBranch({}), 42, [3887.11, -2366.26]],
    ['into air that stays dry', RAISED, 42, [3027.18, 0]],
    ['into air that runs', RAISED, 80, [6719.61, 508.931]],
  ])('%s has the flows that were worked out', async (_, high, setting, expected) => {
    const flows = flowsOf(await dutyOf(lowAndHigh(high), setting));
    expect(flows).toHaveLength(expected.length);
    for (const [place, flow] of flows.entries()) expectClose(flow, expected[place] ?? Number.NaN, WORKED);
  });

  it.each<[string, Json, string, number]>([
    ['of no stated height is dry', {}, 'outlet-dry', DRY.level],
    ['whose root lies above the water draws air', { highestElevation: 1.5 }, 'air-drawn', 1.5],
    ['whose root lies below it is dry', { highestElevation: 0.5 }, 'outlet-dry', DRY.level],
  ])('into air %s, in figures', async (_, root, code, limit) => {
    const answer = await dutyOf(lowAndHigh(RAISED, root), DRY.setting);
    const other = code === 'outlet-dry' ? 'air-drawn' : 'outlet-dry';
    expect(given(answer, other)).toEqual([]);
    const [one] = given(answer, code);
    expect(one).toMatchObject({ pointer: '/discharge/branches/1/outlet', quantity: 'head' });
    expectClose(one?.value ?? Number.NaN, DRY.head, WORKED);
    expectClose(one?.limit ?? Number.NaN, limit, WORKED);
  });

  it('has them in the units in force', async () => {
    const answer = await dutyOf(lowAndHigh(RAISED), DRY.setting, '&units=us');
    const [one] = given(answer, 'outlet-dry');
    expect(answer.units).toMatchObject({ head: 'ft' });
    expectClose(one?.value ?? Number.NaN, DRY.head / METRES_PER_FOOT, WORKED);
    expectClose(one?.limit ?? Number.NaN, DRY.level / METRES_PER_FOOT, WORKED);
  });
});

describe('steps of bore', () => {
  const loop = (changes: Json = {}): Json => ({
    name: 'Touch pool',
    suction: [],
    discharge: {
      run: [pipe(32, 2), { fitting: 'elbow-90' }, pipe(25, 1.5), pipe(38, 1)],
      outlet: { name: 'pool', lossCoefficient: 0 },
    },
    ...changes,
  });

  it('are noted at the pipe after each, with the head that K of the smaller bore loses', async () => {
    const answer = await dutyOf(loop(), 60);
    const notes = given(answer, 'bore-change-assumed');
    const velocityHead = (answer.flow / 3.6e6 / ((Math.PI / 4) * 0.025 ** 2)) ** 2 / (2 * 9.80665);
    const steps = STEPPED_RUNS[1]?.steps ?? [];
    expect(notes).toHaveLength(steps.length);
    for (const { later, lossCoefficient } of steps) {
      const note = notes.find(({ pointer }) => pointer === `/discharge/run/${later}`);
      expectClose(note?.value ?? Number.NaN, lossCoefficient * velocityHead, WORKED);
      expect(note).toMatchObject({ severity: 'note', quantity: 'head' });
      expect(note?.limit).toBeUndefined();
      expect(note?.detail).toContain(`K ${lossCoefficient.toPrecision(3)}`);
    }
  });

  it('are not where they are ignored, which gives more flow', async () => {
    const ignored = await dutyOf(loop({ boreChanges: 'ignored' }), 60);
    expect(given(ignored, 'bore-change-assumed')).toEqual([]);
    expect(ignored.flow).toBeGreaterThan((await dutyOf(loop(), 60)).flow);
  });
});
