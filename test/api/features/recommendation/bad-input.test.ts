/** Questions that do not make sense, with the place that is told for each. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { changed } from '../../changed.ts';
import { example, type Json } from '../../requests.ts';
import { recommend, refused, type StockedApp, stockedApp, storeOf } from '../../stocked-app.ts';

let app: StockedApp;
let before: readonly string[];
beforeAll(async () => {
  app = await stockedApp();
  before = await storeOf(app);
});
afterAll(async () => {
  expect(await storeOf(app)).toEqual(before);
});

const FLUME = example('loop-kelp-flume.json');
const PUMP = example('pump-canister-250.json');
const VALID: Json = {
  loop: FLUME,
  pumps: [{ pump: PUMP, count: 2 }, PUMP],
  price: 0.21,
  currency: 'EUR',
  hoursPerDay: 24,
  balancing: 'as-built',
  objective: 'energy-cost',
  limits: { throughSlotVelocity: 0.1524, cloggedFraction: 0.5, maximumEfficiency: 0.85 },
  rankingLimit: 20,
};

/** A pointer of VALID, the value put there, and the pointers told: where it was put unless others are named. */
type Row = [pointer: string, value: unknown, expected?: readonly string[]];

async function tell([pointer, value, expected = [pointer]]: Row) {
  const body = changed(VALID, pointer, value);
  const response = await app.call('/v1/recommendations', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(body),
  });
  const problem = await refused(response);
  expect(problem.status).toBe(422);
  expect(problem.errors?.map((error) => error.pointer)).toEqual(expected);
  return problem;
}

/** Texts that a lenient reader takes for numbers. */
const NOT_NUMBERS = ['NaN', 'Infinity', '-Infinity', '1e3', '0x10', '', ' ', '1,5', '1_000', '٣', 'null'];

it('the question itself is answered', async () => {
  expect((await recommend(app, VALID)).status).toBe(200);
});

describe('a question is refused', () => {
  it.each<Row>([
    ['', null],
    ['', [], ['']],
    ['', 'kelp', ['']],
    ['', {}, ['/loop']],
    ['/loop', undefined],
    ['/loop', null],
    ['/loop', 7],
    ['/loop', []],
    ['/loop', ''],
    ['/loop', 'a'.repeat(65)],
    ['/loop', {}],
    ['/pumps', []],
    ['/pumps', {}],
    ['/pumps', 'all'],
    ['/pumps', null],
    ['/pumps/0', null],
    ['/pumps/0', 3],
    ['/pumps/0', ''],
    ['/pumps/0', []],
    ['/pumps/0/count', 0],
    ['/pumps/0/count', -1],
    ['/pumps/0/count', 21],
    ['/pumps/0/count', 1.5],
    ['/pumps/0/count', '2'],
    ['/pumps/0/pump', null],
    ['/pumps/0/speed', 3],
    ['/price', '0.21'],
    ['/price', null],
    ['/price', 1001],
    ['/price', -1001],
    ['/currency', 'euro'],
    ['/currency', 'eur'],
    ['/currency', 978],
    ['/hoursPerDay', -1],
    ['/hoursPerDay', 24.01],
    ['/hoursPerDay', '24'],
    ['/hoursPerDay', true],
    ['/balancing', 'perfect'],
    ['/balancing', null],
    ['/objective', 'beauty'],
    ['/limits', null],
    ['/limits', []],
    ['/limits/throughSlotVelocity', -0.1],
    ['/limits/throughSlotVelocity', 0],
    ['/limits/throughSlotVelocity', '0.5 ft'],
    ['/limits/throughSlotVelocity', '0.5ft/s'],
    ['/limits/cloggedFraction', 1],
    ['/limits/cloggedFraction', -0.01],
    ['/limits/screenBasis', 'median'],
    ['/limits/pipeVelocity', '3 km/h'],
    ['/limits/maximumEfficiency', 1.01],
    ['/limits/maximumEfficiency', 0],
    ['/limits/enforceNpsh', 'yes'],
    ['/limits/allowExtrapolation', 1],
    ['/limits/noise', 40],
    ['/rankingLimit', 0],
    ['/rankingLimit', 10_001],
    ['/rankingLimit', 2.5],
    ['/colour', 'blue'],
  ])('for %s of %j', async (...row) => {
    await tell(row);
  });

  it.each(NOT_NUMBERS)('for "%s" in place of a quantity', async (text) => {
    await tell(['/limits/pipeVelocity', text]);
    await tell(['/loop/staticHead', text]);
    await tell(['/loop/discharge/run/0/length', text]);
    await tell(['/pumps/0/pump/headPoints/2/flow', text]);
    await tell(['/pumps/1/powerPoints/0/power', text]);
  });

  it('for more candidates than the limit', async () => {
    const problem = await tell(['/pumps', Array(10_001).fill('x'), ['/pumps']]);
    expect(problem).toMatchObject({ code: 'limit-exceeded', limit: 10_000, actual: 10_001 });
  });

  it('with 50 places at most', async () => {
    const body = { loop: FLUME, pumps: Array(200).fill({ wrong: 1 }) };
    expect((await refused(await recommend(app, body))).errors?.length).toBeLessThanOrEqual(50);
  });

  it('for brackets nested deeper than the limit', async () => {
    const nested = JSON.parse(`${'['.repeat(100)}${']'.repeat(100)}`);
    const problem = await refused(await recommend(app, { loop: nested }));
    expect(problem).toMatchObject({ status: 422, code: 'limit-exceeded', limit: 100, actual: 101 });
  });
});

