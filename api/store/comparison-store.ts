/** Comparisons in a database. */
import type { Kysely } from 'kysely';
import type { ComparisonRecord, ComparisonStore, StoredComparison } from './comparison-contract.ts';
import { hasVersion, isRecord, mayBeOnPage } from './conditions.ts';
import { checkDigest, digestOf, jsonText } from './json-text.ts';
import { pageOf, rowsToRead } from './page.ts';
import type { ComparisonRow, Tables } from './schema.ts';
import { staleOrMissing } from './version-check.ts';

const contentColumns = (document: StoredComparison) => {
  const text = jsonText(document);
  return { name: document.name, document: text, digest: digestOf([text]) };
};

/** The digest proves that the text is the one made from a comparison, so parsing gives one back. */
export function comparisonRecord(row: ComparisonRow): ComparisonRecord {
  checkDigest(row, 'comparison', [row.document]);
  const document: StoredComparison = JSON.parse(row.document);
  return {
    id: row.id,
    version: row.version,
    createdAt: row.created_at,
    updatedAt: row.updated_at,
    name: row.name,
    document,
  };
}

export const comparisonStore = (db: Kysely<Tables>): ComparisonStore => ({
  async insertComparison({ siteId, id, document, now }) {
    const row = await db
      .insertInto('comparison')
      .values({
        site_id: siteId,
        id,
        version: 1,
        created_at: now,
        updated_at: now,
        ...contentColumns(document),
      })
      .returningAll()
      .executeTakeFirstOrThrow();
    return { outcome: 'inserted', record: comparisonRecord(row) };
  },

  async getComparison(key) {
    const row = await db.selectFrom('comparison').selectAll().where(isRecord(key)).executeTakeFirst();
    return row === undefined ? undefined : comparisonRecord(row);
  },

  async listComparisons(request) {
    const rows = await db
      .selectFrom('comparison')
      .selectAll()
      .where(mayBeOnPage(request))
      .orderBy('created_at')
      .orderBy('id')
      .limit(rowsToRead(request.limit))
      .execute();
    return pageOf(rows, { limit: request.limit, read: comparisonRecord });
  },

  async deleteComparison({ siteId, id, expectedVersion }) {
    const { numDeletedRows } = await db
      .deleteFrom('comparison')
      .where(isRecord({ siteId, id }))
      .where(hasVersion(expectedVersion))
      .executeTakeFirst();
    if (numDeletedRows > 0n) return { outcome: 'deleted' };
    return await staleOrMissing(db, 'comparison', { siteId, id });
  },
});
