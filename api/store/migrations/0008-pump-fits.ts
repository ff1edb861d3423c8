/** Fits the curves of stored pumps by the laws in force: what was fitted before lacks the law of power and the shape of the head curve. */
import type { Kysely, Migration } from 'kysely';
import type { Pump } from '../../../models/pump/pump.ts';
import { fitPump } from '../../../models/pump/pump-model.ts';
import { checkDigest, digestOf, jsonText } from '../json-text.ts';

/** The columns that are read and written, as they are when this migration runs. */
interface Stored {
  readonly pump: {
    readonly site_id: string;
    readonly id: string;
    readonly document: string;
    readonly fit: string;
    readonly digest: string;
  };
}

export const pumpFits: Migration = {
  async up(db: Kysely<Stored>) {
    const keys = await db.selectFrom('pump').select(['site_id', 'id']).execute();
    // One at a time, since documents are long and there may be many.
    for (const { site_id, id } of keys) {
      const row = await db
        .selectFrom('pump')
        .selectAll()
        .where('site_id', '=', site_id)
        .where('id', '=', id)
        .executeTakeFirstOrThrow();
      checkDigest(row, 'pump', [row.document, row.fit]);
      const pump: Pump = JSON.parse(row.document);
      const fitted = fitPump(pump);
      // The laws in force fit whatever had a curve before, and more.
      if (!fitted.ok) throw new Error(`invariant: pump ${id} has no curve any more: ${fitted.failure.code}`);
      const fit = jsonText(fitted.value);
      await db
        .updateTable('pump')
        .set({ fit, digest: digestOf([row.document, fit]) })
        .where('site_id', '=', site_id)
        .where('id', '=', id)
        .execute();
    }
  },
};
