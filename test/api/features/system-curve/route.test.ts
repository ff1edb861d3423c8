/** The system curve of a loop over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { systemCurveAnswer } from '../../read-answers.ts';
import { created, example, sent } from '../../requests.ts';
import { answered, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

/** Six significant digits leave half a unit of the sixth. */
const SIX_DIGITS = 1e-5;
const LITRES_PER_GALLON = 3.785411784;
const METRES_PER_FOOT = 0.3048;

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const curve = async (query = '', id = app.loopId) =>
  answered(systemCurveAnswer, await app.call(`/v1/loops/${id}/system-curve${query}`));

describe('the system curve of pipework', () => {
  it('passes the duty that a solution apart from this code gave', async () => {
    // Flow and head of the flume's published duty; the solution is that of test/reference/independent/.
    const { points } = await curve('?flow=7533.14&points=1');
    expectClose(points[0]?.head ?? 0, 1.5714, { relative: 1e-3 });
    const flows = Object.fromEntries((points[0]?.outlets ?? []).map(({ name, flow }) => [name, flow]));
    expectClose(flows['far end'] ?? 0, 3028.46, { relative: 1e-3 });
    expectClose(flows.left ?? 0, 2252.34, { relative: 1e-3 });
    expectClose(flows.right ?? 0, 2252.34, { relative: 1e-3 });
  });

  it('rises from no head at no flow, in even steps, and its outlets share all of its flow', async () => {
    const { points } = await curve('?flow=8000&points=5');
    expect(points.map(({ flow }) => Math.round(flow))).toEqual([0, 2000, 4000, 6000, 8000]);
    expectClose(points[0]?.head ?? 1, 0, { absolute: 1e-9 });
    points.forEach(({ head, flow, outlets }, i) => {
      expect(head).toBeGreaterThan(points[i - 1]?.head ?? -1);
      const sum = outlets.reduce((total, outlet) => total + outlet.flow, 0);
      expectClose(sum, flow, { relative: SIX_DIGITS, absolute: 1e-6 });
    });
  });

  it('requires the least flow at which the last outlet is served', async () => {
    const { requiredDuty } = await curve();
    expect(requiredDuty?.limitingOutlet).toBe('far end');
    const { points } = await curve(`?flow=${requiredDuty?.flow}&points=1`);
    expectClose(points[0]?.head ?? 0, requiredDuty?.head ?? 1, { relative: 2 * SIX_DIGITS });
    const [far, ...others] = points[0]?.outlets ?? [];
    expectClose(far?.flow ?? 0, 3000, { relative: 2 * SIX_DIGITS });
    for (const { flow } of others) expect(flow).toBeGreaterThan(2000);
  });

  it('ends at one and a half times the required flow where no flow is stated', async () => {
    const { points, requiredDuty } = await curve();
    expect(points).toHaveLength(21);
    expectClose(points.at(-1)?.flow ?? 0, 1.5 * (requiredDuty?.flow ?? 0), { relative: 2 * SIX_DIGITS });
  });

  it('says the same in US units', async () => {
    const metric = await curve('?flow=7570.823568&points=1');
    const us = await curve('?flow=2000&points=1&units=us');
    const texts = await curve('?flow=2000%20gal/h&points=1');
    expectClose((us.points[0]?.flow ?? 0) * LITRES_PER_GALLON, metric.points[0]?.flow ?? 0, {
      relative: SIX_DIGITS,
    });
    expectClose((us.points[0]?.head ?? 0) * METRES_PER_FOOT, metric.points[0]?.head ?? 0, {
      relative: SIX_DIGITS,
    });
    expect(texts.points).toEqual(metric.points);
  });

  it('requires nothing where no outlet does', async () => {
    const discharge = { run: [{ pipe: 'sch40 1', length: 2 }], outlet: { name: 'end' } };
    const id = await created(app, '/v1/loops', { name: 'free', discharge });
    const { requiredDuty, points } = await curve('', id);
    expect(requiredDuty).toBeNull();
    expect(points).toHaveLength(21);
    expect(points.at(-1)?.flow).toBeGreaterThan(0);
  });

  it('has no points where no water passes', async () => {
    const run = [
      { pipe: 'sch40 1', length: 2 },
      { valve: 'ball', opening: 0 },
    ];
    const discharge = { run, outlet: { name: 'end', requiredFlow: 100 } };
    const id = await created(app, '/v1/loops', { name: 'shut', discharge });
    expect(await curve('', id)).toMatchObject({ points: [], requiredDuty: null });
  });
});

