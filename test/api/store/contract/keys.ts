/** What a store does with the keys that users give to records. */
import { expect, it } from 'vitest';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import { PUMPS } from '../../../../api/records/pump/kind.ts';
import { TARIFFS } from '../../../../api/records/tariff/kind.ts';
import { TASKS } from '../../../../api/records/task/kind.ts';
import { KEYS } from '../../../../api/store/keys.ts';
import type { Store } from '../../../../api/store/store.ts';
import { exampleTariff } from '../../records/tariff/contract.ts';
import { exampleTask } from '../../records/task/contract.ts';
import { exampleFit, exampleLoop, examplePump, T0 } from '../examples.ts';
import { A, B } from './two-sites.ts';

export function keys(store: () => Store): void {
  const pump = (id: string, key?: string | null) => ({
    ...{ id, key, now: T0 },
    ...{ document: examplePump(`pump ${id}`), fit: exampleFit },
  });

  it('keeps a key in every kind, changes it and takes it away', async () => {
    const kept = store();
    const before = [
      await kept.of(A, PUMPS).insert(pump('p1', 'a')),
      await kept.of(A, LOOPS).insert({ id: 'l1', key: 'a', document: exampleLoop(), now: T0 }),
      await kept.of(A, TARIFFS).insert({ id: 't1', key: 'a', document: exampleTariff(), now: T0 }),
      await kept.of(A, TASKS).insert({ id: 'c1', key: 'a', document: exampleTask(), now: T0 }),
    ];
    for (const written of before)
      expect(written).toMatchObject({ outcome: 'inserted', record: { key: 'a' } });
    const records = async () => [
      await kept.of(A, PUMPS).get('p1'),
      await kept.of(A, LOOPS).get('l1'),
      await kept.of(A, TARIFFS).get('t1'),
      await kept.of(A, TASKS).get('c1'),
    ];
    const replaced = async (key: string | null | undefined) => {
      const change = { key, now: T0 + 1, expectedVersion: 'any' as const };
      await kept.of(A, PUMPS).replace({ ...pump('p1'), ...change });
      await kept.of(A, LOOPS).replace({ id: 'l1', document: exampleLoop(), ...change });
      await kept.of(A, TARIFFS).replace({ id: 't1', document: exampleTariff(), ...change });
      await kept.of(A, TASKS).replace({ id: 'c1', document: exampleTask(), ...change });
      return (await records()).map((record) => record?.key);
    };
    expect((await records()).map((record) => record?.key)).toEqual(['a', 'a', 'a', 'a']);
    expect(await replaced('b')).toEqual(['b', 'b', 'b', 'b']);
    expect(await replaced(undefined)).toEqual(['b', 'b', 'b', 'b']);
    expect(await replaced(null)).toEqual([undefined, undefined, undefined, undefined]);
  });

  it('gives a key once a site and kind, and any number of records none', async () => {
    const kept = store();
    await kept.of(A, PUMPS).insert(pump('p1', 'canister'));
    await kept.of(A, PUMPS).insert(pump('p2'));
    await kept.of(A, PUMPS).insert(pump('p3', null));
    expect(await kept.of(B, PUMPS).insert(pump('p1', 'canister'))).toMatchObject({ outcome: 'inserted' });
    expect(
      await kept.of(A, LOOPS).insert({ id: 'l1', key: 'canister', document: exampleLoop(), now: T0 }),
    ).toMatchObject({ outcome: 'inserted' });
    const taken = {
      outcome: 'key-taken',
      usedBy: [{ kind: 'pump', id: 'p1', key: 'canister', name: 'pump p1' }],
    };
    expect(await kept.of(A, PUMPS).insert(pump('p4', 'canister'))).toEqual(taken);
    expect(await kept.of(A, PUMPS).replace({ ...pump('p2', 'canister'), expectedVersion: 1 })).toEqual(taken);
    expect(await kept.of(A, PUMPS).get('p2')).toMatchObject({ version: 1 });
    expect(await kept.of(A, PUMPS).insertAll([pump('p5', 'free'), pump('p6', 'canister')])).toEqual({
      ...taken,
      place: 1,
    });
    expect(await kept.of(A, PUMPS).get('p5')).toBeUndefined();
    await kept.of(A, PUMPS).delete({ id: 'p1', expectedVersion: 'any' });
    expect(await kept.of(A, PUMPS).insert(pump('p4', 'canister'))).toMatchObject({ outcome: 'inserted' });
  });

  it('finds ids by keys and by ids, in the site and the kind alone, also after a change', async () => {
    const kept = store();
    await kept.of(A, PUMPS).insert(pump('p1', 'one'));
    await kept.of(B, PUMPS).insert(pump('p2', 'two'));
    // An import may bring an id that reads like a key: it goes before the key of another record.
    await kept.of(A, PUMPS).insert(pump('three'));
    await kept.of(A, PUMPS).insert(pump('p4', 'three'));
    const found = async (names: readonly string[]) =>
      Object.fromEntries(await kept.of(A, KEYS).ids('pump', names));
    expect(await found(['one', 'two', 'p1', 'three'])).toEqual({ one: 'p1', p1: 'p1', three: 'three' });
    expect([...(await kept.of(A, KEYS).ids('loop', ['one']))]).toEqual([]);
    await kept.of(A, PUMPS).replace({ ...pump('p1', 'first'), expectedVersion: 1 });
    expect(await found(['one', 'first'])).toEqual({ first: 'p1' });
    const many = Array.from({ length: 2_500 }, (_, i) => `k${i}`);
    expect(await found([...many, 'first'])).toEqual({ first: 'p1' });
    expect(await kept.of(A, KEYS).called('first')).toEqual([
      { kind: 'pump', id: 'p1', key: 'first', name: 'pump p1' },
    ]);
  });
}
