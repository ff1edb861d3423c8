/** What a store does with comparisons. */

import { expect, it } from 'vitest';
import type { StoredComparison } from '../../../../api/features/comparison/contract.ts';
import { COMPARISONS } from '../../../../api/features/comparison/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { INSTALLATION } from '../../../../models/cautions/installation.ts';
import { A, B } from '../../store/contract/two-sites.ts';
import { T0 } from '../../store/examples.ts';

export const exampleComparison = (name: string): StoredComparison => ({
  name,
  question: {
    years: 3,
    discountRate: 1 / 3,
    inflation: 0,
    minutesPerFailure: 60,
    options: [
      {
        name: 'as it is',
        assemblies: [{ power: 0.1 + 0.2, new: true, riskShare: 1, hoursPerDay: 24, balancing: 'as-built' }],
        extras: [],
      },
    ],
  },
  figures: {
    currency: 'EUR',
    options: [],
    cheapest: null,
    breakEvenPrice: null,
    breakEvenValueAtRisk: null,
    sensitivity: [],
    assumptions: {
      ...{ years: 3, discountRate: 1 / 3, inflation: 0, energyInflation: 0, labourRate: 0 },
      ...{ price: 0.2, tariff: null, minutesPerFailure: 60, notes: [] },
    },
    summary: 'No option serves.',
    cautions: [INSTALLATION.give('estimate')],
    basis: { modelVersion: '1', loops: [], pumps: [], tariffs: [], schedules: [] },
  },
  sources: {
    site: '[]',
    checks: '[]',
    loops: [{ id: 'l1', version: 2 }],
    pumps: [],
    tariffs: [],
    schedules: [],
  },
});

export function comparisons(store: () => Store): void {
  const kept = (id: string) => ({
    ...{ id, now: T0 },
    document: exampleComparison(`comparison ${id}`),
  });

  it('keeps a comparison as it was made, in its own site', async () => {
    const inserted = await store().of(A, COMPARISONS).insert(kept('c1'));
    expect(inserted).toMatchObject({ outcome: 'inserted', record: { version: 1, name: 'comparison c1' } });
    const found = await store().of(A, COMPARISONS).get('c1');
    expect(found).toEqual(inserted.record);
    expect(found?.document).toEqual(exampleComparison('comparison c1'));
    expect(await store().of(B, COMPARISONS).get('c1')).toBeUndefined();
  });

  it('lists comparisons page by page and by name', async () => {
    for (const id of ['c1', 'c2', 'c3']) await store().of(A, COMPARISONS).insert(kept(id));
    await store().of(B, COMPARISONS).insert(kept('of-b'));
    const first = await store().of(A, COMPARISONS).list({ limit: 2, after: null });
    expect([first.records.map(({ id }) => id), first.more]).toEqual([['c1', 'c2'], true]);
    const named = await store().of(A, COMPARISONS).list({ limit: 2, after: null, name: 'comparison c3' });
    expect(named.records.map(({ id }) => id)).toEqual(['c3']);
  });

  it('deletes a comparison of the version that was seen', async () => {
    await store().of(A, COMPARISONS).insert(kept('c1'));
    const deletion = { id: 'c1' };
    const stale = { outcome: 'stale', version: 1 };
    expect(
      await store()
        .of(A, COMPARISONS)
        .delete({ ...deletion, expectedVersion: 2 }),
    ).toEqual(stale);
    expect(
      await store()
        .of(A, COMPARISONS)
        .delete({ ...deletion, expectedVersion: 1 }),
    ).toEqual({
      outcome: 'deleted',
    });
    expect(
      await store()
        .of(A, COMPARISONS)
        .delete({ ...deletion, expectedVersion: 'any' }),
    ).toEqual({
      outcome: 'missing',
    });
  });
}
