/** Recommendations by ids over HTTP against a bare route that validates the same body and answers the same bytes. */
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import autocannon from 'autocannon';
import { type BenchRow, benchRow } from './bench-row.ts';
import { median } from './median.ts';

const ROUNDS = 7;
const WARM_UP_ROUNDS = 2;
const SECONDS = 1.2;
const CONNECTIONS = 10;
const HEADERS = { 'Content-Type': 'application/json' } as const;

interface Served {
  readonly url: string;
  readonly body: string;
}

const isServed = (message: unknown): message is Served =>
  typeof message === 'object' && message !== null && 'url' in message && 'body' in message;

async function answerOf(url: string, body: string): Promise<string> {
  const response = await fetch(url, { method: 'POST', headers: HEADERS, body });
  if (!response.ok) throw new Error(`${url} answers ${response.status}`);
  return response.text();
}

/** The same question at a price that was not asked before: nothing kept of an earlier answer serves it. */
function newQuestions(body: string): () => string {
  const asked: Readonly<Record<string, unknown>> = JSON.parse(body);
  let price = 0.1;
  return () => {
    price += 1e-6;
    return JSON.stringify({ ...asked, price });
  };
}

/** Requests a second. */
async function rateOf(url: string, body: string, nextBody: () => string = () => body): Promise<number> {
  const load = {
    url,
    body,
    method: 'POST',
    headers: HEADERS,
    connections: CONNECTIONS,
    duration: SECONDS,
    requests: [{ setupRequest: (request: { body: string }) => ({ ...request, body: nextBody() }) }],
  } as const;
  const { requests, duration, errors, non2xx } = await autocannon(load);
  if (errors + non2xx > 0) throw new Error(`${url}: ${errors} errors, ${non2xx} refusals`);
  return requests.total / duration;
}

async function measured({ url, body }: Served): Promise<BenchRow> {
  const full = `${url}/v1/recommendations`;
  const bare = `${url}/v1/bare`;
  const answer = await answerOf(full, body);
  if (answer !== (await answerOf(bare, body))) throw new Error('the two routes answer different bytes');
  const fullRates: number[] = [];
  const bareRates: number[] = [];
  const newRates: number[] = [];
  const nextBody = newQuestions(body);
  const ratios: number[] = [];
  for (let round = -WARM_UP_ROUNDS; round < ROUNDS; round++) {
    // Between two loads of the one, a load of the other: what drifts falls on both.
    const before = await rateOf(bare, body);
    const fullRate = await rateOf(full, body);
    const newRate = await rateOf(full, body, nextBody);
    const bareRate = (before + (await rateOf(bare, body))) / 2;
    if (round < 0) continue;
    fullRates.push(fullRate);
    bareRates.push(bareRate);
    newRates.push(newRate);
    ratios.push(fullRate / bareRate);
  }
  return benchRow({
    name: 'recommendation by ids, 4 pumps / bare route, requests a second',
    ratio: median(ratios),
    limit: { atLeast: 0.5 },
    detail: `recommendation ${median(fullRates).toFixed(0)}/s, bare ${median(bareRates).toFixed(0)}/s, ${answer.length} bytes each; ${median(newRates).toFixed(0)}/s where no question was asked before`,
  });
}

export async function recommendationBench(): Promise<readonly BenchRow[]> {
  const script = fileURLToPath(new URL('./recommendation-server.ts', import.meta.url));
  const server = fork(script, {
    execArgv: ['--import', 'tsx'],
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
  });
  try {
    const [message]: unknown[] = await once(server, 'message');
    if (!isServed(message)) throw new Error('the server did not say where it listens');
    return [await measured(message)];
  } finally {
    server.disconnect();
  }
}
