/** Mistakes that people make with a service like this one, and what each is answered: where it is, and what is accepted. */
import { beforeAll, describe, expect, it } from 'vitest';
import { type Facility, facility } from './features/schedule/facility.ts';
import { example, type Json } from './requests.ts';

const PUMP = example('pump-canister-250.json');
const LOOP = example('loop-kelp-flume.json');
const NOON = '2026-01-15T12:00:00Z';

let lab: Facility;
beforeAll(async () => {
  lab = await facility({ change: { clock: () => new Date(NOON) } });
});

type Method = 'GET' | 'POST' | 'PUT';
type Mistake = readonly [
  what: string,
  request: readonly [method: Method, path: string, body?: unknown],
  at: string,
  remedy: RegExp,
];

/** Ids are only known once the records are made. */
const filled = (text: string): string => text.replaceAll('LOOP_ID', lab.loop).replaceAll('PUMP_ID', lab.pump);

const points = (change: (point: { flow: number; head: number }) => object) =>
  [
    { flow: 0, head: 5.1 },
    { flow: 6000, head: 4.5 },
    { flow: 10_500, head: 3.3 },
    { flow: 14_000, head: 1.9 },
  ].map((point) => ({ ...point, ...change(point) }));

const pump = (change: Json): [Method, string, unknown] => ['POST', '/v1/pumps', { ...PUMP, ...change }];
const loop = (change: Json): [Method, string, unknown] => ['POST', '/v1/loops', { ...LOOP, ...change }];
const phase = (change: Json): [Method, string, unknown] => [
  'PUT',
  '/v1/loops/LOOP_ID/schedule',
  { phases: [{ name: 'day', from: '07:00', factor: 1, ...change }] },
];
const reading = (change: Json): [Method, string, unknown] => [
  'POST',
  '/v1/loops/LOOP_ID/readings',
  { readings: [{ time: NOON, setting: 70, ...change }] },
];
const get = (path: string): [Method, string] => ['GET', path];

