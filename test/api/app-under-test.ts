/** The application over an empty database in memory, with a clock and ids that tests can foretell. */

import { DEFAULT_SITE_ID } from '../../api/access/site.ts';
import { buildApi } from '../../api/app.ts';
import type { Api, AppDependencies } from '../../api/http/api.ts';
import { makeLogger } from '../../api/log.ts';
import { defaultSite, SITE } from '../../api/records/site/kind.ts';
import { openSqliteStore } from '../../api/store/sqlite.ts';
import { sameThread } from '../../api/threads/same-thread.ts';

const START = Date.UTC(2026, 0, 15, 12);

export interface AppUnderTest {
  /** Calls by a path, as a program on this machine would. */
  readonly call: (path: string, init?: RequestInit) => Promise<Response>;
  readonly api: Api;
  /** What the log says so far, a parsed line each. */
  readonly logLines: () => readonly Record<string, unknown>[];
}

function memoryLog() {
  const lines: string[] = [];
  const logger = makeLogger({ level: 'info' }, { write: (line: string) => void lines.push(line) });
  return { logger, logLines: () => lines.map((line): Record<string, unknown> => JSON.parse(line)) };
}

export async function appUnderTest(
  options: { mount?: (api: Api) => void; change?: Partial<AppDependencies> } = {},
): Promise<AppUnderTest> {
  const opened = await openSqliteStore(':memory:');
  if (!opened.ok) throw new Error(`no database in memory: ${opened.failure.code}`);
  const store = opened.value;
  let ticks = 0;
  let ids = 0;
  const clock = () => {
    ticks += 1;
    return new Date(START + ticks);
  };
  const newId = () => {
    ids += 1;
    return `00000000-0000-7000-8000-${String(ids).padStart(12, '0')}`;
  };
  const now = clock().getTime();
  await store.of(DEFAULT_SITE_ID, SITE).ensure({ document: defaultSite('EUR'), now });
  const { logger, logLines } = memoryLog();
  const deps = { store, clock, newId, logger, workers: sameThread, version: '0.0.0-test' };
  const api = buildApi({ ...deps, ...options.change }, options.mount);
  return { api, logLines, call: async (path, init) => api.app.request(`http://localhost${path}`, init) };
}
