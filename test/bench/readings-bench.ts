/** Readings over HTTP into a database file: batches against single posts, a year by day against a month by day. */

import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 } from 'uuid';
import { DEFAULT_SITE_ID } from '../../api/access/site.ts';
import { buildApi } from '../../api/app.ts';
import { makeLogger } from '../../api/log.ts';
import { READINGS } from '../../api/records/reading/kind.ts';
import { defaultSite, SITE } from '../../api/records/site/kind.ts';
import { openSqliteStore } from '../../api/store/sqlite.ts';
import type { Store } from '../../api/store/store.ts';
import { workerPool } from '../../api/threads/worker-pool.ts';
import { WORKER_FILE } from '../../api/worker-file.ts';
import { type BenchRow, benchRow } from './bench-row.ts';
import { median } from './median.ts';

const MINUTE = 60_000;
const DAY = 1_440 * MINUTE;
const START = Date.UTC(2025, 0, 1);
const YEAR_ROWS = 525_600;
const FILL_ROWS = 50_000;
const BATCH_ROWS = 5_000;
const SINGLE_POSTS = 200;
const ROUNDS = 5;
const POSTS_BESIDE = 3;
/** Far behind the year that is read by day. */
const BESIDE_FROM = START + 380 * DAY;
const WRITTEN_FROM = START + 500 * DAY;

type Call = (path: string, init?: RequestInit) => Promise<Response>;

const exampleOf = (file: string) =>
  JSON.parse(readFileSync(new URL(`../../openapi/examples/${file}.json`, import.meta.url), 'utf8'));

async function sent(call: Call, path: string, body: unknown): Promise<string> {
  const response = await call(path, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(body),
  });
  const text = await response.text();
  if (!response.ok) throw new Error(`${path}: ${text}`);
  return text;
}

const rowsFrom = (from: number, count: number) =>
  Array.from({ length: count }, (_, i) => ({
    time: new Date(from + i * MINUTE).toISOString(),
    setting: 70 + (i % 3),
    power: 118 + (i % 7),
    flow: 8_200 + (i % 50),
    suctionPressure: 2.4,
    dischargePressure: 23.1,
  }));

async function timed(work: () => Promise<unknown>): Promise<number> {
  globalThis.gc?.();
  const start = performance.now();
  await work();
  return performance.now() - start;
}

async function batches(call: Call, path: string): Promise<BenchRow> {
  const [single, batch]: [number[], number[]] = [[], []];
  let at = WRITTEN_FROM;
  const next = (count: number) => {
    const rows = rowsFrom(at, count);
    at += count * MINUTE;
    return rows;
  };
  for (let round = -1; round < ROUNDS; round += 1) {
    const ones = next(SINGLE_POSTS);
    const singleTime = await timed(async () => {
      for (const one of ones) await sent(call, path, { readings: [one] });
    });
    const many = next(BATCH_ROWS);
    const batchTime = await timed(() => sent(call, path, { readings: many }));
    if (round < 0) continue;
    single.push((SINGLE_POSTS / singleTime) * 1000);
    batch.push((BATCH_ROWS / batchTime) * 1000);
  }
  return benchRow({
    name: 'readings in a batch of 5,000 / by single posts, rows a second',
    ratio: median(batch) / median(single),
    limit: { atLeast: 20 },
    detail: `batch ${median(batch).toFixed(0)}/s, single ${median(single).toFixed(0)}/s`,
  });
}