const MISTAKES: readonly Mistake[] = [
  // Units.
  [
    'a unit that is not spelt so',
    pump({ headPoints: points(() => ({ flow: '6000 l/hour' })) }),
    '/headPoints/0/flow',
    /accepted are L\/h, .*m3\/h/,
  ],
  [
    'a length where a flow belongs',
    pump({ headPoints: points(() => ({ flow: '6 m' })) }),
    '/headPoints/0/flow',
    /accepted are L\/h/,
  ],
  [
    'a decimal comma',
    pump({ headPoints: points(() => ({ flow: '6,5' })) }),
    '/headPoints/0/flow',
    /a point as its decimal mark/,
  ],
  [
    'kilowatts for watts',
    pump({ powerPoints: [{ setting: 100, power: 0.245 }] }),
    '/powerPoints/0/power',
    /above standbyPower, 3 W/,
  ],
  [
    'Fahrenheit for Celsius',
    loop({ water: { temperature: 77, salinity: 35 } }),
    '/water/temperature',
    /at most 45 degC, not 77 degC/,
  ],
  ['a document in other units', loop({ units: 'us' }), '/units', /must be "metric"/],
  [
    'a system of units that is not there',
    get('/v1/loops/LOOP_ID?units=imperial'),
    'units',
    /one of metric, us/,
  ],
  // Fractions and percent.
  ['a percentage for a fraction', pump({ motorEfficiency: 80 }), '/motorEfficiency', /0\.35 for 35 %/],
  ['a fraction for a setting', get('/v1/loops/LOOP_ID/duty-point?setting=0.7'), 'setting', /30\.\.100 %/],
  [
    'a fraction for the setting of a reading',
    reading({ setting: 0.7, power: 85 }),
    '/readings/0/setting',
    /30\.\.100 %/,
  ],
  [
    'a fraction for an opening',
    phase({ openings: { left: 0.5 } }),
    '/phases/0/openings/left',
    /0 \(shut\) or 100/,
  ],
  [
    'a percentage for a share',
    phase({ pulse: { otherFactor: 0.5, periodMinutes: 15, share: 50 } }),
    '/phases/0/pulse/share',
    /0\.35 for 35 %/,
  ],
  // Columns and members that changed places.
  [
    'flow and head swapped',
    pump({ headPoints: points(({ flow, head }) => ({ flow: head, head: flow })) }),
    '/headPoints/1/head',
    /at most 1000 m, not 6000 m/,
  ],
  [
    'setting and power swapped',
    reading({ setting: 245, power: 70 }),
    '/readings/0/setting',
    /at most 100 %, not 245 %/,
  ],
  // Spelling.
  [
    'a field with a letter too few',
    phase({ factr: 1, factor: undefined }),
    '/phases/0/factr',
    /nearest is "factor"/,
  ],
  ['a field in other capitals', pump({ headpoints: [] }), '/headpoints', /nearest is "headPoints"/],
  [
    'a field cut short',
    loop({ water: { temp: 25, salinity: 35 } }),
    '/water/temp',
    /nearest is "temperature"/,
  ],
  [
    'a field by another word',
    reading({ watts: 85 }),
    '/readings/0/watts',
    /fields are time, setting, power, flow/,
  ],
  [
    'one for many',
    ['POST', '/v1/recommendations', { loop: 'LOOP_ID', pump: 'PUMP_ID' }],
    '/pump',
    /nearest is "pumps"/,
  ],
  [
    'a parameter with a letter too few',
    get('/v1/loops/LOOP_ID/duty-point?seting=70'),
    'seting',
    /parameters are pump, setting, .*units, format, pointer/,
  ],
  [
    'a parameter of another route',
    get('/v1/loops/LOOP_ID/setpoint?time=now'),
    'time',
    /parameters are at, units, format, pointer/,
  ],
  ['a parameter where none is', get('/v1/loops/LOOP_ID?unit=us'), 'unit', /parameters are units, pointer/],
  [
    'a name that is no fitting',
    loop({ suction: [{ fitting: 'elbow90' }] }),
    '/suction/0/fitting',
    /\/v1\/reference\/fittings/,
  ],
  [
    'an outlet that is not there',
    phase({ openings: { lefft: 0 } }),
    '/phases/0/openings/lefft',
    /names no outlet of the loop/,
  ],
  [
    'a day written out',
    [
      'POST',
      '/v1/tariffs',
      { name: 'a', periods: [{ name: 'p', price: 1, days: ['monday'] }], otherwise: { name: 'b', price: 1 } },
    ],
    '/periods/0/days/0',
    /"mon", "tue"/,
  ],
  // Ids of the wrong kind.
  [
    'a pump for a loop',
    ['POST', '/v1/recommendations', { loop: 'PUMP_ID' }],
    '/loop',
    /GET \/v1\/loops lists/,
  ],
  ['a loop for a pump', get('/v1/loops/LOOP_ID/duty-point?pump=LOOP_ID'), 'pump', /GET \/v1\/pumps lists/],
  [
    'a pump for a tariff',
    [
      'PUT',
      '/v1/loops/LOOP_ID/schedule',
      { tariff: 'PUMP_ID', phases: [{ name: 'a', from: '07:00', factor: 1 }] },
    ],
    '/tariff',
    /GET \/v1\/tariffs lists/,
  ],
  // Times.
  [
    'a time without its offset',
    get('/v1/loops/LOOP_ID/setpoint?at=2026-01-15T12:00:00'),
    'at',
    /with its offset, such as 2026-01-15T22:30:00Z/,
  ],
  ['an hour of one digit', phase({ from: '7:00' }), '/phases/0/from', /from 00:00 to 23:59/],
  ['a city for a zone', ['PUT', '/v1/site', { name: 'a', timeZone: 'Lisbon' }], '/timeZone', /IANA/],
  // Shapes.
  [
    'a list without its object',
    ['POST', '/v1/loops/LOOP_ID/readings', [{ time: NOON, setting: 70 }]],
    '',
    /of type object/,
  ],
  [
    'one id for a list',
    ['POST', '/v1/recommendations', { loop: 'LOOP_ID', pumps: 'PUMP_ID' }],
    '/pumps',
    /of type array/,
  ],
];

