/** What a store does with the baselines of loops. */
import { expect, it } from 'vitest';
import { BASELINES } from '../../../../api/records/baseline/kind.ts';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import { PUMPS } from '../../../../api/records/pump/kind.ts';
import { READINGS } from '../../../../api/records/reading/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import type { Loop } from '../../../../models/loop/loop.ts';
import { A, B, insertPump } from '../../store/contract/two-sites.ts';
import { exampleFit, exampleLoop, examplePump, T0 } from '../../store/examples.ts';

export function baselines(store: () => Store): void {
  const loop = 'l1';
  const none = { requestedFrom: null, changedAt: null };
  const [baselinesNow, loopsNow] = [() => store().of(A, BASELINES), () => store().of(A, LOOPS)];
  const startNow = () => baselinesNow().get(loop);
  const document = (facts: Partial<Loop> = {}): Loop => ({
    ...exampleLoop({ name: 'Kelp flume', pump: 'p1' }),
    ...facts,
  });
  const insert = () => loopsNow().insert({ id: loop, document: document(), now: T0 });
  const stocked = async () => {
    await insertPump(store(), 'p1');
    await insert();
  };
  const read = async () => {
    const readings = [{ time: T0, setting: 80, flow: 1e-3 }];
    await store().of(A, READINGS).insert({ loop, readings, outlets: [] });
  };
  const replace = (facts: Partial<Loop>) =>
    loopsNow().replace({ id: loop, document: document(facts), now: T0 + 5, expectedVersion: 'any' });

  it('keeps the last request for a baseline, until it is withdrawn', async () => {
    await stocked();
    expect(await startNow()).toEqual(none);
    for (const from of [T0, T0 + 1]) {
      expect(await baselinesNow().request({ loop, from })).toEqual({ outcome: 'written' });
    }
    expect(await startNow()).toEqual({ requestedFrom: T0 + 1, changedAt: null });
    expect(await store().of(B, BASELINES).get(loop)).toEqual(none);
    await baselinesNow().request({ loop, from: null });
    expect(await startNow()).toEqual(none);
    expect(await baselinesNow().request({ loop: 'away', from: T0 })).toEqual({
      outcome: 'missing',
    });
  });

  it('marks when pipework or pump change, once readings are there', async () => {
    await stocked();
    await replace({ frictionMultiplier: 1.1 });
    expect(await startNow()).toEqual(none);
    await read();
    await replace({ frictionMultiplier: 1.1, name: 'Kelp flume, renamed' });
    expect(await startNow()).toEqual(none);
    await replace({ frictionMultiplier: 1.2 });
    expect(await startNow()).toEqual({ requestedFrom: null, changedAt: T0 + 5 });
  });

  it('marks when the points of the pump change, and not its price', async () => {
    await stocked();
    await read();
    const pump = { id: 'p1', document: examplePump('Canister'), expectedVersion: 'any' } as const;
    await store()
      .of(A, PUMPS)
      .replace({ ...pump, fit: exampleFit, now: T0 + 6 });
    expect(await startNow()).toEqual(none);
    const { standbyPower } = exampleFit.powerLaw;
    const fit = { ...exampleFit, powerLaw: { ...exampleFit.powerLaw, standbyPower: standbyPower + 1 } };
    await store()
      .of(A, PUMPS)
      .replace({ ...pump, fit, now: T0 + 7 });
    expect(await startNow()).toEqual({ requestedFrom: null, changedAt: T0 + 7 });
  });

  it('lets a baseline go with its loop', async () => {
    await stocked();
    await baselinesNow().request({ loop, from: T0 });
    await loopsNow().delete({ id: loop, expectedVersion: 'any' });
    await insert();
    expect(await startNow()).toEqual(none);
  });
}