async function days(call: Call, path: string): Promise<BenchRow> {
  const read = async (count: number): Promise<number> => {
    const to = new Date(START + count * DAY).toISOString();
    const query = `?by=day&from=${new Date(START).toISOString()}&to=${to}`;
    return await timed(async () => {
      const { items } = JSON.parse(await (await call(`${path}${query}`)).text());
      if (items.length < count) throw new Error(`${items.length} days of ${count}`);
    });
  };
  const [month, year]: [number[], number[]] = [[], []];
  for (let round = -1; round < ROUNDS; round += 1) {
    const [one, all] = [await read(30), await read(365)];
    if (round < 0) continue;
    month.push(one);
    year.push(all);
  }
  return benchRow({
    name: 'a year of minutes by day / a month by day, time',
    ratio: median(year) / median(month),
    limit: { atMost: 20 },
    detail: `year ${median(year).toFixed(0)} ms, month ${median(month).toFixed(0)} ms`,
  });
}

/** How long a setpoint waits at most while the largest bodies come in. */
async function setpointBeside(call: Call, { path, setpoint }: { path: string; setpoint: string }) {
  const ask = () => timed(async () => (await call(setpoint)).text());
  const alone: number[] = [];
  for (let i = 0; i < 50; i += 1) alone.push(await ask());
  const waits: number[] = [];
  let isFilling = true;
  const asking = (async () => {
    while (isFilling) {
      waits.push(await ask());
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
  })();
  for (let post = 0; post < POSTS_BESIDE; post += 1) {
    await sent(call, path, { readings: rowsFrom(BESIDE_FROM + post * FILL_ROWS * MINUTE, FILL_ROWS) });
  }
  isFilling = false;
  await asking;
  return `a setpoint ${median(alone).toFixed(1)} ms alone, beside posts of ${FILL_ROWS} rows ${median(waits).toFixed(1)} ms, ${Math.max(...waits).toFixed(0)} ms at most`;
}

/** A year of minutes. */
async function fill(store: Store, loop: string): Promise<string> {
  const time = await timed(async () => {
    for (let at = 0; at < YEAR_ROWS; at += FILL_ROWS) {
      const count = Math.min(FILL_ROWS, YEAR_ROWS - at);
      const readings = rowsFrom(START + at * MINUTE, count).map((row) => ({
        ...row,
        time: Date.parse(row.time),
        flow: row.flow / 3.6e6,
      }));
      await store.of(DEFAULT_SITE_ID, READINGS).insert({ loop, readings, outlets: [] });
    }
  });
  return `${YEAR_ROWS} rows stored in ${(time / 1000).toFixed(1)} s`;
}

export async function readingsBench(): Promise<readonly BenchRow[]> {
  const directory = mkdtempSync(join(tmpdir(), 'loopwright-bench-'));
  const opened = await openSqliteStore(join(directory, 'readings.sqlite'));
  if (!opened.ok) throw new Error(`no database: ${opened.failure.code}`);
  const store = opened.value;
  const workers = workerPool(WORKER_FILE);
  try {
    await store.of(DEFAULT_SITE_ID, SITE).ensure({ document: defaultSite('EUR'), now: Date.now() });
    const { app } = buildApi({
      store,
      clock: () => new Date(START + 2 * 365 * DAY),
      newId: () => v7(),
      logger: makeLogger({ level: 'fatal' }),
      workers,
      version: 'bench',
    });
    const call: Call = async (path, init) => app.request(`http://localhost${path}`, init);
    const pump = JSON.parse(await sent(call, '/v1/pumps', exampleOf('pump-canister-250'))).id;
    const installed = { pump, count: 1, setting: 80, checkValves: true };
    const document = { ...exampleOf('loop-kelp-flume'), installed };
    const { id } = JSON.parse(await sent(call, '/v1/loops', document));
    const path = `/v1/loops/${id}/readings`;
    const filled = await fill(store, id);
    const beside = await setpointBeside(call, { path, setpoint: `/v1/loops/${id}/setpoint` });
    const inBatches = await batches(call, path);
    const byDay = await days(call, path);
    return [
      { ...inBatches, detail: `${inBatches.detail}; ${beside}` },
      { ...byDay, detail: `${byDay.detail}; ${filled}` },
    ];
  } finally {
    await workers.close();
    await store.close();
    rmSync(directory, { recursive: true });
  }
}
