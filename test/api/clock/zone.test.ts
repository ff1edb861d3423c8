/** Changes of clocks as published: EU directive 2000/84/EC (last Sundays of March and October, 01:00 UTC), the Energy Policy Act
 * of 2005 for the United States, and the zone database's notes on Sydney and Lord Howe for 2026. */
import { describe, expect, it } from 'vitest';
import { siteYear, withOffset } from '../../../api/clock/site-time.ts';
import { zoneAround } from '../../../api/clock/zone.ts';
import { dayOfText } from '../../../models/calendar/civil-text.ts';
import { civilYear } from '../../../models/calendar/civil-year.ts';
import { instantOf, offsetAt, startOfDay } from '../../../models/calendar/zone-offsets.ts';

const HOUR = 3_600_000;

const changesIn = (zone: string, year: number): readonly string[] =>
  zoneAround(zone, year)
    .changes.slice(1)
    .map(({ at }) => new Date(at).toISOString())
    .filter((text) => text.startsWith(String(year)));

describe('the clocks of a zone', () => {
  it('are read once, and never given for another zone or year', () => {
    const lisbon = zoneAround('Europe/Lisbon', 2026);
    expect(zoneAround('Europe/Lisbon', 2026)).toBe(lisbon);
    for (const other of [zoneAround('Europe/Lisbon', 2027), zoneAround('Asia/Tokyo', 2026)]) {
      expect(other).not.toEqual(lisbon);
    }
  });

  it.each([
    ['Europe/Lisbon', ['2026-03-29T01:00:00.000Z', '2026-10-25T01:00:00.000Z']],
    ['America/New_York', ['2026-03-08T07:00:00.000Z', '2026-11-01T06:00:00.000Z']],
    ['Australia/Sydney', ['2026-04-04T16:00:00.000Z', '2026-10-03T16:00:00.000Z']],
    ['Australia/Lord_Howe', ['2026-04-04T15:00:00.000Z', '2026-10-03T15:30:00.000Z']],
    ['Asia/Tokyo', []],
  ])('%s change in 2026 at %j', (zone, changes) => {
    expect(changesIn(zone, 2026)).toEqual(changes);
  });

  it.each(['Europe/Lisbon', 'America/St_Johns', 'Africa/Casablanca', 'Pacific/Apia', 'Asia/Kathmandu'])(
    'of %s agree with the formatter of the platform throughout two years',
    (zone) => {
      const offsets = zoneAround(zone, 2026);
      const style = { dateStyle: 'short', timeStyle: 'medium' } as const;
      const local = new Intl.DateTimeFormat('en-GB', { ...style, timeZone: zone });
      const utc = new Intl.DateTimeFormat('en-GB', { ...style, timeZone: 'UTC' });
      for (let at = Date.UTC(2025, 6, 1); at < Date.UTC(2027, 5, 30); at += 7 * HOUR) {
        expect(utc.format(at + offsetAt(offsets, at))).toBe(local.format(at));
      }
    },
  );

  it.each([
    ['Europe/Lisbon', '2026-03-29', 23],
    ['Europe/Lisbon', '2026-10-25', 25],
    ['Australia/Lord_Howe', '2026-04-05', 24.5],
    ['Australia/Lord_Howe', '2026-10-04', 23.5],
    ['Asia/Tokyo', '2026-03-29', 24],
  ])('in %s the day %s has %d hours', (zone, text, hours) => {
    const day = dayOfText(text) ?? 0;
    const offsets = zoneAround(zone, 2026);
    expect((startOfDay(offsets, day + 1) - startOfDay(offsets, day)) / HOUR).toBe(hours);
  });

  it.each([
    [2026, 8760],
    [2028, 8784],
  ])('the year %i has %i hours in every zone that returns to its offset', (year, hours) => {
    for (const zone of ['Europe/Lisbon', 'Asia/Tokyo', 'Australia/Sydney']) {
      const { from, until } = civilYear(zoneAround(zone, year), year);
      expect((until - from) / HOUR).toBe(hours);
    }
  });
});

describe('a wall clock time', () => {
  const lisbon = zoneAround('Europe/Lisbon', 2026);

  it('that is skipped is the first instant after', () => {
    const local = Date.UTC(2026, 2, 29, 1, 30);
    expect(new Date(instantOf(lisbon, local)).toISOString()).toBe('2026-03-29T01:00:00.000Z');
  });

  it('that comes twice is its first occurrence', () => {
    const local = Date.UTC(2026, 9, 25, 1, 30);
    expect(new Date(instantOf(lisbon, local)).toISOString()).toBe('2026-10-25T00:30:00.000Z');
  });
});

describe('an instant of the site', () => {
  it.each([
    ['Europe/Lisbon', Date.UTC(2026, 6, 1), '2026-07-01T01:00:00.000+01:00'],
    ['America/St_Johns', Date.UTC(2026, 0, 1), '2025-12-31T20:30:00.000-03:30'],
    ['UTC', Date.UTC(2026, 0, 1), '2026-01-01T00:00:00.000+00:00'],
  ])('in %s carries its offset', (zone, at, text) => {
    expect(withOffset(zoneAround(zone, 2026), at)).toBe(text);
  });

  it('is of the year that its clocks show', () => {
    expect(siteYear('Pacific/Auckland', Date.UTC(2026, 11, 31, 20))).toBe(2027);
    expect(siteYear('America/New_York', Date.UTC(2026, 0, 1, 3))).toBe(2025);
  });
});
