/** Setpoints over HTTP against a bare route that answers the same bytes behind the same middleware. */
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import autocannon from 'autocannon';
import { type BenchRow, benchRow } from './bench-row.ts';
import { median } from './median.ts';

const ROUNDS = 7;
const WARM_UP_ROUNDS = 2;
const SECONDS = 1.5;
const CONNECTIONS = 10;

interface Served {
  readonly full: string;
  readonly bare: string;
}

const isServed = (message: unknown): message is Served =>
  typeof message === 'object' && message !== null && 'full' in message && 'bare' in message;

/** Requests a second. */
async function rateOf(url: string): Promise<number> {
  const load = {
    url,
    method: 'GET',
    body: '',
    headers: {},
    connections: CONNECTIONS,
    duration: SECONDS,
  } as const;
  const { requests, duration, errors, non2xx } = await autocannon(load);
  if (errors + non2xx > 0) throw new Error(`${url}: ${errors} errors, ${non2xx} refusals`);
  return requests.total / duration;
}

async function measured({ full, bare }: Served): Promise<BenchRow> {
  const [answer, same] = await Promise.all([full, bare].map(async (url) => (await fetch(url)).text()));
  if (answer === undefined || answer !== same) throw new Error('the two routes answer different bytes');
  const fullRates: number[] = [];
  const bareRates: number[] = [];
  const ratios: number[] = [];
  for (let round = -WARM_UP_ROUNDS; round < ROUNDS; round++) {
    // Between two loads of the one, a load of the other: what drifts falls on both.
    const before = await rateOf(bare);
    const fullRate = await rateOf(full);
    const bareRate = (before + (await rateOf(bare))) / 2;
    if (round < 0) continue;
    fullRates.push(fullRate);
    bareRates.push(bareRate);
    ratios.push(fullRate / bareRate);
  }
  return benchRow({
    name: 'setpoint / bare constant route, requests a second',
    ratio: median(ratios),
    limit: { atLeast: 0.5 },
    detail: `setpoint ${median(fullRates).toFixed(0)}/s, bare ${median(bareRates).toFixed(0)}/s, ${answer.length} bytes each`,
  });
}

export async function setpointBench(): Promise<readonly BenchRow[]> {
  const script = fileURLToPath(new URL('./setpoint-server.ts', import.meta.url));
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
