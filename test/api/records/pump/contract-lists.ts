/** What a store does with many pumps. */

import { expect, it } from 'vitest';
import type { PumpRecord } from '../../../../api/records/pump/kind.ts';
import { PUMPS } from '../../../../api/records/pump/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { A, insertPump } from '../../store/contract/two-sites.ts';
import { T0 } from '../../store/examples.ts';

export function pumpLists(store: () => Store): void {
  const ids = (records: readonly { id: string }[]) => records.map(({ id }) => id);

  it('gives the pumps asked for in the order asked, once each, without those unknown', async () => {
    for (const id of ['p1', 'p2', 'p3']) await insertPump(store(), id);
    const pumps = await store().of(A, PUMPS).some(['p3', 'nothing', 'p1', 'p3']);
    expect(ids(pumps)).toEqual(['p3', 'p1']);
    expect(await store().of(A, PUMPS).some([])).toEqual([]);
  });

  it('walks through all pages in the order of creation, then id, each record once', async () => {
    const creations = [
      ['d', 3],
      ['b', 1],
      ['a', 1],
      ['c', 1],
      ['e', 0],
    ] as const;
    for (const [id, after] of creations) await insertPump(store(), id, { now: T0 + after });
    const seen: string[] = [];
    let after: PumpRecord | null = null;
    for (let page = 0; page < 3; page += 1) {
      const { records, more } = await store().of(A, PUMPS).list({ limit: 2, after });
      expect(more).toBe(page < 2);
      seen.push(...ids(records));
      after = records.at(-1) ?? null;
    }
    expect(seen).toEqual(['e', 'a', 'b', 'c', 'd']);
    const all = await store().of(A, PUMPS).all();
    expect(all.outcome === 'all' && ids(all.records)).toEqual(seen);
  });

  it('says that nothing follows when a page ends exactly at the last record', async () => {
    for (const id of ['p1', 'p2']) await insertPump(store(), id);
    const page = await store().of(A, PUMPS).list({ limit: 2, after: null });
    expect([ids(page.records), page.more]).toEqual([['p1', 'p2'], false]);
  });

  it('goes on after a record that was deleted meanwhile', async () => {
    for (const id of ['p1', 'p2', 'p3']) await insertPump(store(), id);
    const { records } = await store().of(A, PUMPS).list({ limit: 2, after: null });
    await store().of(A, PUMPS).delete({ id: 'p2', expectedVersion: 'any' });
    const rest = await store()
      .of(A, PUMPS)
      .list({ limit: 2, after: records.at(-1) ?? null });
    expect(ids(rest.records)).toEqual(['p3']);
  });

  it('lists by exact name, page by page', async () => {
    await insertPump(store(), 'p1', { name: 'twin' });
    await insertPump(store(), 'p2', { name: 'Twin' });
    await insertPump(store(), 'p3', { name: 'twin' });
    const first = await store().of(A, PUMPS).list({ limit: 1, after: null, name: 'twin' });
    expect([ids(first.records), first.more]).toEqual([['p1'], true]);
    const after = first.records[0] ?? null;
    const second = await store().of(A, PUMPS).list({ limit: 1, after, name: 'twin' });
    expect([ids(second.records), second.more]).toEqual([['p3'], false]);
  });
}
