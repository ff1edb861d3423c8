/** Duty points over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { curvesAnswer, dutyPointAnswer } from '../../read-answers.ts';
import { created, example, jsonOf, sent } from '../../requests.ts';
import { answered, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

/** Six significant digits leave half a unit of the sixth. */
const SIX_DIGITS = 1e-5;
/** The tolerance of the published figures of the flume. */
const PUBLISHED = 1e-3;

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const duty = async (query: string, loop = app.loop) =>
  answered(dutyPointAnswer, await app.call(`${loop}/duty-point${query}`));
const codes = ({ cautions }: { cautions: readonly { code: string }[] }) => cautions.map(({ code }) => code);
const flowOf = (answer: { outlets: readonly { name: string; flow: number }[] }, wanted: string): number =>
  answer.outlets.find(({ name }) => name === wanted)?.flow ?? Number.NaN;

describe('a duty point', () => {
  // Figures of a solution made apart from this code; see test/reference/independent/kelp-flume.ts.
  it('is where the published solution has it', async () => {
    const found = await duty(`?pump=${app.pumpId}&setting=70`);
    expectClose(found.flow, 7533.14, { relative: PUBLISHED });
    expectClose(found.head, 1.5714, { relative: PUBLISHED });
    expectClose(found.power, 85.7042, { relative: PUBLISHED });
    expectClose(found.efficiency, 0.385034, { relative: PUBLISHED });
    expectClose(found.turnover ?? 0, 3.13881, { relative: PUBLISHED });
    expectClose(found.annualEnergy, 750.769, { relative: PUBLISHED });
    expectClose(found.annualCost ?? 0, 157.661, { relative: PUBLISHED });
    expectClose(flowOf(found, 'far end'), 3028.46, { relative: PUBLISHED });
    expectClose(flowOf(found, 'left'), 2252.34, { relative: PUBLISHED });
    expect(found).toMatchObject({ setting: 70, speed: 70, count: 1, limitingOutlet: 'far end' });
    expect(found.intersections).toMatchObject([{ flow: found.flow, head: found.head, stable: true }]);
  });

  it('falls short at the setting below, and says so', async () => {
    const found = await duty(`?pump=${app.pumpId}&setting=69`);
    expectClose(flowOf(found, 'far end'), 2984.58, { relative: PUBLISHED });
    expect(codes(found)).toContain('outlet-short');
    expect(found.outlets[0]?.margin).toBeLessThan(0);
  });

  it('lies on the curve of the pump brought to its speed', async () => {
    const { headFit } = await answered(curvesAnswer, await app.call(`/v1/pumps/${app.pumpId}/curves`));
    const found = await duty(`?pump=${app.pumpId}&setting=55&count=2`);
    const { flowScale, exponents = [], coefficients = [] } = headFit;
    const x = found.perPump.flow / (0.55 * flowScale);
    const full = exponents.reduce((sum, p, i) => sum + (coefficients[i] ?? 0) * x ** p, 0);
    expectClose(found.head, 0.55 ** 2 * full, { relative: 5 * SIX_DIGITS });
    expectClose(found.flow, 2 * found.perPump.flow, { relative: SIX_DIGITS });
    expectClose(found.power, 2 * found.perPump.power, { relative: SIX_DIGITS });
    const sum = found.outlets.reduce((total, { flow }) => total + flow, 0);
    expectClose(sum, found.flow, { relative: SIX_DIGITS });
  });

  it('is computed off the grid of settings, and cautioned', async () => {
    const [below, off, above] = [
      await duty(`?pump=${app.pumpId}&setting=70`),
      await duty(`?pump=${app.pumpId}&setting=70.5`),
      await duty(`?pump=${app.pumpId}&setting=71`),
    ];
    expect(codes(off)).toContain('off-grid');
    expect(codes(above)).not.toContain('off-grid');
    expect(off.flow).toBeGreaterThan(below.flow);
    expect(off.flow).toBeLessThan(above.flow);
  });

  it('is at the highest setting where none is stated', async () => {
    expect((await duty(`?pump=${app.pumpId}`)).setting).toBe(100);
  });

  it('of a pump that does not lift the water is at no flow', async () => {
    const loop = `/v1/loops/${await created(app, '/v1/loops', example('loop-nursery-raceways.json'))}`;
    const pump = await created(app, '/v1/pumps', example('pump-inline-60.json'));
    // Shutoff 3.2 m at full speed leaves 0.42^2 x 3.2 m = 0.56 m at setting 30 against a lift of 1.8 m.
    const found = await duty(`?pump=${pump}&setting=30`, loop);
    expect(found).toMatchObject({ flow: 0, efficiency: 0, speed: 42, intersections: [] });
    expectClose(found.head, 0.42 ** 2 * 3.2, { relative: 0.03 });
    expect(codes(found)).toContain('dead-head');
    expect(found.cautions.find(({ code }) => code === 'dead-head')?.severity).toBe('danger');
    expect(codes(found)).toContain('drain-back');
    for (const { flow } of found.outlets) expectClose(flow, 0, { absolute: 1e-6 });
    expect(found.power).toBeGreaterThan(2);
  });

  it('is at no flow where a valve shuts the loop', async () => {
    const run = [
      { pipe: 'sch40 1', length: 2 },
      { valve: 'ball', opening: 0 },
    ];
    const discharge = { run, outlet: { name: 'end', requiredFlow: 100 } };
    const loop = `/v1/loops/${await created(app, '/v1/loops', { name: 'shut', discharge })}`;
    expect(codes(await duty(`?pump=${app.pumpId}`, loop))).toContain('dead-head');
  });

  it('on a loop known by points shares the flow as stated', async () => {
    const loop = `/v1/loops/${await created(app, '/v1/loops', example('loop-system-curve.json'))}`;
    const found = await duty(
      `?pump=${await created(app, '/v1/pumps', example('pump-canister-600.json'))}`,
      loop,
    );
    expectClose(flowOf(found, 'raceway 4'), 0.23 * found.flow, { relative: SIX_DIGITS });
    expectClose(flowOf(found, 'raceway 1'), 0.28 * found.flow, { relative: SIX_DIGITS });
    for (const { velocity } of found.outlets) expect(velocity).toBeNull();
  });

  it('costs by the hours it runs, standby for the rest', async () => {
    const { power } = await duty(`?pump=${app.pumpId}&setting=70`);
    const part = await duty(`?pump=${app.pumpId}&setting=70&hoursPerDay=8&price=0.5`);
    // kWh = 365 (h P + (24 - h) P_standby)/1000 with a standby of 3 W.
    const energy = (365 * (8 * power + 16 * 3)) / 1000;
    expectClose(part.annualEnergy, energy, { relative: SIX_DIGITS });
    expectClose(part.annualCost ?? 0, 0.5 * energy, { relative: SIX_DIGITS });
  });

  it('costs nothing known where there is no price', async () => {
    await app.call('/v1/site', sent('PUT', { ...example('site.json'), price: null }, { 'If-Match': '*' }));
    const path = `${app.loop}/duty-point?pump=${app.pumpId}`;
    expect((await duty(`?pump=${app.pumpId}`)).annualCost).toBeNull();
    const problem = await refused(await app.call(`${path}&pointer=/annualCost`));
    expect(problem.code).toBe('no-value');
    expect(problem.detail).toBe((await jsonOf(await app.call(path))).summary);
  });

  it('is summed up by pump, setting, flow, watts, kWh, cost and the outlet that limits', async () => {
    const { summary } = await duty(`?pump=${app.pumpId}&setting=70`);
    for (const fact of ['Canister 250', '70 %', '7530 L/h', '85.7 W', '751 kWh', 'EUR 157.66']) {
      expect(summary).toContain(fact);
    }
    for (const fact of ['far end', '3030 L/h', '3000 L/h']) expect(summary).toContain(fact);
  });

  it('comes in CSV with an outlet a row', async () => {
    const response = await app.call(`${app.loop}/duty-point?pump=${app.pumpId}&setting=70&format=csv`);
    const [header, first] = (await response.text()).split('\r\n');
    expect(header).toBe('name,flow [L/h],requiredFlow [L/h],margin,velocity [m/s]');
    expect(first).toMatch(/^far end,302\d\.\d+,3000,/);
  });
});

