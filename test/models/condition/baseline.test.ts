/** When a baseline begins and is complete. */
import { describe, expect, it } from 'vitest';
import { type BaselineEvent, baselinesOf } from '../../../models/condition/baseline.ts';

/** Daily from one day on, at 08:00. */
const daily = (from: number, to: number, every = 1) =>
  Array.from({ length: Math.ceil((to - from) / every) }, (_, i) => ({
    ...{ day: from + i * every, time: from + i * every + 1 / 3 },
  }));

const event = (startedBy: BaselineEvent['startedBy'], time: number): BaselineEvent => ({ startedBy, time });

const current = (events: readonly BaselineEvent[], now = 400, days = daily(0, 400)) =>
  baselinesOf({ days, events, now })?.current;

describe('a baseline', () => {
  it('begins with the first reading, and lasts 28 days', () => {
    const found = current([]);
    expect(found).toMatchObject({ startedBy: 'first-reading', dayCount: 28, complete: true });
    expect((found?.to ?? 0) - (found?.from ?? 0)).toBe(28);
  });

  it('is incomplete before they have passed', () => {
    expect(current([], 28, daily(0, 28))).toMatchObject({ complete: false, dayCount: 28 });
    expect(current([], 29, daily(0, 29))?.complete).toBe(true);
  });

  it('lasts until eight days have readings', () => {
    const weekly = daily(0, 400, 7);
    expect(current([], 49, weekly)).toMatchObject({ complete: false, dayCount: 7 });
    expect(current([], 51, weekly)).toMatchObject({ complete: true, dayCount: 8 });
  });

  it('is none without readings that nobody requested, and empty where somebody did', () => {
    expect(baselinesOf({ days: [], events: [], now: 50 })).toBeNull();
    expect(baselinesOf({ days: [], events: [event('request', 5)], now: 50 })?.current).toMatchObject({
      ...{ from: 5, startedBy: 'request', dayCount: 0, complete: false },
    });
  });

  it('begins at the latest of request and installation', () => {
    expect(current([event('installation', 20), event('request', 60)])).toMatchObject({
      startedBy: 'request',
      from: 60,
    });
    expect(current([event('request', 20), event('installation', 60)])).toMatchObject({
      startedBy: 'installation',
      from: 60,
    });
  });

  it('begins to count with the first day read where it was asked for long before', () => {
    expect(current([event('installation', 0)], 130, daily(100, 130))).toMatchObject({
      from: 0,
      to: 128,
      complete: true,
    });
  });

  it('begins anew with a cleaning once it is complete, the former one kept', () => {
    const found = baselinesOf({ days: daily(0, 400), events: [event('cleaning', 100)], now: 110 });
    expect(found?.current).toMatchObject({ startedBy: 'cleaning', from: 100, complete: false });
    expect(found?.former).toMatchObject({ startedBy: 'first-reading', complete: true });
  });

  it('goes on across cleanings while it is incomplete', () => {
    const found = baselinesOf({ days: daily(0, 400), events: [event('cleaning', 20)], now: 110 });
    expect(found).toMatchObject({ former: null, current: { startedBy: 'first-reading', complete: true } });
  });

  it('is the last complete one before, where cleanings follow each other', () => {
    const events = [event('cleaning', 100), event('service', 110), event('cleaning', 200)];
    const found = baselinesOf({ days: daily(0, 400), events, now: 300 });
    expect(found?.current).toMatchObject({ startedBy: 'cleaning', from: 200 });
    expect(found?.former).toMatchObject({ startedBy: 'cleaning', from: 100 });
  });

  it('is not touched by a cleaning after the instant that is judged, or before the request', () => {
    expect(current([event('cleaning', 100)], 90, daily(0, 90))?.startedBy).toBe('first-reading');
    expect(current([event('cleaning', 40), event('request', 60)])?.startedBy).toBe('request');
  });
});
