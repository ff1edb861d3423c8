/** Reads the readings that a loop is judged by: all of them, or a sample where they are many. */
import { setImmediate } from 'node:timers/promises';
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import type { ReadingChoice } from '../../records/reading/contract.ts';
import { READINGS } from '../../records/reading/kind.ts';
import type { SiteStore } from '../../store/store.ts';

/** So many are judged one by one; a year has 526 minutes each thousandth part. */
const JUDGED_MOST = 20_000;
/** Days that one statement samples: other requests are served between two of them. */
const DAYS_AT_ONCE = 28;
/** Ranges longer than this many statements are sampled by fewer, larger ones. */
const STATEMENTS_MOST = 60;

export interface JudgedReadings {
  readonly readings: readonly Reading[];
  /** How many there are in the range. */
  readonly total: number;
}

export async function readingsJudged(store: SiteStore, choice: ReadingChoice): Promise<JudgedReadings> {
  const { range } = await store.of(READINGS).span(choice.loop);
  if (range === null) return { readings: [], total: 0 };
  const from = Math.max(choice.from, range.first);
  const before = Math.min(choice.before, range.last + 1);
  const total = await store.of(READINGS).count({ ...choice, from, before });
  if (total <= JUDGED_MOST) {
    const all = { ...choice, from, before, limit: JUDGED_MOST };
    return { readings: await store.of(READINGS).between(all), total };
  }
  const apart = Math.ceil((before - from) / JUDGED_MOST);
  const step = Math.max(DAYS_AT_ONCE * MS_PER_DAY, Math.ceil((before - from) / STATEMENTS_MOST));
  const readings: Reading[] = [];
  for (let at = from; at < before; at += step) {
    const end = Math.min(before, at + step);
    readings.push(...(await store.of(READINGS).sampled({ ...choice, from: at, before: end, apart })));
    await setImmediate();
  }
  return { readings, total };
}
