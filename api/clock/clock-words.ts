/** Writes an instant as people read it on the clocks of a site. */
import type { ZoneOffsets } from '../../models/calendar/zone-offsets.ts';
import { withOffset } from './site-time.ts';

/** The places of the date and of hours and minutes in a time of RFC 3339. */
const DATE_ENDS = 10;
const CLOCK = { from: 11, until: 16 } as const;

/** `22:00`; on another day than the instant `near` with its date, `2026-12-01 06:00`. */
export function clockWords(zone: ZoneOffsets, instant: number, near: number): string {
  const [text, other] = [withOffset(zone, instant), withOffset(zone, near)];
  const clock = text.slice(CLOCK.from, CLOCK.until);
  const date = text.slice(0, DATE_ENDS);
  return date === other.slice(0, DATE_ENDS) ? clock : `${date} ${clock}`;
}
