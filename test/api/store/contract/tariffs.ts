/** What a store does with tariffs and with what goes by them. */
import { expect, it } from 'vitest';
import { defaultSite } from '../../../../api/records/site/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import type { Schedule } from '../../../../models/schedule/schedule.ts';
import type { Tariff } from '../../../../models/tariff/tariff.ts';
import { exampleLoop, T0 } from '../examples.ts';
import { A, B, insertPump } from './two-sites.ts';

export const exampleTariff = (name = 'Winter peak'): Tariff => ({
  name,
  holidays: ['2026-12-25'],
  periods: [{ name: 'peak', price: 0.1 + 0.2, from: '17:00', to: '21:00' }],
  otherwise: { name: 'base', price: -1 / 3 },
  standingChargePerDay: 0.4,
});

export const exampleSchedule = (tariff: string | null = null): Schedule => ({
  tariff,
  phases: [{ name: 'night', from: '22:00', factor: 0.6 }],
});

export function tariffs(store: () => Store): void {
  const tariff = (id: string, siteId = A) => ({
    siteId,
    id,
    document: exampleTariff(`tariff ${id}`),
    now: T0,
  });

  it('gives a tariff back as written, replaces it by version, lists and deletes it', async () => {
    await store().insertTariff(tariff('t1'));
    await store().insertTariff(tariff('t2'));
    const key = { siteId: A, id: 't1' };
    expect((await store().getTariff(key))?.document).toEqual(exampleTariff('tariff t1'));
    expect(await store().getTariff({ siteId: B, id: 't1' })).toBeUndefined();
    const replacement = { ...tariff('t1'), document: exampleTariff('other'), now: T0 + 1 };
    expect(await store().replaceTariff({ ...replacement, expectedVersion: 1 })).toMatchObject({
      outcome: 'replaced',
      record: { version: 2, name: 'other' },
    });
    const stale = { outcome: 'stale', version: 2 };
    expect(await store().replaceTariff({ ...replacement, expectedVersion: 1 })).toEqual(stale);
    const page = await store().listTariffs({ siteId: A, limit: 1, after: null });
    expect([page.records.map(({ id }) => id), page.more]).toEqual([['t1'], true]);
    expect(await store().deleteTariff({ ...key, expectedVersion: 1 })).toEqual(stale);
    expect(await store().deleteTariff({ ...key, expectedVersion: 2 })).toEqual({ outcome: 'deleted' });
    expect(await store().deleteTariff({ ...key, expectedVersion: 'any' })).toEqual({ outcome: 'missing' });
  });

  it('lets a site go by a tariff of its own alone, and keeps that', async () => {
    await store().insertTariff(tariff('of-b', B));
    await store().insertTariff(tariff('t1'));
    const site = { siteId: A, document: { ...defaultSite('EUR'), tariff: 'of-b' }, now: T0 };
    expect(await store().replaceSite({ ...site, expectedVersion: 1 })).toEqual({ outcome: 'unknown-tariff' });
    expect(await store().getSite(A)).toMatchObject({ version: 1, document: { tariff: null } });
    const known = { ...site, document: { ...site.document, tariff: 't1' } };
    expect(await store().replaceSite({ ...known, expectedVersion: 9 })).toEqual({
      outcome: 'stale',
      version: 1,
    });
    expect(await store().replaceSite({ ...known, expectedVersion: 1 })).toMatchObject({
      outcome: 'replaced',
    });
    expect(await store().replaceSite({ ...known, expectedVersion: 2 })).toMatchObject({
      outcome: 'replaced',
    });
    const deletion = { siteId: A, id: 't1', expectedVersion: 'any' as const };
    expect(await store().deleteTariff(deletion)).toEqual({
      outcome: 'in-use',
      usedBy: [{ kind: 'site', id: A, name: 'Site' }],
    });
    await store().replaceSite({ ...site, document: defaultSite('EUR'), expectedVersion: 3 });
    expect(await store().deleteTariff(deletion)).toEqual({ outcome: 'deleted' });
  });

  it('makes one schedule a loop, replaces it by version, and loses it with the loop', async () => {
    const key = { siteId: A, id: 'l1' };
    const put = { ...key, document: exampleSchedule(), now: T0 };
    expect(await store().putSchedule({ ...put, expectedVersion: 'none' })).toEqual({ outcome: 'missing' });
    await store().insertLoop({ ...key, document: exampleLoop(), now: T0 });
    expect(await store().putSchedule({ ...put, expectedVersion: 'any' })).toEqual({ outcome: 'missing' });
    const made = await store().putSchedule({ ...put, expectedVersion: 'none' });
    expect(made).toMatchObject({
      outcome: 'inserted',
      record: { id: 'l1', version: 1, document: put.document },
    });
    expect(await store().putSchedule({ ...put, expectedVersion: 'none' })).toEqual({ outcome: 'exists' });
    expect(await store().putSchedule({ ...put, expectedVersion: 4 })).toEqual({
      outcome: 'stale',
      version: 1,
    });
    expect(await store().putSchedule({ ...put, expectedVersion: 1 })).toMatchObject({
      outcome: 'replaced',
      record: { version: 2 },
    });
    expect(await store().deleteSchedule({ ...key, expectedVersion: 1 })).toEqual({
      outcome: 'stale',
      version: 2,
    });
    await store().deleteLoop({ ...key, expectedVersion: 'any' });
    expect(await store().getSchedule(key)).toBeUndefined();
    expect(await store().deleteSchedule({ ...key, expectedVersion: 'any' })).toEqual({ outcome: 'missing' });
  });

  it('lets a schedule go by a tariff of its site alone, and keeps that', async () => {
    await store().insertTariff(tariff('of-b', B));
    await store().insertTariff(tariff('t1'));
    const key = { siteId: A, id: 'l1' };
    await store().insertLoop({ ...key, document: exampleLoop({ name: 'Flume' }), now: T0 });
    const put = (id: string | null, expectedVersion: 'none' | 'any') =>
      store().putSchedule({ ...key, document: exampleSchedule(id), now: T0, expectedVersion });
    expect(await put('of-b', 'none')).toEqual({ outcome: 'unknown-tariff' });
    expect(await put('t1', 'none')).toMatchObject({ outcome: 'inserted' });
    expect(await put('of-b', 'any')).toEqual({ outcome: 'unknown-tariff' });
    expect(await store().deleteTariff({ siteId: A, id: 't1', expectedVersion: 'any' })).toEqual({
      outcome: 'in-use',
      usedBy: [{ kind: 'schedule', id: 'l1', name: 'Flume' }],
    });
  });

  it('tells the versions that a setpoint rests on', async () => {
    const key = { siteId: A, id: 'l1' };
    expect(await store().setpointVersions(key)).toBeUndefined();
    await insertPump(store(), 'p1');
    await store().insertLoop({ ...key, document: exampleLoop({ pump: 'p1' }), now: T0 });
    const nothing = { schedule: null, scheduleCreatedAt: null, tariffId: null, tariff: null };
    expect(await store().setpointVersions(key)).toEqual({
      site: 1,
      loop: 1,
      pumpId: 'p1',
      pump: 1,
      ...nothing,
    });
    for (const id of ['t1', 't2']) await store().insertTariff(tariff(id));
    const document = { ...defaultSite('EUR'), tariff: 't2' };
    await store().replaceSite({ siteId: A, document, now: T0, expectedVersion: 'any' });
    const put = { ...key, now: T0 + 5 };
    await store().putSchedule({ ...put, document: exampleSchedule(), expectedVersion: 'none' });
    expect(await store().setpointVersions(key)).toMatchObject({
      site: 2,
      schedule: 1,
      scheduleCreatedAt: T0 + 5,
      tariffId: 't2',
      tariff: 1,
    });
    await store().putSchedule({ ...put, document: exampleSchedule('t1'), expectedVersion: 1 });
    expect(await store().setpointVersions(key)).toMatchObject({ schedule: 2, tariffId: 't1' });
  });
}
