/** The answers that the document shows, asked of the service itself about the demo's flume. */
import { example } from '../http/examples.ts';
import { calibrationAnswers } from './calibration-answers.ts';
import { maintenanceAnswers } from './maintenance-answers.ts';
import { readingAnswers } from './reading-answers.ts';

type Fetch = (path: string, init?: RequestInit) => Promise<Response>;

function bodyFrom(value: unknown): Record<string, unknown> {
  if (typeof value !== 'object' || value === null) throw new Error('an example is no object');
  return { ...value };
}

async function bodyOf(response: Response): Promise<Record<string, unknown>> {
  const body: unknown = await response.json();
  if (!response.ok) throw new Error(`an example is not accepted: ${JSON.stringify(body)}`);
  return bodyFrom(body);
}

const posting = (document: unknown): RequestInit => ({
  method: 'POST',
  headers: { 'Content-Type': 'application/json' },
  body: JSON.stringify(document),
});

async function post(call: Fetch, path: string, document: unknown): Promise<string> {
  const { id } = await bodyOf(await call(path, posting(document)));
  return String(id);
}

/** Questions of records that are stored, by the name of the example that is sent. */
const POSTED = {
  'answers/bill-of-materials.json': { path: '/v1/bills-of-materials', document: 'bill-of-materials' },
  'answers/comparison.json': { path: '/v1/comparisons', document: 'comparison-seahorse-bank' },
  'answers/spares.json': { path: '/v1/spares', document: 'spares' },
};

/** By file name in openapi/examples, in the order they are asked for; `call` reaches a service without any record. */
export async function exampleAnswers(call: Fetch): Promise<ReadonlyMap<string, unknown>> {
  const headers = { 'Content-Type': 'application/json', 'If-Match': '*' };
  await bodyOf(await call('/v1/site', { method: 'PUT', headers, body: JSON.stringify(example('site')) }));
  const pump = await post(call, '/v1/pumps', example('pump-canister-250'));
  const weak = await post(call, '/v1/pumps', example('pump-inline-60'));
  const loop = await post(call, '/v1/loops', example('loop-kelp-flume'));
  const installed = { pump, count: 1, setting: 80, checkValves: true };
  const document = {
    ...bodyFrom(example('loop-kelp-flume')),
    name: 'Kelp flume by day and night',
    installed,
  };
  const scheduled = await post(call, '/v1/loops', document);
  const put = {
    method: 'PUT',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(example('schedule')),
  };
  await bodyOf(await call(`/v1/loops/${scheduled}/schedule`, put));
  const bank = { pump: weak, count: 3, setting: 90, checkValves: true };
  await post(call, '/v1/loops', { ...bodyFrom(example('loop-seahorse-bank')), installed: bank });
  const plan = await post(call, '/v1/upgrade-plans', example('upgrade-plan'));
  const questions = {
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
  };
  const answers = new Map<string, unknown>();
  for (const [file, path] of Object.entries(questions)) {
    const body = await bodyOf(await call(path));
    answers.set(file, withFirstItems(body));
  }
  for (const [file, { path, document }] of Object.entries(POSTED)) {
    answers.set(file, await bodyOf(await call(path, posting(example(document)))));
  }
  answers.set('answers/comparisons.json', await bodyOf(await call('/v1/comparisons')));
  const ask = async (path: string, init?: RequestInit) => bodyOf(await call(path, init));
  const others = [
    ...(await maintenanceAnswers(ask, scheduled)),
    ...(await readingAnswers(ask, scheduled)),
    ...(await calibrationAnswers(ask, pump)),
  ];
  return new Map([...answers, ...others]);
}

const SHOWN_ITEMS = 3;

/** A long table is shown by its first rows. */
function withFirstItems(body: Record<string, unknown>): unknown {
  const { items } = body;
  return Array.isArray(items) ? { ...body, items: items.slice(0, SHOWN_ITEMS) } : body;
}
