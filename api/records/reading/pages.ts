/** Pages through readings, one by one or averaged by the database over hours and days. */
import { setImmediate } from 'node:timers/promises';
import { civilDate } from '../../../models/calendar/civil-day.ts';
import { textOfDate } from '../../../models/calendar/civil-text.ts';
import {
  dayAt,
  MS_PER_DAY,
  MS_PER_HOUR,
  startOfDay,
  type ZoneOffsets,
} from '../../../models/calendar/zone-offsets.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { zoneBetween } from '../../clock/zone-between.ts';
import type { SiteStore } from '../../store/store.ts';
import type { ReadingBucket, ReadingChoice, ReadingSpan } from './contract.ts';
import { READINGS } from './kind.ts';

export const READING_STRETCHES = ['hour', 'day'] as const;

export type Stretch = (typeof READING_STRETCHES)[number];

/** Days that one statement averages: the others are served between two of them. */
const DAYS_AT_ONCE = 28;

export interface ReadingPageRequest extends ReadingChoice {
  readonly by: Stretch | null;
  readonly limit: number;
  readonly timeZone: string;
}

/** `next` is where the next page begins; null after the last. */
export interface ReadingPage<Item> {
  readonly items: readonly Item[];
  readonly next: number | null;
}

interface MeanOfStretch extends Omit<ReadingBucket, 'bucket'> {
  readonly from: string;
  readonly until: string;
  readonly day: string | null;
}

const utc = (instant: number): string => new Date(instant).toISOString();

/** Where stretches begin, and which of them an instant falls in: hours by UTC, days by the clocks of the site. */
interface Ruler {
  readonly width: number;
  readonly offsets: ZoneOffsets['changes'];
  startOf(bucket: number): number;
  bucketAt(instant: number): number;
  dayOf(bucket: number): string | null;
}

function rulerOf(by: Stretch, timeZone: string, range: NonNullable<ReadingSpan['range']>): Ruler {
  if (by === 'hour') {
    return {
      width: MS_PER_HOUR,
      offsets: [{ at: 0, offset: 0 }],
      startOf: (bucket) => bucket * MS_PER_HOUR,
      bucketAt: (instant) => Math.floor(instant / MS_PER_HOUR),
      dayOf: () => null,
    };
  }
  const zone = zoneBetween(timeZone, { from: range.first, until: range.last });
  return {
    width: MS_PER_DAY,
    offsets: zone.changes,
    startOf: (bucket) => startOfDay(zone, bucket),
    bucketAt: (instant) => dayAt(zone, instant),
    dayOf: (bucket) => textOfDate(civilDate(bucket)),
  };
}

async function meansPage(
  store: SiteStore,
  { by, limit, timeZone, ...choice }: ReadingPageRequest & { readonly by: Stretch },
): Promise<ReadingPage<MeanOfStretch>> {
  const { range } = await store.of(READINGS).span(choice.loop);
  if (range === null) return { items: [], next: null };
  const ruler = rulerOf(by, timeZone, range);
  const before = Math.min(choice.before, range.last + 1);
  const found: ReadingBucket[] = [];
  let from = Math.max(choice.from, range.first);
  // Each round finds a stretch with readings, or is the last.
  while (from < before && found.length <= limit) {
    const [first] = await store.of(READINGS).between({ ...choice, from, before, limit: 1 });
    if (first === undefined) break;
    const widths = Math.round((DAYS_AT_ONCE * MS_PER_DAY) / ruler.width);
    const end = Math.min(before, ruler.startOf(ruler.bucketAt(first.time) + widths));
    const { width, offsets } = ruler;
    found.push(...(await store.of(READINGS).buckets({ ...choice, from, before: end, width, offsets })));
    from = end;
    await setImmediate();
  }
  const items = found.slice(0, limit).map(({ bucket, ...mean }) => ({
    from: utc(ruler.startOf(bucket)),
    until: utc(ruler.startOf(bucket + 1)),
    day: ruler.dayOf(bucket),
    ...mean,
  }));
  const following = found[limit];
  return { items, next: following === undefined ? null : ruler.startOf(following.bucket) };
}

async function plainPage(
  store: SiteStore,
  { limit, ...choice }: ReadingPageRequest,
): Promise<ReadingPage<Reading>> {
  const found = await store.of(READINGS).between({ ...choice, limit: limit + 1 });
  return { items: found.slice(0, limit), next: found[limit]?.time ?? null };
}

export const readingPage = (
  store: SiteStore,
  { by, ...asked }: ReadingPageRequest,
): Promise<ReadingPage<Reading | MeanOfStretch>> =>
  by === null ? plainPage(store, { by, ...asked }) : meansPage(store, { by, ...asked });
