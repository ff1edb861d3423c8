/** Asks the service itself, about the demo's flume, for the answers that the document shows. */
import { MS_PER_DAY } from '../../models/calendar/zone-offsets.ts';
import { example } from '../http/examples.ts';

type Fetch = (path: string, init?: RequestInit) => Promise<Response>;
type Body = Readonly<Record<string, unknown>>;
type Ask = (path: string, init?: RequestInit) => Promise<Body>;
type Answers = ReadonlyMap<string, unknown>;

function bodyFrom(value: unknown): Body {
  if (typeof value !== 'object' || value === null) throw new Error('an example is no object');
  return { ...value };
}

const asking =
  (call: Fetch): Ask =>
  async (path, init) => {
    const response = await call(path, init);
    const body: unknown = await response.json();
    if (!response.ok) throw new Error(`an example is not accepted: ${JSON.stringify(body)}`);
    return bodyFrom(body);
  };

const sending = (
  method: 'POST' | 'PUT',
  document: unknown,
  headers: Readonly<Record<string, string>> = {},
): RequestInit => ({
  method,
  headers: { 'Content-Type': 'application/json', ...headers },
  body: JSON.stringify(document),
});

const ANY_VERSION = { 'If-Match': '*' };

async function stored(ask: Ask, path: string, document: unknown, key?: string): Promise<string> {
  const { id } = await ask(path, sending('POST', { ...bodyFrom(document), key }));
  return String(id);
}

/** The ids of what is asked about. */
interface World {
  readonly pump: string;
  readonly weak: string;
  readonly loop: string;
  /** With a schedule and its pump installed. */
  readonly scheduled: string;
  readonly plan: string;
}

async function storedWorld(ask: Ask): Promise<World> {
  await ask('/v1/site', sending('PUT', example('site'), ANY_VERSION));
  const pump = await stored(ask, '/v1/pumps', example('pump-canister-250'), 'canister-250');
  const weak = await stored(ask, '/v1/pumps', example('pump-inline-60'), 'inline-60');
  const flume = bodyFrom(example('loop-kelp-flume'));
  const loop = await stored(ask, '/v1/loops', flume, 'kelp-flume');
  const installed = { pump, count: 1, setting: 80, checkValves: true };
  const twoPhases = { ...flume, name: 'Kelp flume by day and night', installed };
  const scheduled = await stored(ask, '/v1/loops', twoPhases, 'kelp-flume-two-phases');
  await ask(`/v1/loops/${scheduled}/schedule`, sending('PUT', example('schedule')));
  const bank = { pump: weak, count: 3, setting: 90, checkValves: true };
  const bankLoop = { ...bodyFrom(example('loop-seahorse-bank')), installed: bank };
  await stored(ask, '/v1/loops', bankLoop, 'seahorse-bank');
  const plan = await stored(ask, '/v1/upgrade-plans', example('upgrade-plan'));
  return { pump, weak, loop, scheduled, plan };
}

const questionsOf = ({ pump, weak, loop, scheduled, plan }: World): Readonly<Record<string, string>> => ({
  'answers/curves.json': `/v1/pumps/${pump}/curves?setting=70&points=4`,
  'answers/system-curve.json': `/v1/loops/${loop}/system-curve?flow=9000&points=3`,
  'answers/duty-point.json': `/v1/loops/${loop}/duty-point?pump=${pump}&setting=70`,
  'answers/recommendation.json': `/v1/loops/${loop}/recommendation?pump=${pump},${weak}`,
  'answers/schedule.json': `/v1/loops/${scheduled}/schedule?year=2026`,
  'answers/setpoint.json': `/v1/loops/${scheduled}/setpoint`,
  'answers/setpoints.json': `/v1/loops/${scheduled}/setpoints`,
  'answers/summary.json': '/v1/summary',
  'answers/upgrade-plan.json': `/v1/upgrade-plans/${plan}`,
  'answers/upgrade-plans.json': '/v1/upgrade-plans',
  'answers/export.json': '/v1/export',
  'answers/water.json': '/v1/reference/water?temperature=25&salinity=35',
  'answers/pipes.json': '/v1/reference/pipes',
  'answers/fittings.json': '/v1/reference/fittings',
});

/** Questions of records that are stored, by the name of the example that is sent. */
const POSTED = {
  'answers/bill-of-materials.json': { path: '/v1/bills-of-materials', document: 'bill-of-materials' },
  'answers/design.json': { path: '/v1/designs', document: 'design-kelp-flume' },
  'answers/comparison.json': { path: '/v1/comparisons', document: 'comparison-seahorse-bank' },
  'answers/spares.json': { path: '/v1/spares', document: 'spares' },
};

