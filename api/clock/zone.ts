/** Reads the clocks of a time zone of the IANA database over some years, for models that know no zones. */
import { IANAZone } from 'luxon';
import { dayNumber } from '../../models/calendar/civil-day.ts';
import {
  MS_PER_DAY,
  MS_PER_MINUTE,
  type OffsetChange,
  type ZoneOffsets,
} from '../../models/calendar/zone-offsets.ts';
import { oncePerObject } from '../caches/once-per-object.ts';

/** Years known around the one that is asked about: what runs at new year began in the year before. */
const YEARS_AROUND = 1;

/** The package has one object for each zone, so that the offsets of a zone and a year are found once. */
const offsetsAround = oncePerObject((zone: IANAZone, ofYear: string): ZoneOffsets => {
  const year = Number(ofYear);
  const startOf = (when: number) => dayNumber({ year: when, month: 1, day: 1 }) * MS_PER_DAY;
  return offsetsWithin(zone.name, {
    from: startOf(year - YEARS_AROUND),
    until: startOf(year + YEARS_AROUND + 1),
  });
});

/** Offsets of a zone from the year before to the end of the year after. */
export const zoneAround = (zoneName: string, year: number): ZoneOffsets =>
  offsetsAround(IANAZone.create(zoneName), String(year));

/**
 * Sampled every day, and each change found to the millisecond. That misses none. In the compiled zone database no
 * zone has changed its offset twice within two days since 1970. None does by the rules that it has for the future.
 */
export function offsetsWithin(
  zoneName: string,
  { from, until }: { readonly from: number; readonly until: number },
): ZoneOffsets {
  const zone = IANAZone.create(zoneName);
  if (!zone.isValid) throw new Error(`invariant: ${zoneName} is no zone`);
  const offsetAt = (instant: number): number => Math.round(zone.offset(instant) * MS_PER_MINUTE);
  const changes: OffsetChange[] = [{ at: from, offset: offsetAt(from) }];
  for (let sample = from + MS_PER_DAY; sample < until; sample += MS_PER_DAY) {
    const before = changes.at(-1);
    const offset = offsetAt(sample);
    if (before === undefined || offset === before.offset) continue;
    changes.push({ at: changeBetween(sample - MS_PER_DAY, sample, offsetAt), offset });
  }
  return { changes, until };
}

/** The first instant that has the offset of `high`, by halving. */
function changeBetween(low: number, high: number, offsetAt: (instant: number) => number): number {
  const wanted = offsetAt(high);
  let [before, after] = [low, high];
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (offsetAt(middle) === wanted) after = middle;
    else before = middle;
  }
  return after;
}
