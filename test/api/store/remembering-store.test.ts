/** What a store remembers is never older than what was written. */
import { describe, expect, it } from 'vitest';
import { defaultSite } from '../../../api/records/site/kind.ts';
import { DEFAULT_SITE_ID } from '../../../api/store/default-site.ts';
import { rememberingStore } from '../../../api/store/remembering-store.ts';
import { openSqliteStore } from '../../../api/store/sqlite.ts';
import type { Store } from '../../../api/store/store.ts';

const key = { siteId: DEFAULT_SITE_ID, id: DEFAULT_SITE_ID };

async function countedStore() {
  const opened = await openSqliteStore(':memory:');
  if (!opened.ok) throw new Error(opened.failure.code);
  await opened.value.ensureSite({ siteId: DEFAULT_SITE_ID, document: defaultSite('EUR'), now: 1 });
  let reads = 0;
  const counted: Store = {
    ...opened.value,
    getSite: (siteId) => {
      reads += 1;
      return opened.value.getSite(siteId);
    },
  };
  return { store: rememberingStore(counted), below: counted, reads: () => reads };
}

describe('a store that remembers', () => {
  it('reads a record once', async () => {
    const { store, reads } = await countedStore();
    const first = await store.getSite(key.siteId);
    expect(await store.getSite(key.siteId)).toBe(first);
    expect(reads()).toBe(1);
  });

  it('reads it again after a write', async () => {
    const { store } = await countedStore();
    const before = await store.getSite(key.siteId);
    const document = { ...defaultSite('EUR'), price: 0.3 };
    await store.replaceSite({ siteId: key.siteId, document, now: 2, expectedVersion: 'any' });
    const after = await store.getSite(key.siteId);
    expect(before?.document.price).toBeNull();
    expect(after?.document.price).toBe(0.3);
  });

  it('keeps nothing that was read while a write was under way', async () => {
    const { store, below } = await countedStore();
    let release: () => void = () => {};
    const gate = new Promise<void>((resolve) => {
      release = resolve;
    });
    // A read that began before the write and ends after it, with what was there before.
    const slow = rememberingStore({
      ...below,
      getSite: async (siteId) => {
        const old = await below.getSite(siteId);
        await gate;
        return old;
      },
    });
    const reading = slow.getSite(key.siteId);
    const document = { ...defaultSite('EUR'), price: 0.4 };
    await slow.replaceSite({ siteId: key.siteId, document, now: 2, expectedVersion: 'any' });
    release();
    expect((await reading)?.document.price).toBeNull();
    expect((await slow.getSite(key.siteId))?.document.price).toBe(0.4);
    expect((await store.getSite(key.siteId))?.document.price).toBe(0.4);
  });

  it('does not remember what is not there', async () => {
    const { store } = await countedStore();
    expect(await store.getPumps({ siteId: key.siteId, ids: ['none', 'none'] })).toEqual([]);
    expect(await store.getLoop({ siteId: key.siteId, id: 'none' })).toBeUndefined();
  });
});
