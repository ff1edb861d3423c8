/** What a store does with tariffs. */

import { expect, it } from 'vitest';
import { defaultSite, SITE } from '../../../../api/records/site/kind.ts';
import { TARIFFS } from '../../../../api/records/tariff/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import type { Tariff } from '../../../../models/tariff/tariff.ts';
import { A, B } from '../../store/contract/two-sites.ts';
import { T0 } from '../../store/examples.ts';

export const exampleTariff = (name = 'Winter peak'): Tariff => ({
  name,
  holidays: ['2026-12-25'],
  periods: [{ name: 'peak', price: 0.1 + 0.2, from: '17:00', to: '21:00' }],
  otherwise: { name: 'base', price: -1 / 3 },
  standingChargePerDay: 0.4,
});

export function tariffs(store: () => Store): void {
  const tariff = (id: string) => ({
    id,
    document: exampleTariff(`tariff ${id}`),
    now: T0,
  });

  it('gives a tariff back as written, replaces it by version, lists and deletes it', async () => {
    await store().of(A, TARIFFS).insert(tariff('t1'));
    await store().of(A, TARIFFS).insert(tariff('t2'));
    expect((await store().of(A, TARIFFS).get('t1'))?.document).toEqual(exampleTariff('tariff t1'));
    expect(await store().of(B, TARIFFS).get('t1')).toBeUndefined();
    const replacement = { ...tariff('t1'), document: exampleTariff('other'), now: T0 + 1 };
    expect(
      await store()
        .of(A, TARIFFS)
        .replace({ ...replacement, expectedVersion: 1 }),
    ).toMatchObject({
      outcome: 'replaced',
      record: { version: 2, name: 'other' },
    });
    const stale = { outcome: 'stale', version: 2 };
    expect(
      await store()
        .of(A, TARIFFS)
        .replace({ ...replacement, expectedVersion: 1 }),
    ).toEqual(stale);
    const page = await store().of(A, TARIFFS).list({ limit: 1, after: null });
    expect([page.records.map(({ id }) => id), page.more]).toEqual([['t1'], true]);
    expect(await store().of(A, TARIFFS).delete({ id: 't1', expectedVersion: 1 })).toEqual(stale);
    expect(await store().of(A, TARIFFS).delete({ id: 't1', expectedVersion: 2 })).toEqual({
      outcome: 'deleted',
    });
    expect(await store().of(A, TARIFFS).delete({ id: 't1', expectedVersion: 'any' })).toEqual({
      outcome: 'missing',
    });
  });

  it('lets a site go by a tariff of its own alone, and keeps that', async () => {
    await store().of(B, TARIFFS).insert(tariff('of-b'));
    await store().of(A, TARIFFS).insert(tariff('t1'));
    const site = { document: { ...defaultSite('EUR'), tariff: 'of-b' }, now: T0 };
    expect(
      await store()
        .of(A, SITE)
        .replace({ ...site, expectedVersion: 1 }),
    ).toEqual({ outcome: 'unknown-tariff' });
    expect(await store().of(A, SITE).get()).toMatchObject({ version: 1, document: { tariff: null } });
    const known = { ...site, document: { ...site.document, tariff: 't1' } };
    expect(
      await store()
        .of(A, SITE)
        .replace({ ...known, expectedVersion: 9 }),
    ).toEqual({
      outcome: 'stale',
      version: 1,
    });
    expect(
      await store()
        .of(A, SITE)
        .replace({ ...known, expectedVersion: 1 }),
    ).toMatchObject({
      outcome: 'replaced',
    });
    expect(
      await store()
        .of(A, SITE)
        .replace({ ...known, expectedVersion: 2 }),
    ).toMatchObject({
      outcome: 'replaced',
    });
    const deletion = { id: 't1', expectedVersion: 'any' as const };
    expect(await store().of(A, TARIFFS).delete(deletion)).toEqual({
      outcome: 'in-use',
      usedBy: [{ kind: 'site', id: A, name: 'Site' }],
    });
    await store()
      .of(A, SITE)
      .replace({ ...site, document: defaultSite('EUR'), expectedVersion: 3 });
    expect(await store().of(A, TARIFFS).delete(deletion)).toEqual({ outcome: 'deleted' });
  });
}
