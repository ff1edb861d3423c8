/** How one kind of record is counted, read and written as part of a whole site. */
import type { Kysely, Transaction } from 'kysely';
import type { RecordTable, Tables } from './tables.ts';
import type { StoredRecord } from './versions.ts';
import { isRecord } from './where-clauses.ts';

export interface KindOfRecord<Kept> {
  readonly most: number;
  count(
    db: Kysely<Tables>,
    siteId: string,
  ): Promise<{ readonly records: number; readonly characters: number }>;
  /** In the order createdAt, then id; each is made when it is asked for. */
  read(db: Kysely<Tables>, siteId: string): Promise<readonly (() => Kept)[]>;
  /** With ids, versions and times as they are. */
  write(all: Transaction<Tables>, siteId: string, records: readonly (() => Kept)[]): Promise<void>;
}

const countedIn = (table: RecordTable) => async (db: Kysely<Tables>, siteId: string) => {
  const found = await db
    .selectFrom(table)
    .select(({ fn }) => [
      fn.countAll<number | string>().as('records'),
      fn.sum<number | string | null>(fn<number>('length', ['document'])).as('characters'),
    ])
    .where('site_id', '=', siteId)
    .executeTakeFirstOrThrow();
  return { records: Number(found.records), characters: Number(found.characters ?? 0) };
};

/** Records that are made of their rows when they are asked for. */
export const later = <Row, Kept>(rows: readonly Row[], make: (row: Row) => Kept): readonly (() => Kept)[] =>
  rows.map((row) => () => make(row));

interface Insertion<Kept> {
  readonly db: Transaction<Tables>;
  readonly record: Kept;
  readonly siteId: string;
  readonly id: string;
  /** The time of its creation. */
  readonly now: number;
}

/** Writes record by record as if each were new, then gives it back its version and time. */
export const writtenTo =
  <Kept extends StoredRecord<unknown>>(
    table: RecordTable,
    insert: (insertion: Insertion<Kept>) => Promise<{ readonly outcome: string }>,
  ): KindOfRecord<Kept>['write'] =>
  async (all, siteId, records) => {
    for (const make of records) {
      const record = make();
      const { id, version, createdAt, updatedAt } = record;
      const { outcome } = await insert({ db: all, record, siteId, id, now: createdAt });
      if (outcome !== 'inserted') throw new Error(`invariant: ${table} ${id} was not written: ${outcome}`);
      await all
        .updateTable(table)
        .set({ version, updated_at: updatedAt })
        .where(isRecord({ siteId, id }))
        .execute();
    }
  };

export const RECORDS_OF_A_KIND_MAX = 10_000;

/** How many of a kind that has a table of its own, and how long their documents are. */
export const ofTable = (table: RecordTable) => ({ most: RECORDS_OF_A_KIND_MAX, count: countedIn(table) });
