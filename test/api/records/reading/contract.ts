/** What a store does with readings. */

import { expect, it } from 'vitest';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import { READINGS } from '../../../../api/records/reading/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import type { Reading } from '../../../../models/readings/reading.ts';
import { A, B } from '../../store/contract/two-sites.ts';
import { exampleLoop, T0 } from '../../store/examples.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
const ALWAYS = { from: 0, before: 4e12 };

export function readings(store: () => Store): void {
  const readingsOf = (siteId: string) => store().of(siteId, READINGS);
  const key = { loop: 'l1' };
  const withLoops = async () => {
    for (const siteId of [A, B]) {
      await store().of(siteId, LOOPS).insert({ id: 'l1', document: exampleLoop(), now: T0 });
    }
  };
  const write = (list: readonly Reading[]) =>
    readingsOf(A).insert({ ...key, readings: list, outlets: ['a', 'b'] });
  const all = () => readingsOf(A).between({ ...key, ...ALWAYS, limit: 1_000 });

  it('keeps readings of a loop as they were measured, in the order of time, in their own site', async () => {
    await withLoops();
    const [first, second] = [
      { time: T0, setting: 70.5, power: 1 / 3, flow: 0.1 + 0.2, outletFlows: { 'far end': 1e-7, left: 0 } },
      { time: T0 + 1, setting: 0, head: 5e-324, suctionPressure: -2 / 3, dischargePressure: 1e5 },
    ] as const;
    expect(await write([first])).toEqual({ outcome: 'written', accepted: 1, merged: 0 });
    expect(await write([second])).toEqual({ outcome: 'written', accepted: 1, merged: 0 });
    expect(await all()).toEqual([first, second]);
    expect(await readingsOf(B).between({ loop: 'l1', ...ALWAYS, limit: 10 })).toEqual([]);
  });

  it('merges readings of one instant: what comes later wins, what it leaves out stays', async () => {
    await withLoops();
    await write([{ time: T0, setting: 70, power: 50, flow: 1, outletFlows: { a: 1, b: 2 } }]);
    const later = [
      { time: T0, setting: 71, power: 51, outletFlows: { b: 3 } },
      { time: T0 + 1, setting: 70, power: 60 },
      { time: T0 + 1, setting: 72, head: 2 },
    ];
    expect(await write(later)).toEqual({ outcome: 'written', accepted: 3, merged: 2 });
    expect(await all()).toEqual([
      { time: T0, setting: 71, power: 51, flow: 1, outletFlows: { a: 1, b: 3 } },
      { time: T0 + 1, setting: 72, power: 60, head: 2 },
    ]);
  });

  it('writes none where merging leaves no flow at speed and no head beside it', async () => {
    await withLoops();
    const before = { time: T0, setting: 70, power: 50, outletFlows: { a: 0, b: 2 } };
    await write([before]);
    const shut = { time: T0, setting: 70, outletFlows: { b: 0 } };
    expect(await write([shut])).toEqual({ outcome: 'still', time: T0 });
    expect(await write([{ time: T0, setting: 70, flow: 0 }])).toEqual({ outcome: 'still', time: T0 });
    expect(await all()).toEqual([before]);
    expect(await write([{ ...shut, head: 3 }])).toMatchObject({ outcome: 'written', merged: 1 });
    expect(await write([{ time: T0, setting: 0, flow: 0 }])).toMatchObject({ outcome: 'written' });
  });

  it('deletes those of a stretch of time with the flows of their outlets, and counts as a change', async () => {
    await withLoops();
    await write([0, 1, 2, 3].map((i) => ({ time: T0 + i, setting: 70, outletFlows: { a: i + 1 } })));
    const { changes } = await readingsOf(A).span('l1');
    const choice = { ...key, from: T0 + 1, before: T0 + 3 };
    expect(await readingsOf(A).delete(choice)).toEqual({ outcome: 'deleted', readings: 2 });
    expect((await all()).map(({ time }) => time)).toEqual([T0, T0 + 3]);
    expect((await readingsOf(A).span('l1')).changes).toBe(changes + 1);
    await write([{ time: T0 + 1, setting: 70 }]);
    expect((await all())[1]).toEqual({ time: T0 + 1, setting: 70 });
    expect(await readingsOf(B).delete(choice)).toMatchObject({ readings: 0 });
  });

  it('writes many at once and reads those of a range, so many at most', async () => {
    await withLoops();
    const many = Array.from({ length: 333 }, (_, i) => ({ time: T0 + i * MINUTE, setting: 70, flow: i }));
    expect(await write(many)).toMatchObject({ accepted: 333, merged: 0 });
    expect(await write(many.slice(100, 250))).toMatchObject({ accepted: 150, merged: 150 });
    const some = await readingsOf(A).between({
      ...key,
      from: T0 + 10 * MINUTE,
      before: T0 + 300 * MINUTE,
      limit: 5,
    });
    expect(some.map(({ flow }) => flow)).toEqual([10, 11, 12, 13, 14]);
    expect(await readingsOf(A).count({ ...key, from: T0, before: T0 + 10 * MINUTE })).toBe(10);
  });

  it('tells how often readings were written and what they span', async () => {
    await withLoops();
    expect(await readingsOf(A).span('l1')).toEqual({ changes: 0, range: null });
    await write([{ time: T0 + 5, setting: 70 }]);
    await write([{ time: T0, setting: 70 }]);
    expect(await readingsOf(A).span('l1')).toEqual({ changes: 2, range: { first: T0, last: T0 + 5 } });
    expect(await readingsOf(B).span('l1')).toEqual({ changes: 0, range: null });
  });

  it('takes the first reading of every stretch', async () => {
    await withLoops();
    const many = Array.from({ length: 10 }, (_, i) => ({
      time: T0 + i * MINUTE,
      setting: 70,
      outletFlows: { a: i },
    }));
    await write(many);
    const sampled = await readingsOf(A).sampled({ ...key, ...ALWAYS, apart: 4 * MINUTE });
    expect(sampled).toEqual([many[0], many[4], many[8]]);
  });

  it('averages what was measured by the clocks of a zone', async () => {
    await withLoops();
    // Clocks go from UTC+1 to UTC+2 in the middle of the second day.
    const change = T0 + DAY + 12 * HOUR;
    const offsets = [
      { at: 0, offset: HOUR },
      { at: change, offset: 2 * HOUR },
    ];
    await write([
      { time: T0 - HOUR, setting: 60, flow: 1 },
      { time: T0, setting: 80, outletFlows: { a: 2 } },
      { time: T0 + DAY - 1 - HOUR, setting: 70, flow: 2, outletFlows: { a: 4, b: 1 } },
      { time: T0 + 2 * DAY - 2 * HOUR - 1, setting: 70, power: 9 },
      { time: T0 + 2 * DAY - 2 * HOUR, setting: 70, power: 11 },
    ]);
    const buckets = await readingsOf(A).buckets({ ...key, ...ALWAYS, width: DAY, offsets });
    const day = T0 / DAY;
    expect(buckets.map(({ bucket }) => bucket)).toEqual([day, day + 1, day + 2]);
    expect(buckets[0]).toEqual({
      bucket: day,
      readings: 3,
      setting: 70,
      power: null,
      flow: 1.5,
      head: null,
      suctionPressure: null,
      dischargePressure: null,
      outletFlows: { a: 3, b: 1 },
    });
    expect(buckets.map(({ power }) => power)).toEqual([null, 9, 11]);
  });

  it('writes none where one cannot be, and none without the loop', async () => {
    await withLoops();
    expect(
      await readingsOf(A).insert({
        loop: 'away',
        readings: [{ time: T0, setting: 1 }],
        outlets: [],
      }),
    ).toEqual({
      outcome: 'missing',
    });
    const broken = { time: T0 + 1, setting: Number.NaN };
    await expect(write([{ time: T0, setting: 1 }, broken])).rejects.toThrow();
    expect(await all()).toEqual([]);
  });

  it('loses the readings with their loop, and keeps those of others', async () => {
    await withLoops();
    await write([{ time: T0, setting: 70, outletFlows: { a: 1 } }]);
    await readingsOf(B).insert({
      loop: 'l1',
      readings: [{ time: T0, setting: 70 }],
      outlets: [],
    });
    expect(await store().of(A, LOOPS).delete({ id: 'l1', expectedVersion: 'any' })).toEqual({
      outcome: 'deleted',
    });
    await store().of(A, LOOPS).insert({ id: 'l1', document: exampleLoop(), now: T0 });
    expect(await all()).toEqual([]);
    expect(await readingsOf(B).count({ loop: 'l1', ...ALWAYS })).toBe(1);
  });
}
