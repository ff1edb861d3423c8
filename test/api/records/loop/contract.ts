/** What a store does with loops. */

import { expect, it } from 'vitest';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import { PUMPS } from '../../../../api/records/pump/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { USED_BY_LIMIT } from '../../../../api/store/versions.ts';
import { A, B, insertPump } from '../../store/contract/two-sites.ts';
import { exampleLoop, T0 } from '../../store/examples.ts';

export function loops(store: () => Store): void {
  const loop = (id: string, pump?: string) => ({
    id,
    document: exampleLoop(pump === undefined ? { name: `loop ${id}` } : { name: `loop ${id}`, pump }),
    now: T0,
  });

  it('gives a loop back as written, replaces it by version and deletes it', async () => {
    const { document, ...key } = loop('l1');
    expect(await store().of(A, LOOPS).insert(loop('l1'))).toMatchObject({ outcome: 'inserted' });
    expect((await store().of(A, LOOPS).get('l1'))?.document).toEqual(document);
    const replacement = { ...loop('l1'), document: exampleLoop({ name: 'Touch pool' }), now: T0 + 1 };
    expect(
      await store()
        .of(A, LOOPS)
        .replace({ ...replacement, expectedVersion: 1 }),
    ).toMatchObject({
      outcome: 'replaced',
      record: { version: 2, name: 'Touch pool' },
    });
    const stale = { outcome: 'stale', version: 2 };
    expect(
      await store()
        .of(A, LOOPS)
        .replace({ ...replacement, expectedVersion: 1 }),
    ).toEqual(stale);
    expect(
      await store()
        .of(A, LOOPS)
        .delete({ ...key, expectedVersion: 1 }),
    ).toEqual(stale);
    expect(
      await store()
        .of(A, LOOPS)
        .delete({ ...key, expectedVersion: 2 }),
    ).toEqual({ outcome: 'deleted' });
    expect(
      await store()
        .of(A, LOOPS)
        .delete({ ...key, expectedVersion: 'any' }),
    ).toEqual({ outcome: 'missing' });
    const missing = { outcome: 'missing' };
    expect(
      await store()
        .of(A, LOOPS)
        .replace({ ...replacement, expectedVersion: 'any' }),
    ).toEqual(missing);
  });

  it('lists loops of one site by name and page', async () => {
    for (const id of ['l1', 'l2', 'l3']) await store().of(A, LOOPS).insert(loop(id));
    const page = await store().of(A, LOOPS).list({ limit: 2, after: null });
    expect(page.records.map(({ name }) => name)).toEqual(['loop l1', 'loop l2']);
    expect(page.more).toBe(true);
    const named = await store().of(A, LOOPS).list({ limit: 9, after: null, name: 'loop l3' });
    expect(named.records.map(({ id }) => id)).toEqual(['l3']);
    expect((await store().of(B, LOOPS).list({ limit: 9, after: null })).records).toEqual([]);
  });

  it('lists the loops that have a pump installed', async () => {
    for (const id of ['p1', 'p2']) await insertPump(store(), id);
    await store().of(A, LOOPS).insert(loop('l1', 'p1'));
    await store().of(A, LOOPS).insert(loop('l2', 'p2'));
    await store().of(A, LOOPS).insert(loop('l3', 'p1'));
    const page = await store().of(A, LOOPS).list({ limit: 9, after: null, installedPump: 'p1' });
    expect(page.records.map(({ id }) => id)).toEqual(['l1', 'l3']);
  });

  it('refuses an installed pump that the site does not have, on insert and on replace', async () => {
    await insertPump(store(), 'of-b', { siteId: B });
    const unknown = { outcome: 'unknown-pump', pumpId: 'of-b' };
    expect(await store().of(A, LOOPS).insert(loop('l1', 'of-b'))).toEqual(unknown);
    expect(await store().of(A, LOOPS).get('l1')).toBeUndefined();
    await store().of(A, LOOPS).insert(loop('l1'));
    const replacement = { ...loop('l1', 'of-b'), expectedVersion: 1 };
    expect(await store().of(A, LOOPS).replace(replacement)).toEqual(unknown);
    expect(await store().of(A, LOOPS).get('l1')).toMatchObject({ version: 1 });
  });

  it('keeps a pump that loops use, and names those loops', async () => {
    await insertPump(store(), 'p1');
    for (const id of ['l1', 'l2']) await store().of(A, LOOPS).insert(loop(id, 'p1'));
    const deletion = { id: 'p1', expectedVersion: 1 };
    expect(
      await store()
        .of(A, PUMPS)
        .delete({ ...deletion, expectedVersion: 5 }),
    ).toEqual({
      outcome: 'stale',
      version: 1,
    });
    expect(await store().of(A, PUMPS).delete(deletion)).toEqual({
      outcome: 'in-use',
      usedBy: [
        { kind: 'loop', id: 'l1', name: 'loop l1' },
        { kind: 'loop', id: 'l2', name: 'loop l2' },
      ],
    });
    await store()
      .of(A, LOOPS)
      .replace({ ...loop('l1'), expectedVersion: 1 });
    await store().of(A, LOOPS).delete({ id: 'l2', expectedVersion: 1 });
    expect(await store().of(A, PUMPS).delete(deletion)).toEqual({ outcome: 'deleted' });
  });

  it('names no more of the loops in the way than its limit', async () => {
    await insertPump(store(), 'p1');
    for (let count = 0; count < USED_BY_LIMIT + 5; count += 1)
      await store()
        .of(A, LOOPS)
        .insert(loop(`l${count}`, 'p1'));
    const refused = await store().of(A, PUMPS).delete({ id: 'p1', expectedVersion: 1 });
    expect(refused.outcome === 'in-use' && refused.usedBy.length).toBe(USED_BY_LIMIT);
  });
}