describe('a loop in a question is refused', () => {
  const first = '/loop/discharge/branches/0';
  const second = '/loop/discharge/branches/1';

  it.each<Row>([
    ['/loop/name', ''],
    ['/loop/name', 'a'.repeat(121)],
    ['/loop/name', undefined],
    ['/loop/colour', 'blue'],
    ['/loop/water/temperature', 46],
    ['/loop/water/temperature', '25 L'],
    ['/loop/water/salinity', -1],
    ['/loop/staticHead', '3 L/h'],
    ['/loop/frictionMultiplier', 0],
    ['/loop/frictionMultiplier', '1'],
    ['/loop/tank/volume', 0],
    ['/loop/tank/volume', '10 m2'],
    ['/loop/intake/lossCoefficient', -0.5],
    ['/loop/intake/screen/openFraction', 1.5],
    ['/loop/intake/screen/shape', 'cone'],
    ['/loop/suction/0/pipe', 'sch80 1-5/8'],
    ['/loop/suction/0/pipe', 40],
    ['/loop/suction/0/length', -1],
    ['/loop/suction/1/fitting', 'elbow-91'],
    ['/loop/suction/1/count', 0],
    ['/loop/discharge', []],
    ['/loop/discharge/branches', []],
    ['/loop/discharge/split', 'wye'],
    [`${first}/run`, undefined],
    [`${first}/run/0/pipe`, 'copper 22'],
    [`${first}/run/0/pipe/insideDiameter`, 0],
    [`${first}/run/0/pipe/insideDiameter`, '40 L'],
    [`${first}/run/0/pipe/roughness`, -1],
    [`${first}/run/0/pipe/roughness`, 4.1],
    [`${first}/run/0/length`, '3 mi'],
    [`${first}/run/1/valve`, 'needle'],
    [`${first}/run/1/opening`, 101],
    [`${first}/run/1`, {}],
    [`${first}/run/1`, { pipe: 'sch80 1', length: 1, count: 2 }, [`${first}/run/1/count`]],
    [`${first}/outlet/requiredFlow`, -1],
    [`${first}/outlet/requiredFlow`, '3 m'],
    [`${first}/outlet/maximumFlow`, 2999],
    [`${first}/outlet/nozzleDiameter`, 0],
    [`${first}/outlet/nozzleCount`, 0.5],
    [`${first}/outlet/name`, ''],
    [`${first}/outlet/jet`, {}],
    [`${second}/run/0/lossCoefficient`, -2],
    [`${second}/outlet`, { name: 'both' }],
    [`${second}/branches/1/outlet/name`, 'far end'],
    [`${second}/branches/0/outlet`, undefined, [`${second}/branches/0`]],
  ])('for %s of %j', async (...row) => {
    await tell(row);
  });

  it('for an element that has no diameter to take', async () => {
    const run = [{ fitting: 'elbow-90' }];
    const loop = { name: 'bare', discharge: { run, outlet: { name: 'end', requiredFlow: 1 } } };
    await tell(['/loop', loop, ['/loop/discharge/run/0']]);
  });

  it('for an opening at which the loss of the valve is not known', async () => {
    await tell([`${first}/run/1`, { valve: 'plug', opening: 55 }, [`${first}/run/1/opening`]]);
  });

  it('for elements, branches and levels beyond their limits', async () => {
    const leaf = (name: string) => ({ run: [], outlet: { name, requiredFlow: 1 } });
    const run = Array(201).fill({ pipe: 'sch80 2', length: 1 });
    expect(await tell([`${first}/run`, run])).toMatchObject({ limit: 200, actual: 201 });
    const wide = Array.from({ length: 2001 }, (_, i) => leaf(`o${i}`));
    expect(await tell([`${second}/branches`, wide])).toMatchObject({ limit: 2000, actual: 2001 });
    const deep = (levels: number): Json =>
      levels === 0 ? leaf('deep') : { run: [], branches: [deep(levels - 1)] };
    const problem = await tell(['/loop/discharge', deep(33)]);
    expect(problem).toMatchObject({ limit: 32, actual: 33 });
  });

  it('for a system curve whose parts do not go together', async () => {
    const curve = example('loop-system-curve.json');
    const at = (pointer: string, value: unknown, ...told: string[]): Promise<unknown> => {
      const expected = told.length === 0 ? [pointer] : told;
      return tell(['/loop', changed(curve, pointer, value), expected.map((place) => `/loop${place}`)]);
    };
    await at('/outlets/0/share', 0.3, '/outlets');
    await at('/outlets/0/share', 1.1, '/outlets/0/share', '/outlets');
    await at('/outlets/1/name', 'raceway 4');
    await at('/outlets', [], '/outlets', '/outlets');
    await at('/systemCurve/points', []);
    await at('/systemCurve/points/0/flow', -1);
    await at('/systemCurve/points/0/head', '2 bar/m');
    await at('/systemCurve/points', [{ flow: 0, head: 3 }]);
    await at('/staticHead', 1);
    await at('/discharge', { run: [], outlet: { name: 'x' } });
  });
});

