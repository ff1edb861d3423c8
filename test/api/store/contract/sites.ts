/** What a store does with sites. */
import { expect, it } from 'vitest';
import { defaultSite } from '../../../../api/records/site/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { T0 } from '../examples.ts';
import { A, B } from './two-sites.ts';

export function sites(store: () => Store): void {
  it('makes a site once and then leaves it alone', async () => {
    const again = await store().ensureSite({ siteId: A, document: defaultSite('USD'), now: T0 + 5 });
    expect(again).toMatchObject({ id: A, version: 1, createdAt: T0, document: { currency: 'EUR' } });
  });

  it('replaces a site by the version seen, and tells the version there is otherwise', async () => {
    const document = { ...defaultSite('EUR'), name: 'Skerry Point', price: 0.21 };
    const change = { siteId: A, document, now: T0 + 1 };
    expect(await store().replaceSite({ ...change, expectedVersion: 1 })).toMatchObject({
      outcome: 'replaced',
      record: { version: 2, name: 'Skerry Point', updatedAt: T0 + 1, createdAt: T0 },
    });
    expect(await store().replaceSite({ ...change, expectedVersion: 1 })).toEqual({
      outcome: 'stale',
      version: 2,
    });
    expect((await store().getSite(A))?.document).toEqual(document);
    expect((await store().getSite(B))?.version).toBe(1);
  });

  it('knows no site that was not made', async () => {
    expect(await store().getSite('nowhere')).toBeUndefined();
    const replacement = { siteId: 'nowhere', document: defaultSite('EUR'), now: T0, expectedVersion: 1 };
    expect(await store().replaceSite(replacement)).toEqual({ outcome: 'missing' });
  });
}
