/** A database of version 0.1, opened by this program. */
import { Kysely, SqliteDialect } from 'kysely';
import { expect, it } from 'vitest';
import { digestOf } from '../../../api/store/json-text.ts';
import { migrate } from '../../../api/store/migrate.ts';
import { MIGRATIONS } from '../../../api/store/migrations/all.ts';
import { openDatabase } from '../../../api/store/sqlite.ts';
import { T0 } from './examples.ts';

const NAMES = '0012-names';

it('has the members of its stored documents renamed, and its damaged ones as they were', async () => {
  const opened = openDatabase(':memory:');
  if (!opened.ok) throw new Error(opened.failure.code);
  const database = opened.value;
  const kysely = new Kysely({ dialect: new SqliteDialect({ database }) });
  const before = Object.fromEntries(Object.entries(MIGRATIONS).filter(([name]) => name < NAMES));
  expect(await migrate(kysely, before)).toMatchObject({ ok: true });
  database.prepare(`insert into site values ('site', 1, ?, ?, 'Site', '{}', '')`).run(T0, T0);
  const document = JSON.stringify({ title: 'Rinse the screen', everyDays: 7 });
  const insertion = database.prepare(
    `insert into maintenance_task (site_id, id, version, created_at, updated_at, name, document, digest,
       kind, year_hours, year_parts, next_due, completions, changes, changed_at)
     values ('site', ?, 1, ?, ?, 'Rinse the screen', ?, ?, 'site', 0, 0, 0, 0, 0, 0)`,
  );
  insertion.run('sound', T0, T0, document, digestOf([document]));
  insertion.run('damaged', T0, T0, document, 'another digest');

  expect(await migrate(kysely, MIGRATIONS)).toMatchObject({ ok: true });
  const rows = database.prepare('select id, document, digest from maintenance_task order by id').all();
  const renamed = JSON.stringify({ name: 'Rinse the screen', everyDays: 7 });
  expect(rows).toEqual([
    { id: 'damaged', document, digest: 'another digest' },
    { id: 'sound', document: renamed, digest: digestOf([renamed]) },
  ]);
});
