/** What a store does with the baselines of loops. */
import { expect, it } from 'vitest';
import type { Store } from '../../../../api/store/store.ts';
import type { Loop } from '../../../../models/loop/loop.ts';
import { exampleFit, exampleLoop, examplePump, T0 } from '../examples.ts';
import { A, B, insertPump } from './two-sites.ts';

export function baselines(store: () => Store): void {
  const key = { siteId: A, id: 'l1' };
  const none = { requestedFrom: null, changedAt: null };
  const document = (facts: Partial<Loop> = {}): Loop => ({
    ...exampleLoop({ name: 'Kelp flume', pump: 'p1' }),
    ...facts,
  });
  const stocked = async () => {
    await insertPump(store(), 'p1');
    await store().insertLoop({ ...key, document: document(), now: T0 });
  };
  const read = async () => {
    const readings = [{ time: T0, setting: 80, flow: 1e-3 }];
    await store().insertReadings({ siteId: A, loop: 'l1', readings, outlets: [] });
  };
  const replace = (facts: Partial<Loop>) =>
    store().replaceLoop({ ...key, document: document(facts), now: T0 + 5, expectedVersion: 'any' });

  it('keeps the last request for a baseline, until it is withdrawn', async () => {
    await stocked();
    expect(await store().getBaselineStart(key)).toEqual(none);
    for (const from of [T0, T0 + 1]) {
      expect(await store().requestBaseline({ ...key, from })).toEqual({ outcome: 'written' });
    }
    expect(await store().getBaselineStart(key)).toEqual({ requestedFrom: T0 + 1, changedAt: null });
    expect(await store().getBaselineStart({ siteId: B, id: 'l1' })).toEqual(none);
    await store().requestBaseline({ ...key, from: null });
    expect(await store().getBaselineStart(key)).toEqual(none);
    expect(await store().requestBaseline({ siteId: A, id: 'away', from: T0 })).toEqual({
      outcome: 'missing',
    });
  });

  it('marks when pipework or pump change, once readings are there', async () => {
    await stocked();
    await replace({ frictionMultiplier: 1.1 });
    expect(await store().getBaselineStart(key)).toEqual(none);
    await read();
    await replace({ frictionMultiplier: 1.1, name: 'Kelp flume, renamed' });
    expect(await store().getBaselineStart(key)).toEqual(none);
    await replace({ frictionMultiplier: 1.2 });
    expect(await store().getBaselineStart(key)).toEqual({ requestedFrom: null, changedAt: T0 + 5 });
  });

  it('marks when the points of the pump change, and not its price', async () => {
    await stocked();
    await read();
    const pump = { siteId: A, id: 'p1', document: examplePump('Canister'), expectedVersion: 'any' } as const;
    await store().replacePump({ ...pump, fit: exampleFit, now: T0 + 6 });
    expect(await store().getBaselineStart(key)).toEqual(none);
    const { standbyPower } = exampleFit.powerLaw;
    const fit = { ...exampleFit, powerLaw: { ...exampleFit.powerLaw, standbyPower: standbyPower + 1 } };
    await store().replacePump({ ...pump, fit, now: T0 + 7 });
    expect(await store().getBaselineStart(key)).toEqual({ requestedFrom: null, changedAt: T0 + 7 });
  });

  it('lets a baseline go with its loop', async () => {
    await stocked();
    await store().requestBaseline({ ...key, from: T0 });
    await store().deleteLoop({ ...key, expectedVersion: 'any' });
    await store().insertLoop({ ...key, document: document(), now: T0 });
    expect(await store().getBaselineStart(key)).toEqual(none);
  });
}
