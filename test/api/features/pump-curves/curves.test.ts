/** The fitted curves of a pump over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { KNEED_TABLES } from '../../../reference/head-curves.ts';
import { curvesAnswer } from '../../read-answers.ts';
import { created, example, sent } from '../../requests.ts';
import { answered, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

/** Six significant digits leave half a unit of the sixth. */
const SIX_DIGITS = 1e-5;
/** kg/m3 at 25 degC and 35 g/kg: UNESCO technical paper 44 (Fofonoff and Millard 1983), check value. */
const SEA_WATER = 1023.343;
const GRAVITY = 9.80665;
const LITRES_PER_HOUR = 3.6e6;

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const curves = async (query = '', id = app.pumpId) =>
  answered(curvesAnswer, await app.call(`/v1/pumps/${id}/curves${query}`));

describe('the curves of a pump', () => {
  it('pass its four points within their stated error', async () => {
    const { headFit: head } = await curves();
    const { exponents = [], coefficients = [] } = head;
    const at = (flow: number) =>
      exponents.reduce((sum, exponent, i) => {
        return sum + (coefficients[i] ?? 0) * (flow / head.flowScale) ** exponent;
      }, 0);
    expect(head.shape).toBe('sum-of-powers');
    const points = [
      [0, 5.1],
      [6000, 4.5],
      [10500, 3.3],
      [14000, 1.9],
    ] as const;
    const squares = points.reduce((sum, [flow, value]) => sum + (at(flow) - value) ** 2, 0);
    expect(Math.sqrt(squares / points.length)).toBeLessThan(0.02);
    const mean = points.reduce((sum, [, value]) => sum + value, 0) / points.length;
    const total = points.reduce((sum, [, value]) => sum + (value - mean) ** 2, 0);
    expectClose(head.r2 ?? 0, 1 - squares / total, { absolute: 1e-5 });
    const freedom = points.length - exponents.length;
    expectClose(head.standardError ?? 0, Math.sqrt(squares / freedom), { relative: 1e-3 });
  });

  it('go from knot to knot where no sum of powers meets the points', async () => {
    const { points, slopes } = KNEED_TABLES[0];
    const headPoints = points.map(([flow, head]) => ({ flow, head }));
    const pump = { ...example('pump-canister-250.json'), headPoints };
    const id = await created(app, '/v1/pumps', pump);
    const { headFit, cautions } = await curves('', id);
    expect(headFit).toMatchObject({ shape: 'piecewise' });
    expect(headFit.exponents).toBeUndefined();
    expect(headFit.coefficients).toBeUndefined();
    expect(headFit.standardError).toBeUndefined();
    expect(headFit.knots?.map(({ flow, head }) => [flow, head])).toEqual(points);
    for (const [i, slope] of slopes.entries()) {
      expectClose(1000 * (headFit.knots?.[i]?.slope ?? 0), slope, { relative: SIX_DIGITS });
    }
    expect(cautions.map(({ code }) => code)).toContain('head-piecewise');
    const us = await curves('?units=us', id);
    // A metre per L/h is 1/0.3048 ft over 1/3.785411784 gal/h.
    const slope = us.headFit.knots?.[3]?.slope ?? 0;
    expectClose((slope * 0.3048) / 3.785411784, (slopes[3] ?? 0) / 1000, { relative: SIX_DIGITS });
  });

  it('are assumed from two points, and say so', async () => {
    const headPoints = [
      { flow: 0, head: 6 },
      { flow: 7000, head: 2.4 },
    ];
    const pump = { ...example('pump-canister-250.json'), headPoints };
    const { headFit, cautions } = await curves('', await created(app, '/v1/pumps', pump));
    expect(headFit).toMatchObject({ shape: 'assumed', exponents: [0, 2], coefficients: [6, -3.6] });
    expect(Object.keys(headFit)).not.toContain('r2');
    expect(Object.keys(headFit)).not.toContain('standardError');
    expect(cautions.map(({ code }) => code)).toContain('head-shape-assumed');
  });

  it('have the exponent that two powers at two speeds fix', async () => {
    const { powerFit: power, bestEfficiencyPoint, cautions } = await curves();
    // P = standby + c r^k through (1, 245) and (0.6, 55) with a standby of 3 W.
    expectClose(power.exponent, Math.log(242 / 52) / Math.log(1 / 0.6), { relative: SIX_DIGITS });
    expect(power).toMatchObject({
      law: 'exponent',
      fixedPower: 0,
      exponentAssumed: false,
      flowTerms: [],
      standbyPower: 3,
    });
    expect(bestEfficiencyPoint).toBeNull();
    expect(cautions).toEqual([]);
  });

  it('say where power is entered at one speed alone', async () => {
    const pump = { ...example('pump-canister-250.json'), powerPoints: [{ setting: 100, power: 245 }] };
    const { powerFit: power, cautions } = await curves('', await created(app, '/v1/pumps', pump));
    expect(power).toMatchObject({ law: 'fixed-loss', exponent: 3, exponentAssumed: true });
    expectClose(power.fixedPower, 0.08 * 242, { relative: SIX_DIGITS });
    expectClose(power.coefficient, 0.92 * 242, { relative: SIX_DIGITS });
    expect(cautions.map(({ code }) => code)).toEqual(['power-exponent-assumed']);
  });

  it('have a best efficiency point where power is entered at three flows', async () => {
    const id = await created(app, '/v1/pumps', example('pump-inline-60.json'));
    const { bestEfficiencyPoint, table } = await curves('?points=500', id);
    const best = Math.max(...table.map(({ efficiency }) => efficiency));
    expectClose(bestEfficiencyPoint?.efficiency ?? 0, best, { relative: 1e-4 });
  });
});