describe('the duty point of the installed pump', () => {
  const installed = (facts: object) => ({
    ...example('loop-kelp-flume.json'),
    installed: { pump: app.pumpId, ...facts },
  });

  it('is at its setting and count unless others are asked for', async () => {
    const id = await created(app, '/v1/loops', installed({ setting: 66, count: 2 }));
    const loop = `/v1/loops/${id}`;
    expect(await duty('', loop)).toMatchObject({ setting: 66, count: 2, pump: { id: app.pumpId } });
    expect(await duty('?setting=70&count=1', loop)).toMatchObject({ setting: 70, count: 1 });
  });

  it('needs one to be installed', async () => {
    const { status, code } = await refused(await app.call(`${app.loop}/duty-point`));
    expect([status, code]).toEqual([422, 'no-installed-pump']);
  });
});

describe('the tag of a duty point', () => {
  const tagOf = async () =>
    (await app.call(`${app.loop}/duty-point?pump=${app.pumpId}`)).headers.get('etag') ?? '';

  it.each<[string, () => [string, unknown]]>([
    ['site', () => ['/v1/site', { ...example('site.json'), price: 0.3 }]],
    ['loop', () => [app.loop, { ...example('loop-kelp-flume.json'), name: 'Flume' }]],
    ['pump', () => [`/v1/pumps/${app.pumpId}`, { ...example('pump-canister-250.json'), price: 1 }]],
  ])('changes with the %s', async (_, change) => {
    const tag = await tagOf();
    expect(await tagOf()).toBe(tag);
    const [path, document] = change();
    await app.call(path, sent('PUT', document, { 'If-Match': '*' }));
    expect(await tagOf()).not.toBe(tag);
  });
});

describe('a duty point is refused', () => {
  it('on a loop that is not there', async () => {
    expect((await refused(await app.call('/v1/loops/none/duty-point'))).status).toBe(404);
  });

  it.each<[string, string]>([
    ['pump=none', 'pump'],
    ['pump=', 'pump'],
    ['setting=29', 'setting'],
    ['setting=100.1', 'setting'],
    ['setting=0', 'setting'],
    ['setting=NaN', 'setting'],
    ['setting=7e1', 'setting'],
    ['setting=0x46', 'setting'],
    ['setting=', 'setting'],
    ['count=0', 'count'],
    ['count=21', 'count'],
    ['count=1.5', 'count'],
    ['price=cheap', 'price'],
    ['price=-1001', 'price'],
    ['hoursPerDay=-1', 'hoursPerDay'],
    ['hoursPerDay=24.5', 'hoursPerDay'],
    ['speed=3', 'speed'],
    ['setting=70&setting=71', 'setting'],
  ])('for ?%s', async (query, parameter) => {
    const named = query.startsWith('pump=') ? query : `pump=${app.pumpId}&${query}`;
    const { status, errors } = await refused(await app.call(`${app.loop}/duty-point?${named}`));
    expect(status).toBe(422);
    expect(errors?.map((error) => error.parameter)).toEqual([parameter]);
  });
});
