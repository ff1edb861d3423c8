/** What a store does with a site as a whole. */

import { expect, it } from 'vitest';
import { SITE_CONTENTS } from '../../../../api/features/site-copy/contents.ts';
import type { SiteContents } from '../../../../api/features/site-copy/contract.ts';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import { SCHEDULES } from '../../../../api/records/schedule/kind.ts';
import { defaultSite, SITE } from '../../../../api/records/site/kind.ts';
import { TARIFFS } from '../../../../api/records/tariff/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { exampleSchedule } from '../../records/schedule/contract.ts';
import { exampleTariff } from '../../records/tariff/contract.ts';
import { A, B, insertPump } from '../../store/contract/two-sites.ts';
import { exampleLoop, T0 } from '../../store/examples.ts';

async function fill(store: Store): Promise<void> {
  await store.of(A, TARIFFS).insert({ id: 't1', document: exampleTariff(), now: T0 + 1 });
  for (const id of ['p2', 'p1']) await insertPump(store, id, { now: T0 + 2 });
  const loop = { siteId: A, id: 'l1', now: T0 + 3 };
  await store.of(A, LOOPS).insert({ ...loop, document: exampleLoop({ pump: 'p1' }) });
  await store.of(A, LOOPS).replace({
    ...loop,
    document: exampleLoop({ name: 'New', pump: 'p1' }),
    now: T0 + 9,
    expectedVersion: 1,
  });
  await store.of(A, SCHEDULES).put({ ...loop, document: exampleSchedule('t1'), expectedVersion: 'none' });
  const document = { ...defaultSite('USD'), name: 'Lab', tariff: 't1' };
  await store.of(A, SITE).replace({ document, now: T0 + 4, expectedVersion: 'any' });
}

async function contentsOf(store: Store, siteId: string): Promise<SiteContents> {
  const read = await store.of(siteId, SITE_CONTENTS).read({ readings: true });
  if (read.outcome !== 'read') throw new Error(read.outcome);
  return read.contents;
}

/** Every record made. */
const plain = ({ site, records }: SiteContents) => ({
  site,
  tariffs: records.tariffs.map((make) => make()),
  pumps: records.pumps.map((make) => make()),
  loops: records.loops.map((make) => make()),
  schedules: records.schedules.map((make) => make()),
});

export function siteContents(store: () => Store): void {
  it('writes into one site what it read of another: ids, versions, times and fits', async () => {
    await fill(store());
    const contents = await contentsOf(store(), A);
    const { site, ...records } = plain(contents);
    expect(records.pumps.map(({ id }) => id)).toEqual(['p1', 'p2']);
    expect(records.loops).toMatchObject([{ id: 'l1', version: 2, createdAt: T0 + 3, updatedAt: T0 + 9 }]);
    const written = await store().of(B, SITE_CONTENTS).write(contents);
    expect(written).toEqual({ outcome: 'written', site: { ...site, id: B } });
    expect(plain(await contentsOf(store(), B))).toEqual({ site: { ...site, id: B }, ...records });
    const deletion = { id: 't1', expectedVersion: 'any' as const };
    expect(await store().of(B, TARIFFS).delete(deletion)).toMatchObject({ outcome: 'in-use' });
    expect(await store().of(B, LOOPS).get('l1')).toEqual(records.loops[0]);
  });

  it('lets the version of a site only rise', async () => {
    const contents = await contentsOf(store(), A);
    expect(await store().of(B, SITE).get()).toMatchObject({ version: 1 });
    expect(await store().of(B, SITE_CONTENTS).write(contents)).toMatchObject({ site: { version: 2 } });
    expect(await store().of(B, SITE).get()).toMatchObject({ version: 2 });
    const later = { ...contents, site: { ...contents.site, version: 7 } };
    expect(await store().of(B, SITE_CONTENTS).write(later)).toMatchObject({
      site: { version: 7 },
    });
  });

  it('writes nothing into a site that has records, and says of which kinds', async () => {
    await fill(store());
    const contents = await contentsOf(store(), A);
    await insertPump(store(), 'mine', { siteId: B });
    const notEmpty = { outcome: 'not-empty', kinds: ['pumps'] };
    expect(await store().of(B, SITE_CONTENTS).write(contents)).toEqual(notEmpty);
    expect(plain(await contentsOf(store(), B))).toMatchObject({
      site: { version: 1 },
      loops: [],
      tariffs: [],
    });
  });

  it('writes all or nothing: a record that refers to none undoes those before it', async () => {
    await fill(store());
    const contents = await contentsOf(store(), A);
    const loose = { ...contents, records: { ...contents.records, pumps: [] } };
    const before = plain(await contentsOf(store(), B));
    await expect(store().of(B, SITE_CONTENTS).write(loose)).rejects.toThrow('loop l1');
    expect(plain(await contentsOf(store(), B))).toEqual(before);
    expect(await store().of(B, SITE_CONTENTS).write(contents)).toMatchObject({ outcome: 'written' });
  });
}
