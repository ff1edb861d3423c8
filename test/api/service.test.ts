import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { DEFAULT_SITE_ID } from '../../api/access/site.ts';
import type { Environment } from '../../api/environment.ts';
import { SITE } from '../../api/records/site/kind.ts';
import type { RunningServer } from '../../api/server.ts';
import { startService } from '../../api/service.ts';
import type { Store } from '../../api/store/store.ts';
import { openedStore, removeDirectory, temporaryDirectory } from './store/opened.ts';

const clock = () => new Date('2026-01-01T00:00:00Z');

let directory = '';
let environment: Environment;
beforeEach(() => {
  directory = temporaryDirectory();
  const databasePath = join(directory, 'loops.sqlite');
  environment = { port: 0, host: '127.0.0.1', databasePath, currency: 'USD', logLevel: 'silent' };
});
afterEach(() => removeDirectory(directory));

const siteName = (store: Store) => async () =>
  new Response((await store.of(DEFAULT_SITE_ID, SITE).get())?.document.currency);

async function started(fetchFor: (store: Store) => () => Promise<Response>): Promise<RunningServer> {
  const service = await startService({ environment, clock, fetchFor });
  if (!service.ok) throw new Error(service.failure.reason);
  return service.value;
}

const reasonOf = async (changes: Partial<Environment>): Promise<string> => {
  const changed = { ...environment, ...changes };
  const service = await startService({ environment: changed, clock, fetchFor: siteName });
  if (!service.ok) return service.failure.reason;
  await service.value.stop();
  return 'started';
};

describe('the service', () => {
  it('makes the default site at the first start and keeps it at the next', async () => {
    const first = await started(siteName);
    expect(await (await fetch(first.url)).text()).toBe('USD');
    await first.stop();
    environment = { ...environment, currency: 'EUR' };
    const second = await started(siteName);
    expect(await (await fetch(second.url)).text()).toBe('USD');
    await second.stop();
  });

  it('lets a request under way finish before it closes the store, and takes no new one', async () => {
    let enter = () => {};
    let proceed = () => {};
    const entered = new Promise<void>((resolve) => {
      enter = resolve;
    });
    const proceeding = new Promise<void>((resolve) => {
      proceed = resolve;
    });
    const service = await started((store) => async () => {
      enter();
      await proceeding;
      return await siteName(store)();
    });
    const answer = fetch(service.url);
    await entered;
    const stopped = service.stop();
    await expect(fetch(service.url)).rejects.toThrow();
    proceed();
    expect(await (await answer).text()).toBe('USD');
    await stopped;
    await (await openedStore(environment.databasePath)).close();
    // Well under the time for which idle connections are kept: the stop hangs up on them.
  }, 8_000);

  it('says in one line that the port is taken, and lets go of the file', async () => {
    const service = await started(siteName);
    const port = Number(new URL(service.url).port);
    const reason = await reasonOf({ databasePath: join(directory, 'other.sqlite'), port });
    expect(reason).toMatch(
      new RegExp(`^cannot listen on HOST 127\\.0\\.0\\.1, PORT ${port}: .*EADDRINUSE.*\\.$`),
    );
    await (await openedStore(join(directory, 'other.sqlite'))).close();
    await service.stop();
  });

  it('says in one line that the file cannot be opened', async () => {
    const reason = await reasonOf({ databasePath: '/dev/null/loops.sqlite' });
    expect(reason).toMatch(/^\/dev\/null\/loops\.sqlite cannot be opened: .*DATABASE_URL.*\.$/);
  });
});
