/** Finds records by what users call them: their id, or the key that was given to them. */
import type { Kysely } from 'kysely';
import { defineKind } from './kind.ts';
import { recordReference } from './record-reference.ts';
import type { KeyedTable, Tables } from './tables.ts';
import { UniqueViolation } from './unique-violation.ts';
import type { InSite, KeyTaken, RecordUse } from './versions.ts';

/** Names asked about in one statement. */
const TOGETHER = 1_000;

const KINDS = {
  pump: 'pump',
  loop: 'loop',
  tariff: 'tariff',
  maintenance_task: 'maintenance-task',
} as const satisfies Record<KeyedTable, RecordUse['kind']>;

const TABLES = ['pump', 'loop', 'tariff', 'maintenance_task'] as const satisfies readonly KeyedTable[];

interface KeyOperations {
  /** The record that is called so, by its id or else by its key. */
  one(table: KeyedTable, name: string): Promise<{ readonly id: string } | undefined>;
  /** The ids of the records that are called so, by what they are called; an id goes before a key. */
  ids(table: KeyedTable, names: readonly string[]): Promise<ReadonlyMap<string, string>>;
  /** The records of any kind that are called so. */
  called(name: string): Promise<readonly RecordUse[]>;
}

async function idsOf(
  db: Kysely<Tables>,
  { siteId, table, names }: InSite & { readonly table: KeyedTable; readonly names: readonly string[] },
): Promise<ReadonlyMap<string, string>> {
  const found = new Map<string, string>();
  const isAsked = new Set(names);
  for (let from = 0; from < names.length; from += TOGETHER) {
    const asked = names.slice(from, from + TOGETHER);
    const rows = await db
      .selectFrom(table)
      .select(['id', 'key'])
      .where('site_id', '=', siteId)
      .where((eb) => eb.or([eb('key', 'in', asked), eb('id', 'in', asked)]))
      .execute();
    for (const { id, key } of rows) if (typeof key === 'string' && !found.has(key)) found.set(key, id);
    for (const { id } of rows) if (isAsked.has(id)) found.set(id, id);
  }
  return found;
}

const recordsCalled = async (
  db: Kysely<Tables>,
  { siteId, table, name }: InSite & { readonly table: KeyedTable; readonly name: string },
): Promise<readonly RecordUse[]> => {
  const rows = await db
    .selectFrom(table)
    .select(['id', 'key', 'name'])
    .where('site_id', '=', siteId)
    .where((eb) => eb.or([eb('id', '=', name), eb('key', '=', name)]))
    .execute();
  return rows.map((row) => ({ kind: KINDS[table], ...recordReference(row) }));
};

export const KEYS = defineKind<KeyOperations>({
  name: 'key',
  // Lists of names may be long, so that only single ones are remembered.
  reads: { one: 'remembered', ids: 'read-again', called: 'read-again' },
  open: (db) => (siteId) => ({
    async one(table, name) {
      const id = (await idsOf(db, { siteId, table, names: [name] })).get(name);
      return id === undefined ? undefined : { id };
    },
    ids: (table, names) => idsOf(db, { siteId, table, names }),
    async called(name) {
      const found = await Promise.all(TABLES.map((table) => recordsCalled(db, { siteId, table, name })));
      return found.flat();
    },
  }),
});

type WrittenKey = string | null | undefined;

/** What the work gives, or who has the key that it was to give. */
export async function unlessKeyTaken<T>(
  db: Kysely<Tables>,
  {
    siteId,
    table,
    key,
  }: InSite & { readonly table: KeyedTable; readonly key: WrittenKey | (() => WrittenKey) },
  work: () => Promise<T>,
): Promise<T | KeyTaken> {
  try {
    return await work();
  } catch (error) {
    const name = typeof key === 'function' ? key() : key;
    if (!(error instanceof UniqueViolation) || typeof name !== 'string') throw error;
    const holders = await recordsCalled(db, { siteId, table, name });
    return { outcome: 'key-taken', usedBy: holders };
  }
}