interface Fault {
  readonly pointer?: string;
  readonly parameter?: string;
  readonly detail: string;
}

describe('a natural mistake', () => {
  it.each(MISTAKES)('is answered with its place and its remedy: %s', async (_what, request, at, remedy) => {
    const [method, path, body] = request;
    const sent = body === undefined ? undefined : JSON.parse(filled(JSON.stringify(body)));
    const response = await lab.send(method, filled(path), sent, { 'if-match': '*' });
    const answer = await response.json();
    expect(response.status, JSON.stringify(answer)).toBe(422);
    const fault = answer.errors.find(({ pointer, parameter }: Fault) => (pointer ?? parameter) === at);
    expect(fault?.detail, JSON.stringify(answer.errors)).toMatch(remedy);
  });

  it.each(['/v1/loops/PUMP_ID', '/v1/loops/PUMP_ID/setpoint', '/v1/pumps/LOOP_ID'])(
    'in a path names what lists the ids that there are: %s',
    async (path) => {
      const response = await lab.send('GET', filled(path));
      const kind = path.split('/')[2];
      expect(response.status).toBe(404);
      expect((await response.json()).detail).toContain(`GET /v1/${kind} lists those that there are`);
    },
  );

  it('in the name of a collection names where all of them are listed', async () => {
    const response = await lab.send('GET', '/v1/loop');
    expect([response.status, (await response.json()).detail]).toEqual([
      404,
      'There is nothing at /v1/loop. /docs lists what there is.',
    ]);
  });

  it.each([
    ['swapped', 'time,power,setting\n2026-01-15T12:00:00Z,70,245\n', /at most 100 %, not 245 %/],
    ['misspelt', 'time,setting,pwr\n2026-01-15T12:00:00Z,70,85\n', /columns are .*time, setting, power/],
    [
      'separated by semicolons',
      'time;setting;power\n2026-01-15T12:00:00Z;70;85\n',
      /commas, not by semicolons/,
    ],
    ['with a unit of another quantity', 'time,setting,power [L/h]\n2026-01-15T12:00:00Z,70,85\n', /W/],
  ])('in a table is named with its line: columns %s', async (_what, text, remedy) => {
    const path = `/v1/loops/${lab.loop}/readings`;
    const headers = { 'content-type': 'text/csv' };
    const response = await lab.call(path, { method: 'POST', headers, body: text });
    const { errors } = JSON.parse(await response.text());
    expect([400, 422]).toContain(response.status);
    expect(errors[0].line).toBeGreaterThan(0);
    expect(errors[0].detail).toMatch(remedy);
  });
});

const inAnyOrder = (words: string): string => words.split(/[ ,]+/).toSorted().join(' ');

/** Every route, from the document that the service gives. */
describe('a parameter that a route does not have', () => {
  it('is answered with those that it has, on every route', async () => {
    const response = await lab.send('GET', '/openapi.json');
    const { paths } = await response.json();
    const misses: string[] = [];
    for (const [path, methods] of Object.entries<
      Record<string, { parameters?: { in: string; name: string }[] }>
    >(paths)) {
      for (const [method, { parameters = [] }] of Object.entries(methods)) {
        const named = parameters.flatMap((one) => (one.in === 'query' ? [one.name] : []));
        const address = `${path.replaceAll(/\{\w+\}/g, 'none')}?no-parameter=1`;
        const asked = await lab.send(method.toUpperCase(), address);
        const { errors = [] } = await asked.json();
        const fault = errors.find(({ parameter }: Fault) => parameter === 'no-parameter');
        const detail: string = fault?.detail ?? '';
        const listed = named.length === 0 ? 'there are none' : `parameters are ${named.join(', ')}`;
        if (asked.status !== 422 || inAnyOrder(detail) !== inAnyOrder(`is not a parameter here; ${listed}`))
          misses.push(`${method} ${path} ${asked.status}: ${detail}, expected ${listed}`);
      }
    }
    expect(misses).toEqual([]);
  });
});
