/** A database of before there were keys, opened by this program. */
import { Kysely, SqliteDialect } from 'kysely';
import { expect, it } from 'vitest';
import { PUMPS } from '../../../api/records/pump/kind.ts';
import { digestOf } from '../../../api/store/json-text.ts';
import { migrate } from '../../../api/store/migrate.ts';
import { MIGRATIONS } from '../../../api/store/migrations/all.ts';
import { openDatabase, sqliteStore } from '../../../api/store/sqlite.ts';
import { exampleFit, examplePump, T0 } from './examples.ts';

const KEYS = '0011-key';

it('keeps its records, none of which has a key, and lets each have one', async () => {
  const opened = openDatabase(':memory:');
  if (!opened.ok) throw new Error(opened.failure.code);
  const database = opened.value;
  const before = Object.fromEntries(Object.entries(MIGRATIONS).filter(([name]) => name < KEYS));
  const old = new Kysely({ dialect: new SqliteDialect({ database }) });
  expect(await migrate(old, before)).toMatchObject({ ok: true });
  const [document, fit] = [JSON.stringify(examplePump()), JSON.stringify(exampleFit)];
  database.prepare(`insert into site values ('site', 1, ?, ?, 'Site', '{}', '')`).run(T0, T0);
  const insertion = database.prepare(
    `insert into pump (site_id, id, version, created_at, updated_at, name, document, digest, fit)
     values ('site', ?, 3, ?, ?, 'Canister 120', ?, ?, ?)`,
  );
  for (const id of ['p1', 'p2']) insertion.run(id, T0, T0, document, digestOf([document, fit]), fit);

  const store = await sqliteStore(database);
  if (!store.ok) throw new Error(store.failure.code);
  const pumps = store.value.of('site', PUMPS);
  const read = await pumps.get('p1');
  expect(read).toMatchObject({ version: 3, document: examplePump() });
  expect(read).not.toHaveProperty('key');
  const change = { document: examplePump(), fit: exampleFit, now: T0, key: 'canister-120' };
  expect(await pumps.replace({ ...change, id: 'p1', expectedVersion: 3 })).toMatchObject({
    outcome: 'replaced',
    record: { version: 4, key: 'canister-120' },
  });
  expect(await pumps.replace({ ...change, id: 'p2', expectedVersion: 3 })).toMatchObject({
    outcome: 'key-taken',
  });
  await store.value.close();
});
