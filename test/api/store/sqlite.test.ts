import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { LOOPS } from '../../../api/records/loop/kind.ts';
import { ALL_PUMPS_LIMIT, PUMPS } from '../../../api/records/pump/kind.ts';
import { defaultSite, SITE } from '../../../api/records/site/kind.ts';
import { openDatabase, openSqliteStore, sqliteStore } from '../../../api/store/sqlite.ts';
import { translated } from '../../../api/store/sqlite-errors.ts';
import type { Store } from '../../../api/store/store.ts';
import { exampleFit, exampleLoop, examplePump, T0 } from './examples.ts';
import { openedStore, removeDirectory, temporaryDirectory } from './opened.ts';

const siteId = 'site';

let directory = '';
let path = '';
beforeEach(() => {
  directory = temporaryDirectory();
  path = join(directory, 'loops.sqlite');
});
afterEach(() => removeDirectory(directory));

async function storeWithPump(): Promise<Store> {
  const store = await openedStore(path);
  await store.of(siteId, SITE).ensure({ document: defaultSite('EUR'), now: T0 });
  await store.of(siteId, PUMPS).insert({ id: 'p1', document: examplePump(), fit: exampleFit, now: T0 });
  return store;
}

/** Does something to the closed file behind the store's back. */
function tamper(work: (database: Database.Database) => void): void {
  const database = new Database(path);
  work(database);
  database.close();
}

const withDatabase = <T>(work: (database: Database.Database) => T): T => {
  const opened = openDatabase(path);
  if (!opened.ok) throw new Error(opened.failure.code);
  const answer = work(opened.value);
  opened.value.close();
  return answer;
};

describe('opening', () => {
  it('has synchronous FULL, the write-ahead log, foreign keys and the exclusive lock, new and reopened', async () => {
    const settings = () =>
      withDatabase((database) =>
        ['synchronous', 'journal_mode', 'foreign_keys', 'locking_mode'].map((name) =>
          database.pragma(name, { simple: true }),
        ),
      );
    const full = [2, 'wal', 1, 'exclusive'];
    expect(settings()).toEqual(full);
    await (await storeWithPump()).close();
    expect(settings()).toEqual(full);
  });

  it('finds on reopening what was written before', async () => {
    await (await storeWithPump()).close();
    const store = await openedStore(path);
    expect(await store.of(siteId, PUMPS).get('p1')).toMatchObject({ fit: exampleFit, version: 1 });
    await store.close();
  });

  it('refuses a schema newer than the program and leaves it alone', async () => {
    await (await storeWithPump()).close();
    tamper((database) =>
      database.exec(`insert into kysely_migration values ('9999-of-tomorrow', '2030-01-01T00:00:00Z')`),
    );
    expect(await openSqliteStore(path)).toEqual({
      ok: false,
      failure: { code: 'schema-newer', unknown: ['9999-of-tomorrow'] },
    });
    tamper((database) => database.exec(`delete from kysely_migration where name like '9999%'`));
    await (await openedStore(path)).close();
  });

  it('leaves nothing of a migration that fails half-way', async () => {
    tamper((database) => database.exec('create table loop (strange text)'));
    const opened = await openSqliteStore(path);
    expect(opened.ok ? '' : opened.failure.code).toBe('cannot-open');
    tamper((database) => {
      const tables = database.prepare(`select name from sqlite_schema where type = 'table'`).pluck().all();
      expect(tables).toEqual(['loop']);
    });
  });

  it('refuses a file that is not a database and leaves it alone', async () => {
    const text = 'not a database\n'.repeat(100);
    writeFileSync(path, text);
    const opened = await openSqliteStore(path);
    expect(opened).toMatchObject({
      ok: false,
      failure: { code: 'cannot-open', reason: 'file is not a database' },
    });
    expect(readFileSync(path, 'utf8')).toBe(text);
  });

  it('refuses a path whose directory is a file', async () => {
    writeFileSync(path, '');
    const opened = await openSqliteStore(join(path, 'loops.sqlite'));
    expect(opened).toMatchObject({ ok: false, failure: { code: 'cannot-open' } });
  });
});

describe('closing', () => {
  it('moves the write-ahead log into the file', async () => {
    const store = await storeWithPump();
    expect(existsSync(`${path}-wal`)).toBe(true);
    await store.close();
    expect(existsSync(`${path}-wal`)).toBe(false);
    tamper((database) => expect(database.prepare('select id from pump').pluck().all()).toEqual(['p1']));
  });

  it('may be asked for twice', async () => {
    const store = await storeWithPump();
    await store.close();
    await expect(store.close()).resolves.toBeUndefined();
  });
});

