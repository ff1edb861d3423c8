/** Summaries of sites of several sizes, and what setpoints wait for meanwhile. */
import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { type BenchRow, benchRow } from './bench-row.ts';
import { median } from './median.ts';

const ROUNDS = 3;
const IDLE_MS = 3_000;
/** Between one setpoint and the next. */
const PAUSE_MS = 10;
const MICROSECONDS = 1e6;

interface Served {
  readonly url: string;
  readonly setpoint: string;
}

const isServed = (value: unknown): value is Served =>
  typeof value === 'object' && value !== null && 'url' in value && 'setpoint' in value;

const isUsage = (value: unknown): value is NodeJS.CpuUsage =>
  typeof value === 'object' && value !== null && 'user' in value && 'system' in value;

/** Processor seconds of all threads of the server so far. */
async function processorSeconds(server: ChildProcess): Promise<number> {
  const answer = once(server, 'message');
  server.send('usage');
  const [usage]: unknown[] = await answer;
  if (!isUsage(usage)) throw new Error('the server did not tell its processor time');
  return (usage.user + usage.system) / MICROSECONDS;
}

/** After it, nothing that was worked out before serves. */
async function newPrice(url: string, price: number): Promise<void> {
  const body = JSON.stringify({ name: 'Bench', timeZone: 'UTC', currency: 'EUR', price });
  const headers = { 'Content-Type': 'application/json', 'If-Match': '*' };
  const response = await fetch(`${url}/v1/site`, { method: 'PUT', headers, body });
  if (!response.ok) throw new Error(`the site answers ${response.status}`);
  await response.text();
}

async function summed(url: string): Promise<void> {
  const response = await fetch(`${url}/v1/summary`);
  const text = await response.text();
  if (!response.ok) throw new Error(`the summary answers ${response.status}: ${text}`);
}

let price = 0.1;

async function secondsOf(server: ChildProcess, { url }: Served): Promise<number> {
  price += 0.001;
  await newPrice(url, price);
  const before = await processorSeconds(server);
  await summed(url);
  return (await processorSeconds(server)) - before;
}

/** Milliseconds of one setpoint after the other, for as long as it is wanted. */
async function setpointsWhile(url: string, goesOn: () => boolean): Promise<readonly number[]> {
  const times: number[] = [];
  while (goesOn()) {
    const start = performance.now();
    const response = await fetch(url);
    await response.text();
    times.push(performance.now() - start);
    await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
  }
  return times;
}

function idleSetpoints(url: string): Promise<readonly number[]> {
  const end = performance.now() + IDLE_MS;
  return setpointsWhile(url, () => performance.now() < end);
}

const percentile95 = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[Math.floor(0.95 * times.length)] ?? Number.NaN;

async function waitingRows({ url, setpoint }: Served): Promise<readonly BenchRow[]> {
  await idleSetpoints(setpoint);
  const before = await idleSetpoints(setpoint);
  price += 0.001;
  await newPrice(url, price);
  let isRunning = true;
  const summary = summed(url).finally(() => {
    isRunning = false;
  });
  const busy = await setpointsWhile(setpoint, () => isRunning);
  await summary;
  const idle = [...before, ...(await idleSetpoints(setpoint))];
  const row = (name: string, figure: (times: readonly number[]) => number, atMost: number) =>
    benchRow({
      name: `setpoint during a summary / idle, ${name}`,
      ratio: figure(busy) / figure(idle),
      limit: { atMost },
      detail: `${figure(busy).toFixed(2)} ms of ${busy.length}, idle ${figure(idle).toFixed(2)} ms of ${idle.length}`,
    });
  return [row('median', median, 3), row('95th percentile', percentile95, 10)];
}

async function measured(server: ChildProcess, sites: readonly Served[]): Promise<readonly BenchRow[]> {
  const [large, fewLoops, fewPumps] = sites;
  if (large === undefined || fewLoops === undefined || fewPumps === undefined)
    throw new Error('a site is missing');
  await secondsOf(server, fewLoops);
  const times = { large: [] as number[], fewLoops: [] as number[], fewPumps: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    times.fewLoops.push(await secondsOf(server, fewLoops));
    times.fewPumps.push(await secondsOf(server, fewPumps));
    times.large.push(await secondsOf(server, large));
  }
  const seconds = median(times.large);
  const row = (name: string, others: readonly number[]) =>
    benchRow({
      name: `summary of 1,000 loops x 50 pumps / ${name}`,
      ratio: seconds / median(others),
      limit: { atMost: 12 },
      detail: `${seconds.toFixed(2)} s and ${median(others).toFixed(2)} s of processor time`,
    });
  return [row('100 x 50', times.fewLoops), row('1,000 x 5', times.fewPumps), ...(await waitingRows(large))];
}

export async function summaryBench(): Promise<readonly BenchRow[]> {
  const script = fileURLToPath(new URL('./summary-server.ts', import.meta.url));
  const server = fork(script, {
    execArgv: ['--import', 'tsx'],
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
  });
  try {
    const [message]: unknown[] = await once(server, 'message');
    if (!Array.isArray(message) || !message.every(isServed))
      throw new Error('the server did not say where it listens');
    return await measured(server, message);
  } finally {
    server.disconnect();
  }
}
