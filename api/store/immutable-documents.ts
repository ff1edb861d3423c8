/** Documents that are kept as they were made: inserted, read, listed and deleted, never changed. */
import type { Kysely } from 'kysely';
import { checkDigest, digestOf, jsonText } from './json-text.ts';
import { pageOf, rowsToRead } from './page.ts';
import type { KeptRow, Tables } from './tables.ts';
import { staleOrMissing } from './version-check.ts';
import type {
  Deleted,
  Deletion,
  Inserted,
  Missing,
  Page,
  PageRequest,
  RecordKey,
  Stale,
  StoredRecord,
} from './versions.ts';
import { hasVersion, isRecord, mayBeOnPage } from './where-clauses.ts';

type KeptTable = 'comparison' | 'upgrade_plan';

interface Named {
  readonly name: string;
}

interface KeptDocuments<Document extends Named> {
  insert(
    kept: RecordKey & { readonly document: Document; readonly now: number },
  ): Promise<Inserted<StoredRecord<Document>>>;
  get(key: RecordKey): Promise<StoredRecord<Document> | undefined>;
  list(request: PageRequest): Promise<Page<StoredRecord<Document>>>;
  delete(deletion: Deletion): Promise<Deleted | Stale | Missing>;
}

/** The digest proves that the text is the one made of such a document, so parsing gives one back. */
export function keptRecord<Document extends Named>(row: KeptRow, table: KeptTable): StoredRecord<Document> {
  checkDigest(row, table, [row.document]);
  const document: Document = JSON.parse(row.document);
  return {
    id: row.id,
    version: row.version,
    createdAt: row.created_at,
    updatedAt: row.updated_at,
    name: row.name,
    document,
  };
}

export function keptDocuments<Document extends Named>(
  db: Kysely<Tables>,
  table: KeptTable,
): KeptDocuments<Document> {
  const read = (row: KeptRow) => keptRecord<Document>(row, table);
  return {
    async insert({ siteId, id, document, now }) {
      const text = jsonText(document);
      const row = await db
        .insertInto(table)
        .values({
          ...{ site_id: siteId, id, version: 1, created_at: now, updated_at: now },
          ...{ name: document.name, document: text, digest: digestOf([text]) },
        })
        .returningAll()
        .executeTakeFirstOrThrow();
      return { outcome: 'inserted', record: read(row) };
    },

    async get(key) {
      const row = await db.selectFrom(table).selectAll().where(isRecord(key)).executeTakeFirst();
      return row === undefined ? undefined : read(row);
    },

    async list(request) {
      const rows = await db
        .selectFrom(table)
        .selectAll()
        .where(mayBeOnPage(request))
        .orderBy('created_at')
        .orderBy('id')
        .limit(rowsToRead(request.limit))
        .execute();
      return pageOf(rows, { limit: request.limit, read });
    },

    async delete({ siteId, id, expectedVersion }) {
      const { numDeletedRows } = await db
        .deleteFrom(table)
        .where(isRecord({ siteId, id }))
        .where(hasVersion(expectedVersion))
        .executeTakeFirst();
      if (numDeletedRows > 0n) return { outcome: 'deleted' };
      return await staleOrMissing(db, table, { siteId, id });
    },
  };
}
