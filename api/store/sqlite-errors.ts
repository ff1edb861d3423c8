/** The failures of SQLite in the words of the store. */
import Database from 'better-sqlite3';
import type { SqliteDatabase, SqliteStatement } from 'kysely';
import { ForeignKeyViolation } from './foreign-key-violation.ts';
import { preparedOnce } from './prepared-once.ts';
import { StoreFault } from './store-fault.ts';
import { UniqueViolation } from './unique-violation.ts';

// A deletion that ON DELETE RESTRICT forbids is reported as a constraint of a trigger; the schema has no triggers of its own.
const BROKEN_REFERENCE = new Set(['SQLITE_CONSTRAINT_FOREIGNKEY', 'SQLITE_CONSTRAINT_TRIGGER']);

/** By primary code, which an extended code begins with. */
const FAULTS = [
  { prefix: 'SQLITE_FULL', code: 'store-full' },
  { prefix: 'SQLITE_BUSY', code: 'store-unavailable' },
  { prefix: 'SQLITE_LOCKED', code: 'store-unavailable' },
  { prefix: 'SQLITE_IOERR', code: 'store-unavailable' },
  { prefix: 'SQLITE_CANTOPEN', code: 'store-unavailable' },
  { prefix: 'SQLITE_READONLY', code: 'store-unavailable' },
  { prefix: 'SQLITE_CORRUPT', code: 'store-corrupt' },
  { prefix: 'SQLITE_NOTADB', code: 'store-corrupt' },
] as const;

/** Errors that are none of the store's expected failures come back as they are. */
export function translated(error: unknown): unknown {
  if (!(error instanceof Database.SqliteError)) return error;
  if (BROKEN_REFERENCE.has(error.code)) return new ForeignKeyViolation({ cause: error });
  if (error.code === 'SQLITE_CONSTRAINT_UNIQUE') return new UniqueViolation({ cause: error });
  const fault = FAULTS.find(({ prefix }) => error.code.startsWith(prefix));
  return fault === undefined ? error : new StoreFault(fault.code, error.message, { cause: error });
}

function translating<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw translated(error);
  }
}

/** What kysely needs of a database, with every error translated. */
export const withTranslatedErrors = (database: Database.Database): SqliteDatabase => ({
  close: () => {
    database.close();
  },
  prepare: preparedOnce((sql): SqliteStatement => {
    const statement = translating(() => database.prepare<unknown[]>(sql));
    return {
      reader: statement.reader,
      all: (parameters) => translating(() => statement.all(...parameters)),
      run: (parameters) => translating(() => statement.run(...parameters)),
      iterate: (parameters) => statement.iterate(...parameters),
    };
  }),
});
