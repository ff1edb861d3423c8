import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { siteDay, siteYear } from '../../../api/clock/site-time.ts';
import { civilDate } from '../../../models/calendar/civil-day.ts';
import { textOfDate } from '../../../models/calendar/civil-text.ts';

const ZONES = [
  'UTC',
  'Europe/Lisbon',
  'America/New_York',
  'Asia/Tokyo',
  'Pacific/Kiritimati',
  'Pacific/Apia',
];

describe("a site's day and year", () => {
  it.each([
    ['Europe/Lisbon', '2026-03-29T00:59:59Z', '2026-03-29'],
    ['Europe/Lisbon', '2026-07-31T23:30:00Z', '2026-08-01'],
    ['Pacific/Kiritimati', '2026-12-31T10:00:00Z', '2027-01-01'],
    ['America/New_York', '2027-01-01T04:59:59Z', '2026-12-31'],
    // Samoa crossed the date line: its 30th of December 2011 never was.
    ['Pacific/Apia', '2011-12-30T09:59:59Z', '2011-12-29'],
    ['Pacific/Apia', '2011-12-30T10:00:00Z', '2011-12-31'],
  ])('in %s at %s is %s', (zone, instant, day) => {
    expect(textOfDate(civilDate(siteDay(zone, Date.parse(instant))))).toBe(day);
  });

  // A second algorithm: the library of dates that the offsets come from tells the date by itself.
  it('are those that a library of dates tells', () => {
    const instant = fc.integer({ min: Date.UTC(1971, 0, 2), max: Date.UTC(2100, 0, 1) });
    fc.assert(
      fc.property(fc.constantFrom(...ZONES), instant, (zone, at) => {
        const there = DateTime.fromMillis(at, { zone });
        expect(textOfDate(civilDate(siteDay(zone, at)))).toBe(there.toISODate());
        expect(siteYear(zone, at)).toBe(there.year);
      }),
      { seed: 1, numRuns: 200 },
    );
  });
});