describe.each(['/pumps/0/pump', '/pumps/1'])('a pump at %s is refused', (at) => {
  it.each<[string, unknown, string?]>([
    ['/name', undefined],
    ['/name', 'a'.repeat(121)],
    ['/headPoints', undefined],
    ['/headPoints', []],
    [
      '/headPoints',
      [
        { flow: 500, head: 5 },
        { flow: 1000, head: 4 },
      ],
    ],
    [
      '/headPoints',
      [
        { flow: 0, head: 1 },
        { flow: 1000, head: 2 },
        { flow: 2000, head: 3 },
      ],
    ],
    ['/headPoints/2/flow', -1],
    ['/headPoints/2/flow', '3 m'],
    ['/headPoints/2/head', '3 L/h'],
    ['/headPoints/2/setting', 101],
    ['/headPoints/2/speed', 3],
    ['/powerPoints', []],
    ['/powerPoints/0/power', 2],
    ['/powerPoints/0/power', '245 V'],
    [
      '/powerPoints',
      [
        { setting: 60, power: 200 },
        { setting: 100, power: 100 },
      ],
    ],
    ['/powerPoints/1/setting', 0],
    ['/settings/min', 101],
    ['/settings/max', 20],
    ['/settings/step', 0],
    ['/settings/step', 0.0001],
    ['/speedMap', [{ setting: 30, speed: 50 }], '/speedMap/0/setting'],
    ['/standbyPower', -1],
    ['/npshPoints/0/head', '3 kg'],
    ['/flowLimits/max', 1000],
    ['/grade', '4C'],
    ['/mounting', 'wall'],
    ['/motorEfficiency', 1.2],
    ['/failures/devices', 0],
    ['/service/minutes', -1],
    ['/colour', 'blue'],
  ])('for %s of %j', async (pointer, value, told = pointer) => {
    const problem = await refused(
      await app.call('/v1/recommendations', {
        method: 'POST',
        headers: { 'Content-Type': 'application/json' },
        body: JSON.stringify(changed(VALID, `${at}${pointer}`, value)),
      }),
    );
    expect(problem.status).toBe(422);
    expect(problem.errors?.[0]?.pointer?.startsWith(`${at}${told}`), JSON.stringify(problem.errors)).toBe(
      true,
    );
  });
});