describe('faults', () => {
  it('refuses a write for which there is no room, keeps what was there, and goes on when there is room', async () => {
    await (await storeWithPump()).close();
    const opened = openDatabase(path);
    if (!opened.ok) throw new Error(opened.failure.code);
    const made = await sqliteStore(opened.value);
    if (!made.ok) throw new Error(made.failure.code);
    const store = made.value;
    const pages = opened.value.pragma('page_count', { simple: true });
    opened.value.pragma(`max_page_count = ${pages}`);

    const large = { ...exampleLoop(), name: 'x'.repeat(200_000) };
    const loop = { siteId, id: 'l1', document: large, now: T0 };
    await expect(store.of(siteId, LOOPS).insert(loop)).rejects.toMatchObject({ code: 'store-full' });
    expect(await store.of(siteId, LOOPS).get('l1')).toBeUndefined();
    expect(await store.of(siteId, PUMPS).get('p1')).toMatchObject({ version: 1 });

    opened.value.pragma('max_page_count = 1000000');
    expect(await store.of(siteId, LOOPS).insert(loop)).toMatchObject({ outcome: 'inserted' });
    await store.close();
  });

  it.each([
    ['a digit changed', `update pump set document = replace(document, '4.1', '4.2')`],
    ['the fit changed', `update pump set fit = '{}'`],
    ['text cut off', `update pump set document = substr(document, 1, 40)`],
    ['no text', `update pump set document = ''`],
  ])('throws at a row with %s, naming it, rather than answer wrongly', async (_, sql) => {
    await (await storeWithPump()).close();
    tamper((database) => database.exec(sql));
    const store = await openedStore(path);
    const fault = { code: 'store-corrupt', message: expect.stringContaining('pump p1') };
    await expect(store.of(siteId, PUMPS).get('p1')).rejects.toMatchObject(fault);
    await expect(store.of(siteId, PUMPS).list({ limit: 5, after: null })).rejects.toMatchObject(fault);
    await store.close();
  });

  // Codes of the SQLite documentation, "Result and Error Codes".
  it.each([
    ['SQLITE_FULL', { name: 'StoreFault', code: 'store-full', retryAfterSeconds: undefined }],
    ['SQLITE_BUSY', { name: 'StoreFault', code: 'store-unavailable', retryAfterSeconds: 2 }],
    ['SQLITE_BUSY_SNAPSHOT', { name: 'StoreFault', code: 'store-unavailable' }],
    ['SQLITE_IOERR_FSYNC', { name: 'StoreFault', code: 'store-unavailable' }],
    ['SQLITE_CORRUPT', { name: 'StoreFault', code: 'store-corrupt' }],
    ['SQLITE_CONSTRAINT_FOREIGNKEY', { name: 'ForeignKeyViolation' }],
    ['SQLITE_CONSTRAINT_PRIMARYKEY', { name: 'SqliteError' }],
  ])('tells %s in the words of the store', (code, expected) => {
    expect(translated(new Database.SqliteError('text', code))).toMatchObject(expected);
  });

  it('passes on an error that is not of the database', () => {
    const error = new TypeError('a bug');
    expect(translated(error)).toBe(error);
  });
});

describe('limits', () => {
  it('tells how many pumps there are instead of reading more than all pumps may be', async () => {
    await (await storeWithPump()).close();
    tamper((database) =>
      database.exec(`
        with recursive n(i) as (select 1 union all select i + 1 from n where i < ${ALL_PUMPS_LIMIT})
        insert into pump (site_id, id, version, created_at, updated_at, name, document, fit, digest)
        select '${siteId}', 'n' || i, 1, 0, 0, 'n', '{}', '{}', '' from n`),
    );
    const store = await openedStore(path);
    expect(await store.of(siteId, PUMPS).all()).toEqual({
      outcome: 'too-many',
      limit: ALL_PUMPS_LIMIT,
      actual: ALL_PUMPS_LIMIT + 1,
    });
    await store.close();
  });
});

describe('speed', () => {
  const plan = (sql: string): string =>
    withDatabase((database) =>
      database
        .prepare<[], { detail: string }>(`explain query plan ${sql}`)
        .all()
        .map(({ detail }) => detail)
        .join('; '),
    );

  it.each([
    ['a page', `site_id = 's' and (created_at, id) > (1, 'x')`, 'pump_by_creation'],
    ['a page of a name', `site_id = 's' and name = 'n' and (created_at, id) > (1, 'x')`, 'pump_by_name'],
  ])('finds %s by an index alone, without sorting', async (_, condition, index) => {
    await (await storeWithPump()).close();
    const steps = plan(`select * from pump where ${condition} order by created_at, id limit 51`);
    expect(steps).toContain(index);
    expect(steps).not.toMatch(/SCAN|TEMP B-TREE/);
  });

  it('finds the loops that use a pump by an index', async () => {
    await (await storeWithPump()).close();
    const steps = plan(`select id from loop where site_id = 's' and installed_pump_id = 'p'`);
    expect(steps).toContain('loop_by_installed_pump');
  });
});
