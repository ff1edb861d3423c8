/** What a store does with sites. */
import { expect, it } from 'vitest';
import { defaultSite, SITE } from '../../../../api/records/site/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { A, B } from '../../store/contract/two-sites.ts';
import { T0 } from '../../store/examples.ts';

export function sites(store: () => Store): void {
  it('makes a site once and then leaves it alone', async () => {
    const again = await store()
      .of(A, SITE)
      .ensure({ document: defaultSite('USD'), now: T0 + 5 });
    expect(again).toMatchObject({ id: A, version: 1, createdAt: T0, document: { currency: 'EUR' } });
  });

  it('replaces a site by the version seen, and tells the version there is otherwise', async () => {
    const document = { ...defaultSite('EUR'), name: 'Skerry Point', price: 0.21 };
    const change = { document, now: T0 + 1 };
    expect(
      await store()
        .of(A, SITE)
        .replace({ ...change, expectedVersion: 1 }),
    ).toMatchObject({
      outcome: 'replaced',
      record: { version: 2, name: 'Skerry Point', updatedAt: T0 + 1, createdAt: T0 },
    });
    expect(
      await store()
        .of(A, SITE)
        .replace({ ...change, expectedVersion: 1 }),
    ).toEqual({
      outcome: 'stale',
      version: 2,
    });
    expect((await store().of(A, SITE).get())?.document).toEqual(document);
    expect((await store().of(B, SITE).get())?.version).toBe(1);
  });

  it('knows no site that was not made', async () => {
    expect(await store().of('nowhere', SITE).get()).toBeUndefined();
    const replacement = { document: defaultSite('EUR'), now: T0, expectedVersion: 1 };
    expect(await store().of('nowhere', SITE).replace(replacement)).toEqual({ outcome: 'missing' });
  });
}
