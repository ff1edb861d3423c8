/** What a store tells a summary of a site. */

import { expect, it } from 'vitest';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { exampleSchedule } from '../../records/tariff/contract.ts';
import { exampleLoop, T0 } from '../examples.ts';
import { A, B } from './two-sites.ts';

export function summaryReads(store: () => Store): void {
  it('counts the loops of a site, and finds the schedules of many of them', async () => {
    for (const [siteId, id] of [
      [A, 'l1'],
      [A, 'l2'],
      [A, 'l3'],
      [B, 'l1'],
    ] as const) {
      await store().of(siteId, LOOPS).insert({ id, document: exampleLoop(), now: T0 });
      if (id === 'l2') continue;
      const put = { siteId, id, document: exampleSchedule(), now: T0 };
      await store().putSchedule({ ...put, expectedVersion: 'none' });
    }
    expect([await store().of(A, LOOPS).count(), await store().of(B, LOOPS).count()]).toEqual([3, 1]);
    const found = await store().getSchedules({ siteId: A, ids: ['l1', 'l2', 'nobody'] });
    expect(found.map(({ id }) => id)).toEqual(['l1']);
    expect(await store().getSchedules({ siteId: A, ids: [] })).toEqual([]);
  });
}
