/** Upgrade plans in a database. */
import type { Kysely } from 'kysely';
import { hasVersion, isRecord, mayBeOnPage } from './conditions.ts';
import { checkDigest, digestOf, jsonText } from './json-text.ts';
import { pageOf, rowsToRead } from './page.ts';
import type { Tables, UpgradePlanRow } from './schema.ts';
import type { StoredUpgradePlan, UpgradePlanRecord, UpgradePlanStore } from './upgrade-plan-contract.ts';
import { staleOrMissing } from './version-check.ts';

const contentColumns = (document: StoredUpgradePlan) => {
  const text = jsonText(document);
  return { name: document.name, document: text, digest: digestOf([text]) };
};

/** The digest proves that the text is the one made from a plan, so parsing gives a plan back. */
export function upgradePlanRecord(row: UpgradePlanRow): UpgradePlanRecord {
  checkDigest(row, 'upgrade_plan', [row.document]);
  const document: StoredUpgradePlan = JSON.parse(row.document);
  return {
    id: row.id,
    version: row.version,
    createdAt: row.created_at,
    updatedAt: row.updated_at,
    name: row.name,
    document,
  };
}

export const upgradePlanStore = (db: Kysely<Tables>): UpgradePlanStore => ({
  async insertUpgradePlan({ siteId, id, document, now }) {
    const row = await db
      .insertInto('upgrade_plan')
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
    return { outcome: 'inserted', record: upgradePlanRecord(row) };
  },

  async getUpgradePlan(key) {
    const row = await db.selectFrom('upgrade_plan').selectAll().where(isRecord(key)).executeTakeFirst();
    return row === undefined ? undefined : upgradePlanRecord(row);
  },

  async listUpgradePlans(request) {
    const rows = await db
      .selectFrom('upgrade_plan')
      .selectAll()
      .where(mayBeOnPage(request))
      .orderBy('created_at')
      .orderBy('id')
      .limit(rowsToRead(request.limit))
      .execute();
    return pageOf(rows, { limit: request.limit, read: upgradePlanRecord });
  },

  async deleteUpgradePlan({ siteId, id, expectedVersion }) {
    const { numDeletedRows } = await db
      .deleteFrom('upgrade_plan')
      .where(isRecord({ siteId, id }))
      .where(hasVersion(expectedVersion))
      .executeTakeFirst();
    if (numDeletedRows > 0n) return { outcome: 'deleted' };
    return await staleOrMissing(db, 'upgrade_plan', { siteId, id });
  },
});
