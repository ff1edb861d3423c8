/** Starts the whole service, from environment to listening. */
import { failed, type Result, success } from '../curves/result.ts';
import { SITE_IDS } from './access/site.ts';
import type { Environment } from './environment.ts';
import { defaultSite, SITE } from './records/site/kind.ts';
import { type RunningServer, startServer } from './server.ts';
import { type OpenFailure, openSqliteStore } from './store/sqlite.ts';
import type { Store } from './store/store.ts';
import { StoreFault } from './store/store-fault.ts';

/** `reason` is one line for the person who starts the service. */
export interface StartFailure {
  readonly code: 'cannot-start';
  readonly reason: string;
}

interface Deps {
  readonly environment: Environment;
  readonly clock: () => Date;
  readonly fetchFor: (store: Store) => (request: Request, env: object) => Response | Promise<Response>;
}

function openReason(failure: OpenFailure, path: string): string {
  switch (failure.code) {
    case 'in-use-by-another-process':
      return `${path} is in use by another process; a SQLite file belongs to one. Stop that process, or set another DATABASE_URL.`;
    case 'schema-newer':
      return `${path} was written by a newer version of this program (${failure.unknown.join(', ')}). Start that version, or restore an older backup.`;
    case 'cannot-open':
      return `${path} cannot be opened: ${failure.reason}. Set a DATABASE_URL that can be written.`;
  }
}

function startReason(error: unknown, { databasePath, host, port }: Environment): string {
  const cause = error instanceof Error ? error.message : String(error);
  return error instanceof StoreFault
    ? `${databasePath} cannot be written: ${cause}.`
    : `cannot listen on HOST ${host}, PORT ${port}: ${cause}.`;
}

/** Closes the store only after the last request that may use it. */
const runningOver = (server: RunningServer, store: Store): RunningServer => ({
  url: server.url,
  async stop() {
    await server.stop();
    await store.close();
  },
});

/** Opens the store, makes the sites at the first start, listens. What was opened is closed again on a failure. */
export async function startService(deps: Deps): Promise<Result<RunningServer, StartFailure>> {
  const { environment, clock, fetchFor } = deps;
  const opened = await openSqliteStore(environment.databasePath);
  if (!opened.ok) {
    return failed({ code: 'cannot-start', reason: openReason(opened.failure, environment.databasePath) });
  }
  const store = opened.value;
  try {
    const document = defaultSite(environment.currency);
    for (const siteId of SITE_IDS) await store.of(siteId, SITE).ensure({ document, now: clock().getTime() });
    const { host, port } = environment;
    return success(runningOver(await startServer({ fetch: fetchFor(store), host, port }), store));
  } catch (error) {
    await store.close();
    return failed({ code: 'cannot-start', reason: startReason(error, environment) });
  }
}
