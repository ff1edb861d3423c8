/** Reads and writes documents of one table as part of a whole site. */
import { documentRecord } from './document-table.ts';
import { type KindOfRecord, later, ofTable, writtenTo } from './exported-kind.ts';
import type { Kind } from './kind.ts';
import type { DocumentTable } from './tables.ts';
import type { NewRecord, StoredRecord } from './versions.ts';

export const exportedDocuments = <Document extends { readonly name: string }>(
  table: DocumentTable,
  kind: Kind<{ insert(record: NewRecord<Document>): Promise<{ readonly outcome: string }> }>,
): KindOfRecord<StoredRecord<Document>> => ({
  ...ofTable(table),
  async read(db, siteId) {
    const rows = await db
      .selectFrom(table)
      .selectAll()
      .where('site_id', '=', siteId)
      .orderBy('created_at')
      .orderBy('id')
      .execute();
    return later(rows, (row) => documentRecord<Document>(row, table));
  },
  write: writtenTo(table, ({ db, record: { document, key }, siteId, ...where }) =>
    kind
      .open(db)(siteId)
      .insert({ ...where, document, key }),
  ),
});