describe('the table', () => {
  it('runs in even steps from no flow to the largest entered one', async () => {
    const { table } = await curves();
    expect(table).toHaveLength(11);
    table.forEach(({ flow, setting }, i) => {
      expectClose(flow, 1400 * i, { relative: SIX_DIGITS });
      expect(setting).toBe(100);
    });
  });

  it('follows the affinity laws at another setting', async () => {
    const [full, half] = [await curves('?points=5'), await curves('?setting=50&points=5')];
    half.table.forEach(({ flow, head }, i) => {
      expectClose(flow, (full.table[i]?.flow ?? 0) / 2, { relative: SIX_DIGITS });
      expectClose(head, (full.table[i]?.head ?? 0) / 4, { relative: SIX_DIGITS });
    });
  });

  it('has the efficiency rho g Q H / P of sea water', async () => {
    for (const { flow, head, power, efficiency } of (await curves()).table) {
      const hydraulic = (SEA_WATER * GRAVITY * flow * head) / LITRES_PER_HOUR;
      expectClose(efficiency, hydraulic / power, { relative: 2 * SIX_DIGITS });
    }
  });

  it('is its last row alone where one is asked for, and the same in US units', async () => {
    const [metric] = (await curves('?points=1')).table;
    const [us] = (await curves('?points=1&units=us')).table;
    // 1 gal = 3.785411784 L and 1 ft = 0.3048 m exactly (NIST SP 811).
    expectClose((us?.flow ?? 0) * 3.785411784, metric?.flow ?? 0, { relative: SIX_DIGITS });
    expectClose((us?.head ?? 0) * 0.3048, metric?.head ?? 0, { relative: SIX_DIGITS });
    expectClose(metric?.flow ?? 0, 14000, { relative: SIX_DIGITS });
  });

  it('comes in CSV', async () => {
    const response = await app.call(`/v1/pumps/${app.pumpId}/curves?points=3`, {
      headers: { Accept: 'text/csv' },
    });
    const lines = (await response.text()).split('\r\n');
    expect(lines[0]).toBe('setting [%],flow [L/h],head [m],power [W],efficiency');
    expect(lines).toHaveLength(5);
    expect(lines[1]?.startsWith('100,0,')).toBe(true);
  });

  it('is told as one value by its pointer', async () => {
    const path = `/v1/pumps/${app.pumpId}/curves`;
    expect(await (await app.call(`${path}?pointer=/table/10/flow`)).text()).toBe('14000');
    expect((await refused(await app.call(`${path}?pointer=/bestEfficiencyPoint/flow`))).code).toBe(
      'no-value',
    );
  });
});

describe('the curves', () => {
  it('change their tag with the pump and the question alone', async () => {
    const path = `/v1/pumps/${app.pumpId}/curves`;
    const tagOf = async (query = '') => (await app.call(`${path}${query}`)).headers.get('etag') ?? '';
    const tag = await tagOf();
    expect(await tagOf()).toBe(tag);
    expect(await tagOf('?points=3')).not.toBe(tag);
    expect(await tagOf('?units=us')).not.toBe(tag);
    expect((await app.call(path, { headers: { 'If-None-Match': tag } })).status).toBe(304);
    const pump = { ...example('pump-canister-250.json'), standbyPower: 4 };
    await app.call(`/v1/pumps/${app.pumpId}`, sent('PUT', pump, { 'If-Match': '*' }));
    expect(await tagOf()).not.toBe(tag);
    expect((await curves()).basis).toMatchObject({ loop: null, pumps: [{ id: app.pumpId, version: 2 }] });
  });

  it('of no pump are not there', async () => {
    expect((await refused(await app.call('/v1/pumps/none/curves'))).status).toBe(404);
  });

  it.each<[string, string]>([
    ['setting=29', 'setting'],
    ['setting=101', 'setting'],
    ['setting=0', 'setting'],
    ['setting=-50', 'setting'],
    ['setting=NaN', 'setting'],
    ['setting=1e2', 'setting'],
    ['setting=0x40', 'setting'],
    ['setting=', 'setting'],
    ['points=0', 'points'],
    ['points=501', 'points'],
    ['points=2.5', 'points'],
    ['points=-1', 'points'],
    ['points=99999999999999999999', 'points'],
    ['points=3&points=4', 'points'],
    ['speed=50', 'speed'],
    ['units=imperial', 'units'],
    ['format=xml', 'format'],
    ['pointer=table', 'pointer'],
  ])('are refused for ?%s', async (query, parameter) => {
    const { status, errors } = await refused(await app.call(`/v1/pumps/${app.pumpId}/curves?${query}`));
    expect(status).toBe(422);
    expect(errors?.map((error) => error.parameter)).toEqual([parameter]);
  });
});
