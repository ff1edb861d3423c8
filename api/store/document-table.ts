/** Keeps documents in a table that holds nothing besides them. */
import type { Kysely } from 'kysely';
import { unlessReferenceBroken } from './foreign-key-violation.ts';
import { checkDigest, digestOf, jsonText } from './json-text.ts';
import { pageOf, rowsToRead } from './page.ts';
import { common } from './rows.ts';
import type { DocumentRow, DocumentTable, Tables } from './tables.ts';
import { staleOrMissing } from './version-check.ts';
import type {
  Deleted,
  Deletion,
  Inserted,
  InUse,
  Missing,
  NewRecord,
  Page,
  PageRequest,
  Replaced,
  Replacement,
  Stale,
  StoredRecord,
} from './versions.ts';
import { hasVersion, isRecord, keyColumn, mayBeOnPage } from './where-clauses.ts';

interface Named {
  readonly name: string;
}

export interface DocumentOperations<Document> {
  insert(record: NewRecord<Document>): Promise<Inserted<StoredRecord<Document>>>;
  get(id: string): Promise<StoredRecord<Document> | undefined>;
  list(request: PageRequest): Promise<Page<StoredRecord<Document>>>;
  replace(replacement: Replacement<Document>): Promise<Replaced<StoredRecord<Document>> | Stale | Missing>;
  delete(deletion: Deletion): Promise<Deleted | Stale | Missing | InUse>;
}

/** Of documents that are never changed once they are stored. */
export type KeptOperations<Document> = Omit<DocumentOperations<Document>, 'replace'>;

/** The digest proves that the text is the one made of such a document, so parsing gives one back. */
export function documentRecord<Document extends Named>(
  row: DocumentRow,
  table: DocumentTable,
): StoredRecord<Document> {
  checkDigest(row, table, [row.document]);
  const document: Document = JSON.parse(row.document);
  return { ...common(row), document };
}

const contentColumns = (document: Named) => {
  const text = jsonText(document);
  return { name: document.name, document: text, digest: digestOf([text]) };
};

type DocumentReads<Document> = Pick<DocumentOperations<Document>, 'get' | 'list'>;

const documentReads = <Document extends Named>(
  db: Kysely<Tables>,
  table: DocumentTable,
  siteId: string,
): DocumentReads<Document> => {
  const read = (row: DocumentRow) => documentRecord<Document>(row, table);
  return {
    async get(id) {
      const row = await db.selectFrom(table).selectAll().where(isRecord({ siteId, id })).executeTakeFirst();
      return row === undefined ? undefined : read(row);
    },

    async list(request) {
      const rows = await db
        .selectFrom(table)
        .selectAll()
        .where(mayBeOnPage({ siteId, ...request }))
        .orderBy('created_at')
        .orderBy('id')
        .limit(rowsToRead(request.limit))
        .execute();
      return pageOf(rows, { limit: request.limit, read });
    },
  };
};

/** `usedBy` lists what stands in the way of a deletion, where anything may refer to such a document. */
export const documentTable =
  <Document extends Named>(
    db: Kysely<Tables>,
    table: DocumentTable,
    usedBy: (siteId: string, id: string) => Promise<InUse['usedBy']> = async () => [],
  ) =>
  (siteId: string): DocumentOperations<Document> => ({
    ...documentReads<Document>(db, table, siteId),

    async insert({ id, document, now, key }) {
      const row = await db
        .insertInto(table)
        .values({
          ...{ site_id: siteId, id, version: 1, created_at: now, updated_at: now },
          ...contentColumns(document),
          ...keyColumn(key),
        })
        .returningAll()
        .executeTakeFirstOrThrow();
      return { outcome: 'inserted', record: documentRecord(row, table) };
    },

    async replace({ id, document, now, key, expectedVersion }) {
      const row = await db
        .updateTable(table)
        .set((eb) => ({
          version: eb('version', '+', 1),
          updated_at: now,
          ...contentColumns(document),
          ...keyColumn(key),
        }))
        .where(isRecord({ siteId, id }))
        .where(hasVersion(expectedVersion))
        .returningAll()
        .executeTakeFirst();
      if (row !== undefined) return { outcome: 'replaced', record: documentRecord(row, table) };
      return await staleOrMissing(db, table, { siteId, id });
    },

    async delete({ id, expectedVersion }) {
      const deletion = db
        .deleteFrom(table)
        .where(isRecord({ siteId, id }))
        .where(hasVersion(expectedVersion));
      const result = await unlessReferenceBroken(() => deletion.executeTakeFirst());
      if (result === undefined) return { outcome: 'in-use', usedBy: await usedBy(siteId, id) };
      if (result.numDeletedRows > 0n) return { outcome: 'deleted' };
      return await staleOrMissing(db, table, { siteId, id });
    },
  });