describe('the system curve of points', () => {
  it('is H = Hs + k Q^2 by least squares, and each outlet has its share', async () => {
    const id = await created(app, '/v1/loops', example('loop-system-curve.json'));
    const { points, requiredDuty } = await curve('?flow=12000&points=1', id);
    // k = sum (H - Hs) Q^2 / sum Q^4 with the static head given.
    const entered = [
      [9000, 2.28],
      [12000, 2.64],
      [15000, 3.1],
    ] as const;
    const top = entered.reduce((sum, [flow, head]) => sum + (head - 1.8) * flow ** 2, 0);
    const k = top / entered.reduce((sum, [flow]) => sum + flow ** 4, 0);
    expectClose(points[0]?.head ?? 0, 1.8 + k * 12000 ** 2, { relative: SIX_DIGITS });
    const flows = points[0]?.outlets.map(({ flow }) => flow) ?? [];
    [0.23, 0.25, 0.24, 0.28].forEach((share, i) => {
      expectClose(flows[i] ?? 0, 12000 * share, { relative: SIX_DIGITS });
    });
    expect(requiredDuty?.limitingOutlet).toBe('raceway 4');
    expectClose(requiredDuty?.flow ?? 0, 2500 / 0.23, { relative: SIX_DIGITS });
  });
});

describe('the system curve', () => {
  it('comes in CSV with a column an outlet', async () => {
    const response = await app.call(`${app.loop}/system-curve?flow=8000&points=2&format=csv`);
    const lines = (await response.text()).split('\r\n');
    expect(lines[0]).toBe('flow [L/h],head [m],far end [L/h],left [L/h],right [L/h]');
    expect(lines).toHaveLength(4);
  });

  it('changes its tag with the loop', async () => {
    const tagOf = async () => (await app.call(`${app.loop}/system-curve`)).headers.get('etag') ?? '';
    const tag = await tagOf();
    const asked = await app.call(`${app.loop}/system-curve`, { headers: { 'If-None-Match': tag } });
    expect([asked.status, await asked.text()]).toEqual([304, '']);
    const loop = { ...example('loop-kelp-flume.json'), frictionMultiplier: 1.1 };
    await app.call(app.loop, sent('PUT', loop, { 'If-Match': '*' }));
    expect(await tagOf()).not.toBe(tag);
    expect((await curve()).basis.loop).toEqual({ id: app.loopId, version: 2 });
  });

  it('of no loop is not there', async () => {
    expect((await refused(await app.call('/v1/loops/none/system-curve'))).status).toBe(404);
  });

  it.each<[string, string]>([
    ['flow=0', 'flow'],
    ['flow=-5', 'flow'],
    ['flow=NaN', 'flow'],
    ['flow=Infinity', 'flow'],
    ['flow=1e3', 'flow'],
    ['flow=', 'flow'],
    ['flow=3%20m', 'flow'],
    ['flow=3%20GPH', 'flow'],
    ['flow=1e-30', 'flow'],
    ['flow=0.0000001', 'flow'],
    ['flow=99999999999', 'flow'],
    ['points=0', 'points'],
    ['points=501', 'points'],
    ['points=x', 'points'],
    ['head=3', 'head'],
    ['flow=3&flow=4', 'flow'],
  ])('is refused for ?%s', async (query, parameter) => {
    const { status, errors } = await refused(await app.call(`${app.loop}/system-curve?${query}`));
    expect(status).toBe(422);
    expect(errors?.map((error) => error.parameter)).toEqual([parameter]);
  });
});
