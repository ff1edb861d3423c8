/** The readings of loops, read and written as part of a whole site. */

import type { KindOfRecord } from '../../store/exported-kind.ts';
import type { StoredRecord } from '../../store/versions.ts';
import { type CopiedReadings, READINGS_OF_A_SITE_MAX, READINGS_TOGETHER } from './contract.ts';
import { readingReads } from './reads.ts';
import { writeReadings } from './writes.ts';

const LAST_INSTANT = 8_640_000_000_000_000;
const ALWAYS = { from: -LAST_INSTANT, before: LAST_INSTANT } as const;

export const EXPORTED_READINGS: KindOfRecord<StoredRecord<CopiedReadings>> = {
  most: READINGS_OF_A_SITE_MAX,

  async count(db, siteId) {
    const { records } = await db
      .selectFrom('reading')
      .innerJoin('reading_series', 'reading_series.series', 'reading.series')
      .select(({ fn }) => fn.countAll<number | string>().as('records'))
      .where('reading_series.site_id', '=', siteId)
      .executeTakeFirstOrThrow();
    return { records: Number(records), characters: 0 };
  },

  async read(db, siteId) {
    const series = await db
      .selectFrom('reading_series')
      .select('loop_id')
      .where('site_id', '=', siteId)
      .orderBy('loop_id')
      .execute();
    const reads = readingReads(db, siteId);
    const parts: (() => StoredRecord<CopiedReadings>)[] = [];
    for (const { loop_id: loop } of series) {
      const all = await reads.between({ loop, ...ALWAYS, limit: READINGS_OF_A_SITE_MAX });
      for (let at = 0; at < all.length; at += READINGS_TOGETHER) {
        const readings = all.slice(at, at + READINGS_TOGETHER);
        const times = { createdAt: readings[0]?.time ?? 0, updatedAt: readings.at(-1)?.time ?? 0 };
        const id = `${loop}-${at}`;
        parts.push(() => ({ id, version: 1, ...times, name: 'readings', document: { loop, readings } }));
      }
    }
    return parts;
  },

  async write(all, siteId, records) {
    for (const make of records) {
      const { loop, readings } = make().document;
      await writeReadings(all, { siteId, loop, readings });
    }
  },
};
