/** What a store does with one pump. */

import { expect, it } from 'vitest';
import { PUMPS } from '../../../../api/records/pump/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { A, B, insertPump } from '../../store/contract/two-sites.ts';
import { exampleFit, examplePump, T0 } from '../../store/examples.ts';

export function pumpsOneByOne(store: () => Store): void {
  it('gives a pump back exactly as it was written, at version 1', async () => {
    const inserted = await insertPump(store(), 'p1');
    expect(inserted).toEqual({
      id: 'p1',
      version: 1,
      createdAt: T0,
      updatedAt: T0,
      name: 'Canister 120',
      document: examplePump(),
      fit: exampleFit,
    });
    expect(await store().of(A, PUMPS).get('p1')).toEqual(inserted);
  });

  it('keeps text of every script, quotes and JSON signs in names', async () => {
    const name = `Pompe n° 1 – "été" \\ 水 🐠 '); {}`;
    await insertPump(store(), 'p1', { name });
    expect(await store().of(A, PUMPS).get('p1')).toMatchObject({ name, document: { name } });
  });

  it('refuses to write a number that is not finite, and writes nothing', async () => {
    const headCurve = { ...exampleFit.headCurve, coefficients: [1, Number.NaN] };
    const fit = { ...exampleFit, headCurve };
    const pump = { id: 'p1', document: examplePump(), fit, now: T0 };
    await expect(store().of(A, PUMPS).insert(pump)).rejects.toThrow('NaN');
    expect(await store().of(A, PUMPS).get('p1')).toBeUndefined();
  });

  it('replaces document, fit and name together and counts the version up', async () => {
    await insertPump(store(), 'p1');
    const fit = { ...exampleFit, powerLaw: { ...exampleFit.powerLaw, coefficient: 119 } };
    const replacement = { id: 'p1', document: examplePump('Inline 60'), fit, now: T0 + 7 };
    const replaced = await store()
      .of(A, PUMPS)
      .replace({ ...replacement, expectedVersion: 1 });
    expect(replaced).toMatchObject({
      outcome: 'replaced',
      record: { version: 2, name: 'Inline 60', fit, createdAt: T0, updatedAt: T0 + 7 },
    });
    expect(await store().of(A, PUMPS).get('p1')).toMatchObject({ version: 2, fit });
  });

  it('refuses a stale version, writes over any when told so, and misses what is not there', async () => {
    await insertPump(store(), 'p1');
    const change = { id: 'p1', document: examplePump(), fit: exampleFit, now: T0 };
    expect(
      await store()
        .of(A, PUMPS)
        .replace({ ...change, expectedVersion: 2 }),
    ).toEqual({
      outcome: 'stale',
      version: 1,
    });
    expect(
      await store()
        .of(A, PUMPS)
        .replace({ ...change, expectedVersion: 'any' }),
    ).toMatchObject({
      outcome: 'replaced',
    });
    const missing = { ...change, id: 'p2', expectedVersion: 'any' } as const;
    expect(await store().of(A, PUMPS).replace(missing)).toEqual({ outcome: 'missing' });
    expect(await store().of(A, PUMPS).get('p2')).toBeUndefined();
  });

  it('deletes by the version seen', async () => {
    await insertPump(store(), 'p1');
    const key = { id: 'p1' };
    expect(
      await store()
        .of(A, PUMPS)
        .delete({ ...key, expectedVersion: 9 }),
    ).toEqual({
      outcome: 'stale',
      version: 1,
    });
    expect(
      await store()
        .of(A, PUMPS)
        .delete({ ...key, expectedVersion: 1 }),
    ).toEqual({ outcome: 'deleted' });
    expect(
      await store()
        .of(A, PUMPS)
        .delete({ ...key, expectedVersion: 1 }),
    ).toEqual({ outcome: 'missing' });
    expect(await store().of(A, PUMPS).get('p1')).toBeUndefined();
  });

  it('shows a site nothing of another, under the same id too', async () => {
    await insertPump(store(), 'p1', { name: 'of A' });
    await insertPump(store(), 'p1', { name: 'of B', siteId: B });
    await store().of(B, PUMPS).delete({ id: 'p1', expectedVersion: 'any' });
    expect(await store().of(A, PUMPS).get('p1')).toMatchObject({ name: 'of A' });
    expect(await store().of(B, PUMPS).get('p1')).toBeUndefined();
    expect(await store().of(B, PUMPS).list({ limit: 10, after: null })).toEqual({
      records: [],
      more: false,
    });
    expect(await store().of(B, PUMPS).all()).toEqual({ outcome: 'all', records: [] });
    expect(await store().of(B, PUMPS).some(['p1'])).toEqual([]);
  });
}
