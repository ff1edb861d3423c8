/** A process with sites of several sizes, each with its summary and a scheduled loop to ask setpoints of. */

import { readFileSync } from 'node:fs';
import { v7 } from 'uuid';
import { DEFAULT_SITE_ID } from '../../api/access/site.ts';
import { buildApp } from '../../api/app.ts';
import { makeLogger } from '../../api/log.ts';
import { PUMPS } from '../../api/records/pump/kind.ts';
import { defaultSite, SITE } from '../../api/records/site/kind.ts';
import { startServer } from '../../api/server.ts';
import { openSqliteStore } from '../../api/store/sqlite.ts';
import { workerPool } from '../../api/threads/worker-pool.ts';
import { WORKER_FILE } from '../../api/worker-file.ts';
import { thousandPumps } from './thousand-pumps.ts';

/** Loops and pumps of each site. */
export const SITES = [
  { loops: 1000, pumps: 50 },
  { loops: 100, pumps: 50 },
  { loops: 1000, pumps: 5 },
] as const;

const EXAMPLES = [
  'loop-kelp-flume',
  'loop-nursery-raceways',
  'loop-touch-pool',
  'loop-seahorse-bank',
] as const;

const exampleOf = (file: string) =>
  JSON.parse(readFileSync(new URL(`../../openapi/examples/${file}.json`, import.meta.url), 'utf8'));

const workers = workerPool(WORKER_FILE);
const pumps = thousandPumps();

async function siteOf({ loops, pumps: count }: (typeof SITES)[number]) {
  const opened = await openSqliteStore(':memory:');
  if (!opened.ok) throw new Error(`no database: ${opened.failure.code}`);
  const store = opened.value;
  await store.of(DEFAULT_SITE_ID, SITE).ensure({ document: defaultSite('EUR'), now: Date.now() });
  const app = buildApp({
    ...{ store, workers, version: 'bench' },
    clock: () => new Date(),
    newId: () => v7(),
    logger: makeLogger({ level: 'fatal' }),
  });
  const sent = async (method: string, path: string, body: unknown): Promise<string> => {
    const headers = { 'Content-Type': 'application/json' };
    const request = { method, headers, body: JSON.stringify(body) };
    const response = await app.request(`http://localhost${path}`, request);
    const text = await response.text();
    if (!response.ok) throw new Error(`${method} ${path}: ${text}`);
    return JSON.parse(text).id;
  };
  for (const { entered: pump, fit } of pumps.slice(0, count)) {
    await store.of(DEFAULT_SITE_ID, PUMPS).insert({ id: v7(), document: pump, fit, now: Date.now() });
  }
  const pump = await sent('POST', '/v1/pumps', exampleOf('pump-canister-250'));
  const documents = EXAMPLES.map(exampleOf);
  const ids: string[] = [];
  for (let place = 0; place < loops; place++) {
    const document = { ...documents[place % documents.length], name: `Loop ${place}` };
    const installed = { pump, count: 1, setting: 60 + (place % 40) };
    ids.push(
      await sent('POST', '/v1/loops', { ...document, frictionMultiplier: 1 + place / 1e4, installed }),
    );
  }
  const [first = ''] = ids;
  await sent('PUT', `/v1/loops/${first}/schedule`, {
    phases: [
      { name: 'day', from: '07:00', factor: 1, rampMinutes: 10 },
      { name: 'night', from: '22:00', factor: 0.6 },
    ],
  });
  const { url } = await startServer({ fetch: (request) => app.fetch(request), host: '127.0.0.1', port: 0 });
  return { url, setpoint: `${url}/v1/loops/${first}/setpoint` };
}

const sites: Awaited<ReturnType<typeof siteOf>>[] = [];
for (const size of SITES) sites.push(await siteOf(size));
// The processor time of all threads, for whoever asks.
process.on('message', () => process.send?.(process.cpuUsage()));
process.send?.(sites);
process.once('disconnect', () => process.exit(0));