/** By file name in openapi/examples, in the order they are asked for; `call` reaches a service without any record. */
export async function exampleAnswers(call: Fetch): Promise<Answers> {
  const ask = asking(call);
  const world = await storedWorld(ask);
  const answers = new Map<string, unknown>();
  for (const [file, path] of Object.entries(questionsOf(world))) {
    answers.set(file, withFirstItems(await ask(path)));
  }
  for (const [file, { path, document }] of Object.entries(POSTED)) {
    answers.set(file, await ask(path, sending('POST', example(document))));
  }
  answers.set('answers/comparisons.json', await ask('/v1/comparisons'));
  return new Map([
    ...answers,
    ...(await maintenanceAnswers(ask, world.scheduled)),
    ...(await readingAnswers(ask, world)),
    ...(await calibrationAnswers(ask, world.pump)),
  ]);
}

const SHOWN_ITEMS = 3;

/** A long table is shown by its first rows. */
function withFirstItems(body: Body): unknown {
  const { items } = body;
  return Array.isArray(items) ? { ...body, items: items.slice(0, SHOWN_ITEMS) } : body;
}

async function maintenanceAnswers(ask: Ask, loop: string): Promise<Answers> {
  const tasks = '/v1/maintenance-tasks';
  const task = { ...bodyFrom(example('maintenance-task')), loop };
  const id = await stored(ask, tasks, task, 'clean-flume-screen');
  const completion = await ask(`${tasks}/${id}/completions`, sending('POST', example('completion')));
  const starter = await ask(`/v1/loops/${loop}/starter-tasks`, sending('POST', example('starter-tasks')));
  return new Map<string, unknown>([
    ['answers/completion.json', completion],
    ['answers/completions.json', await ask(`${tasks}/${id}/completions`)],
    ['answers/maintenance-task.json', await ask(`${tasks}/${id}`)],
    ['answers/maintenance-tasks.json', await ask(`${tasks}?limit=3`)],
    ['answers/starter-tasks.json', starter],
  ]);
}

const FIRST_READING = Date.UTC(2025, 10, 1, 10);
/** Days of readings; from the 45th day on the flow falls by this share a day. The power points of the pump show no change with flow. */
const CLOGGING = { days: 72, from: 45, perDay: 0.004 } as const;
/** Readings lie within these shares of what happens, spread evenly. */
const SCATTER = { flow: 0.02, power: 0.01 } as const;
/** Fractions of multiples of these fill an interval evenly, in an order that repeats nothing. */
const SPREAD = { flow: 0.618034, power: 0.754878 } as const;

const scattered = (measure: keyof typeof SCATTER, day: number): number =>
  1 + SCATTER[measure] * (2 * ((day * SPREAD[measure]) % 1) - 1);

/** Those of a loop whose intake clogs, day by day. */
function cloggingReadings({ flow, power }: Body): unknown {
  return Array.from({ length: CLOGGING.days }, (_, day) => {
    const lost = Math.max(0, day - CLOGGING.from) * CLOGGING.perDay;
    return {
      time: new Date(FIRST_READING + day * MS_PER_DAY).toISOString(),
      setting: 80,
      flow: Math.round(Number(flow) * (1 - lost) * scattered('flow', day)),
      power: Math.round(10 * Number(power) * scattered('power', day)) / 10,
    };
  });
}

async function readingAnswers(ask: Ask, { scheduled, pump }: World): Promise<Answers> {
  const readings = `/v1/loops/${scheduled}/readings`;
  await ask(readings, sending('POST', example('readings')));
  return new Map([
    ['answers/readings.json', await ask(`${readings}?limit=2`)],
    ...(await conditionAnswers(ask, pump)),
  ]);
}

/** Of a flume of its own whose intake clogs. */
async function conditionAnswers(ask: Ask, pump: string): Promise<Answers> {
  const installed = { pump, count: 1, setting: 80, checkValves: true };
  const flume = { ...bodyFrom(example('loop-kelp-flume')), installed };
  const path = `/v1/loops/${await stored(ask, '/v1/loops', flume)}`;
  const duty = await ask(`${path}/duty-point`);
  await ask(`${path}/readings`, sending('POST', { readings: cloggingReadings(duty) }));
  return new Map([
    ['answers/condition.json', await ask(`${path}/condition?price=0.21&cleaningCost=15`)],
    ['answers/baseline.json', await ask(`${path}/baseline`, sending('POST', example('baseline')))],
  ]);
}

/** Of a flume of its own with this pump installed, which is measured first. */
async function calibrationAnswers(ask: Ask, pump: string): Promise<Answers> {
  const installed = { pump, count: 1, setting: 80 };
  const flume = { ...bodyFrom(example('loop-kelp-flume')), name: 'Kelp flume, measured', installed };
  const id = await stored(ask, '/v1/loops', flume, 'kelp-flume-measured');
  await ask(`/v1/loops/${id}/readings`, sending('POST', example('readings-calibration')));
  const path = `/v1/loops/${id}/calibration`;
  const request = bodyFrom(example('calibration'));
  const computed = await ask(path, sending('POST', request));
  await ask(path, sending('POST', { ...request, apply: true }, ANY_VERSION));
  return new Map<string, unknown>([
    ['answers/calibration.json', computed],
    ['answers/calibrations.json', await ask(path)],
  ]);
}
