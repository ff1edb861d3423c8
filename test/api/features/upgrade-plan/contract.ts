/** What a store does with upgrade plans. */

import { expect, it } from 'vitest';
import type { StoredUpgradePlan } from '../../../../api/features/upgrade-plan/contract.ts';
import { UPGRADE_PLANS } from '../../../../api/features/upgrade-plan/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { A, B } from '../../store/contract/two-sites.ts';
import { T0 } from '../../store/examples.ts';

export const examplePlan = (name: string): StoredUpgradePlan => {
  const plan = {
    items: [{ candidate: 0, year: 1 }],
    presentValue: 0.1 + 0.2,
    status: 'optimal',
    gap: 0,
  } as const;
  return {
    name,
    currency: 'EUR',
    modelVersion: '1',
    question: {
      years: 2,
      budget: [100],
      carryOver: true,
      discountRate: 1 / 3,
      candidates: [{ name: 'a pump', cost: 10, yearlySaving: 8, lifeYears: 3 }],
    },
    plan: {
      plan,
      spending: [{ year: 1, budget: 100, available: 100, spent: 10, carried: 90 }],
      leftOut: [],
      moreBudget: { budget: [101], plan },
    },
  };
};

export function upgradePlans(store: () => Store): void {
  const kept = (id: string) => ({ id, document: examplePlan(`plan ${id}`), now: T0 });

  it('keeps an upgrade plan as it was made, in its own site', async () => {
    const inserted = await store().of(A, UPGRADE_PLANS).insert(kept('u1'));
    expect(inserted).toMatchObject({ outcome: 'inserted', record: { version: 1, name: 'plan u1' } });
    const found = await store().of(A, UPGRADE_PLANS).get('u1');
    expect(found).toEqual(inserted.record);
    expect(found?.document).toEqual(examplePlan('plan u1'));
    expect(await store().of(B, UPGRADE_PLANS).get('u1')).toBeUndefined();
  });

  it('lists upgrade plans page by page and by name', async () => {
    for (const id of ['u1', 'u2', 'u3']) await store().of(A, UPGRADE_PLANS).insert(kept(id));
    await store().of(B, UPGRADE_PLANS).insert(kept('of-b'));
    const first = await store().of(A, UPGRADE_PLANS).list({ limit: 2, after: null });
    expect([first.records.map(({ id }) => id), first.more]).toEqual([['u1', 'u2'], true]);
    const next = await store()
      .of(A, UPGRADE_PLANS)
      .list({ limit: 2, after: { createdAt: T0, id: 'u2' } });
    expect([next.records.map(({ id }) => id), next.more]).toEqual([['u3'], false]);
    const named = await store().of(A, UPGRADE_PLANS).list({ limit: 2, after: null, name: 'plan u2' });
    expect(named.records.map(({ id }) => id)).toEqual(['u2']);
  });

  it('deletes an upgrade plan of the version that was seen', async () => {
    await store().of(A, UPGRADE_PLANS).insert(kept('u1'));
    const deletion = { id: 'u1' };
    expect(
      await store()
        .of(A, UPGRADE_PLANS)
        .delete({ ...deletion, expectedVersion: 2 }),
    ).toEqual({
      outcome: 'stale',
      version: 1,
    });
    expect(
      await store()
        .of(A, UPGRADE_PLANS)
        .delete({ ...deletion, expectedVersion: 1 }),
    ).toEqual({
      outcome: 'deleted',
    });
    expect(
      await store()
        .of(A, UPGRADE_PLANS)
        .delete({ ...deletion, expectedVersion: 'any' }),
    ).toEqual({
      outcome: 'missing',
    });
  });
}
