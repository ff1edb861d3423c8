/** Brings a database to the schema of this program. */
import { type Kysely, type Migration, Migrator, sql } from 'kysely';
import { failed, type Result, success } from '../../curves/result.ts';
import { MIGRATIONS } from './migrations/all.ts';

const MIGRATION_TABLE = 'kysely_migration';

/** `unknown` are the migrations that a newer program has run on this database. */
export interface SchemaNewer {
  readonly code: 'schema-newer';
  readonly unknown: readonly string[];
}

async function executedMigrations<Schema>(db: Kysely<Schema>): Promise<readonly string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some((table) => table.name === MIGRATION_TABLE)) return [];
  const { rows } = await sql<{ name: string }>`select name from ${sql.table(MIGRATION_TABLE)}`.execute(db);
  return rows.map((row) => row.name);
}

/** Runs the migrations that are missing; touches nothing when the database has one that this program does not know. */
export async function migrate<Schema>(
  db: Kysely<Schema>,
  migrations: Readonly<Record<string, Migration>> = MIGRATIONS,
): Promise<Result<void, SchemaNewer>> {
  const executed = await executedMigrations(db);
  const unknown = executed.filter((name) => !Object.hasOwn(migrations, name));
  if (unknown.length > 0) return failed({ code: 'schema-newer', unknown });
  const migrator = new Migrator({
    db,
    provider: { getMigrations: async () => ({ ...migrations }) },
    migrationTableName: MIGRATION_TABLE,
  });
  const { error } = await migrator.migrateToLatest();
  if (error !== undefined) throw error;
  return success(undefined);
}
