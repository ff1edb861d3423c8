/** The store in a SQLite file that belongs to one process. */
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import { failed, type Result, success } from '../../curves/result.ts';
import { kyselyStore } from './kysely-store.ts';
import { migrate, type SchemaNewer } from './migrate.ts';
import { rememberingStore } from './remembering-store.ts';
import { withTranslatedErrors } from './sqlite-errors.ts';
import type { Store } from './store.ts';
import type { Tables } from './tables.ts';

/** How long an opening waits for a process that is just letting go of the file. */
const BUSY_TIMEOUT_MS = 2_000;

export type OpenFailure =
  | SchemaNewer
  | { readonly code: 'in-use-by-another-process' }
  | { readonly code: 'cannot-open'; readonly reason: string };

/**
 * Settings that SQLite keeps for a connection, not in the file, so that every opening makes them again: in particular
 * a reopened file in WAL mode would fall back to `synchronous=NORMAL`, which may lose acknowledged writes on a power cut.
 */
function configure(database: Database.Database): void {
  database.pragma('locking_mode = EXCLUSIVE');
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  database.pragma('foreign_keys = ON');
}

/** One transaction over all migrations: a process killed between two statements leaves the schema as it was. */
async function migrateAtOnce(db: Kysely<Tables>, database: Database.Database) {
  database.exec('begin exclusive');
  try {
    const migrated = await migrate(db);
    database.exec(migrated.ok ? 'commit' : 'rollback');
    return migrated;
  } catch (error) {
    if (database.inTransaction) database.exec('rollback');
    throw error;
  }
}

function openFailure(error: unknown): OpenFailure {
  if (error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY')) {
    return { code: 'in-use-by-another-process' };
  }
  return { code: 'cannot-open', reason: error instanceof Error ? error.message : String(error) };
}

/** A database file with the settings in force and nothing else done to it. */
export function openDatabase(path: string): Result<Database.Database, OpenFailure> {
  let database: Database.Database | undefined;
  try {
    if (path !== ':memory:') mkdirSync(dirname(path), { recursive: true });
    database = new Database(path, { timeout: BUSY_TIMEOUT_MS });
    configure(database);
    return success(database);
  } catch (error) {
    database?.close();
    return failed(openFailure(error));
  }
}

/** A store over a database that is configured. Its `close` ends the connection, by which SQLite moves the log into the file. */
export async function sqliteStore(database: Database.Database): Promise<Result<Store, SchemaNewer>> {
  const dialect = new SqliteDialect({ database: withTranslatedErrors(database) });
  const db = new Kysely<Tables>({ dialect });
  const migrated = await migrateAtOnce(db, database);
  return migrated.ok ? success(rememberingStore(kyselyStore(db))) : migrated;
}

/** Opens or makes the file, its directory and its tables, and holds the file's exclusive lock until `close`. */
export async function openSqliteStore(path: string): Promise<Result<Store, OpenFailure>> {
  const opened = openDatabase(path);
  if (!opened.ok) return opened;
  try {
    const store = await sqliteStore(opened.value);
    if (!store.ok) opened.value.close();
    return store;
  } catch (error) {
    opened.value.close();
    return failed(openFailure(error));
  }
}
