import { describe, expect, it } from 'vitest';
import { zoneAround } from '../../../api/clock/zone.ts';
import { dayOfText } from '../../../models/calendar/civil-text.ts';
import { phaseRuns } from '../../../models/schedule/phase-starts.ts';
import type { Phase } from '../../../models/schedule/schedule.ts';

const phase = (from: string, facts: Partial<Phase> = {}): Phase => ({
  name: from,
  from,
  factor: 1,
  ...facts,
});

const runsOf = (
  phases: readonly Phase[],
  {
    zone = 'Europe/Lisbon',
    from,
    until,
    holidays = [],
  }: { zone?: string; from: number; until: number; holidays?: string[] },
) =>
  phaseRuns(
    {
      phases,
      zone: zoneAround(zone, 2026),
      holidays: new Set(holidays.map((text) => dayOfText(text) ?? 0)),
    },
    { from, until },
  ).map((run) => [
    phases[run.phase]?.name,
    new Date(run.from).toISOString(),
    new Date(run.until).toISOString(),
  ]);

const day = phase('07:00');
const night = phase('22:00');

describe('the phases of a day', () => {
  it('follow one another, whatever their order in the list', () => {
    const interval = { from: Date.UTC(2026, 0, 15, 12), until: Date.UTC(2026, 0, 16, 12) };
    const expected = [
      ['07:00', '2026-01-15T07:00:00.000Z', '2026-01-15T22:00:00.000Z'],
      ['22:00', '2026-01-15T22:00:00.000Z', '2026-01-16T07:00:00.000Z'],
      ['07:00', '2026-01-16T07:00:00.000Z', '2026-01-16T22:00:00.000Z'],
    ];
    expect(runsOf([day, night], interval)).toEqual(expected);
    expect(runsOf([night, day], interval)).toEqual(expected);
  });

  it('begin at the first instant after a time that clocks skip', () => {
    const interval = { from: Date.UTC(2026, 2, 29), until: Date.UTC(2026, 2, 29, 3) };
    expect(runsOf([day, phase('01:30')], interval)).toEqual([
      ['07:00', '2026-03-28T07:00:00.000Z', '2026-03-29T01:00:00.000Z'],
      ['01:30', '2026-03-29T01:00:00.000Z', '2026-03-29T06:00:00.000Z'],
    ]);
  });

  it('begin once where clocks show a time twice, at the first', () => {
    const interval = { from: Date.UTC(2026, 9, 25), until: Date.UTC(2026, 9, 25, 3) };
    expect(runsOf([day, phase('01:30')], interval)).toEqual([
      ['07:00', '2026-10-24T06:00:00.000Z', '2026-10-25T00:30:00.000Z'],
      ['01:30', '2026-10-25T00:30:00.000Z', '2026-10-25T07:00:00.000Z'],
    ]);
  });

  it('of two that clocks skip together only the later runs', () => {
    const interval = { from: Date.UTC(2026, 2, 29, 1), until: Date.UTC(2026, 2, 29, 2) };
    expect(runsOf([phase('01:15'), phase('01:45'), day], interval).map(([name]) => name)).toEqual(['01:45']);
  });

  it('run on over days on which nothing begins', () => {
    const weekly = [phase('08:00', { days: ['mon'] }), phase('20:00', { days: ['fri'] })];
    // Monday 12 January to Friday 16 January 2026.
    expect(runsOf(weekly, { from: Date.UTC(2026, 0, 14), until: Date.UTC(2026, 0, 15) })).toEqual([
      ['08:00', '2026-01-12T08:00:00.000Z', '2026-01-16T20:00:00.000Z'],
    ]);
  });

  it('count a holiday as none of the weekdays', () => {
    const phases = [phase('08:00', { days: ['thu'] }), phase('09:00', { days: ['holiday'] })];
    const interval = { from: Date.UTC(2026, 0, 15, 10), until: Date.UTC(2026, 0, 15, 11) };
    expect(runsOf(phases, interval).map(([name]) => name)).toEqual(['08:00']);
    expect(runsOf(phases, { ...interval, holidays: ['2026-01-15'] }).map(([name]) => name)).toEqual([
      '09:00',
    ]);
  });
});
