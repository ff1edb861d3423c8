/** What a store does with the schedules of loops. */

import { expect, it } from 'vitest';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import { SCHEDULES } from '../../../../api/records/schedule/kind.ts';
import { defaultSite, SITE } from '../../../../api/records/site/kind.ts';
import { TARIFFS } from '../../../../api/records/tariff/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import type { Schedule } from '../../../../models/schedule/schedule.ts';
import { A, B, insertPump } from '../../store/contract/two-sites.ts';
import { exampleLoop, T0 } from '../../store/examples.ts';
import { exampleTariff } from '../tariff/contract.ts';

export const exampleSchedule = (tariff: string | null = null): Schedule => ({
  tariff,
  phases: [{ name: 'night', from: '22:00', factor: 0.6 }],
});

export function schedules(store: () => Store): void {
  it('makes one schedule a loop, replaces it by version, and loses it with the loop', async () => {
    const key = { id: 'l1' };
    const put = { ...key, document: exampleSchedule(), now: T0 };
    expect(
      await store()
        .of(A, SCHEDULES)
        .put({ ...put, expectedVersion: 'none' }),
    ).toEqual({ outcome: 'missing' });
    await store()
      .of(A, LOOPS)
      .insert({ ...key, document: exampleLoop(), now: T0 });
    expect(
      await store()
        .of(A, SCHEDULES)
        .put({ ...put, expectedVersion: 'any' }),
    ).toEqual({ outcome: 'missing' });
    const made = await store()
      .of(A, SCHEDULES)
      .put({ ...put, expectedVersion: 'none' });
    expect(made).toMatchObject({
      outcome: 'inserted',
      record: { id: 'l1', version: 1, document: put.document },
    });
    expect(
      await store()
        .of(A, SCHEDULES)
        .put({ ...put, expectedVersion: 'none' }),
    ).toEqual({ outcome: 'exists' });
    expect(
      await store()
        .of(A, SCHEDULES)
        .put({ ...put, expectedVersion: 4 }),
    ).toEqual({
      outcome: 'stale',
      version: 1,
    });
    expect(
      await store()
        .of(A, SCHEDULES)
        .put({ ...put, expectedVersion: 1 }),
    ).toMatchObject({
      outcome: 'replaced',
      record: { version: 2 },
    });
    expect(
      await store()
        .of(A, SCHEDULES)
        .delete({ ...key, expectedVersion: 1 }),
    ).toEqual({
      outcome: 'stale',
      version: 2,
    });
    await store()
      .of(A, LOOPS)
      .delete({ ...key, expectedVersion: 'any' });
    expect(await store().of(A, SCHEDULES).get('l1')).toBeUndefined();
    expect(
      await store()
        .of(A, SCHEDULES)
        .delete({ ...key, expectedVersion: 'any' }),
    ).toEqual({ outcome: 'missing' });
  });

  it('lets a schedule go by a tariff of its site alone, and keeps that', async () => {
    await store().of(B, TARIFFS).insert({ id: 'of-b', document: exampleTariff(), now: T0 });
    await store().of(A, TARIFFS).insert({ id: 't1', document: exampleTariff(), now: T0 });
    const key = { id: 'l1' };
    await store()
      .of(A, LOOPS)
      .insert({ ...key, document: exampleLoop({ name: 'Flume' }), now: T0 });
    const put = (id: string | null, expectedVersion: 'none' | 'any') =>
      store()
        .of(A, SCHEDULES)
        .put({ ...key, document: exampleSchedule(id), now: T0, expectedVersion });
    expect(await put('of-b', 'none')).toEqual({ outcome: 'unknown-tariff' });
    expect(await put('t1', 'none')).toMatchObject({ outcome: 'inserted' });
    expect(await put('of-b', 'any')).toEqual({ outcome: 'unknown-tariff' });
    expect(await store().of(A, TARIFFS).delete({ id: 't1', expectedVersion: 'any' })).toEqual({
      outcome: 'in-use',
      usedBy: [{ kind: 'schedule', id: 'l1', name: 'Flume' }],
    });
  });

  it('tells the versions that a setpoint rests on', async () => {
    const key = { id: 'l1' };
    expect(await store().of(A, SCHEDULES).setpointVersions('l1')).toBeUndefined();
    await insertPump(store(), 'p1');
    await store()
      .of(A, LOOPS)
      .insert({ ...key, document: exampleLoop({ pump: 'p1' }), now: T0 });
    const nothing = { schedule: null, scheduleCreatedAt: null, tariffId: null, tariff: null };
    expect(await store().of(A, SCHEDULES).setpointVersions('l1')).toEqual({
      site: 1,
      loop: 1,
      pumpId: 'p1',
      pump: 1,
      ...nothing,
    });
    for (const id of ['t1', 't2'])
      await store().of(A, TARIFFS).insert({ id, document: exampleTariff(), now: T0 });
    const document = { ...defaultSite('EUR'), tariff: 't2' };
    await store().of(A, SITE).replace({ document, now: T0, expectedVersion: 'any' });
    const put = { ...key, now: T0 + 5 };
    await store()
      .of(A, SCHEDULES)
      .put({ ...put, document: exampleSchedule(), expectedVersion: 'none' });
    expect(await store().of(A, SCHEDULES).setpointVersions('l1')).toMatchObject({
      site: 2,
      schedule: 1,
      scheduleCreatedAt: T0 + 5,
      tariffId: 't2',
      tariff: 1,
    });
    await store()
      .of(A, SCHEDULES)
      .put({ ...put, document: exampleSchedule('t1'), expectedVersion: 1 });
    expect(await store().of(A, SCHEDULES).setpointVersions('l1')).toMatchObject({
      schedule: 2,
      tariffId: 't1',
    });
  });

  it('counts the loops of a site, and finds the schedules of many of them', async () => {
    for (const [siteId, id] of [
      [A, 'l1'],
      [A, 'l2'],
      [A, 'l3'],
      [B, 'l1'],
    ] as const) {
      await store().of(siteId, LOOPS).insert({ id, document: exampleLoop(), now: T0 });
      if (id === 'l2') continue;
      const put = { id, document: exampleSchedule(), now: T0 };
      await store()
        .of(siteId, SCHEDULES)
        .put({ ...put, expectedVersion: 'none' });
    }
    expect([await store().of(A, LOOPS).count(), await store().of(B, LOOPS).count()]).toEqual([3, 1]);
    const found = await store().of(A, SCHEDULES).some(['l1', 'l2', 'nobody']);
    expect(found.map(({ id }) => id)).toEqual(['l1']);
    expect(await store().of(A, SCHEDULES).some([])).toEqual([]);
  });
}
