/** What a store does with the calibrations of loops. */

import { expect, it } from 'vitest';
import { CALIBRATIONS } from '../../../../api/features/calibration/kind.ts';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import type { AppliedCalibration } from '../../../../models/calibration/applied.ts';
import type { Loop } from '../../../../models/loop/loop.ts';
import { A, B, insertPump } from '../../store/contract/two-sites.ts';
import { exampleFit, exampleLoop, T0 } from '../../store/examples.ts';

const calibration = (friction: number): AppliedCalibration => ({
  parameters: [
    {
      name: 'frictionOverHead',
      value: friction,
      standardError: 0.02,
      interval: { low: friction - 0.05, high: friction + 0.05 },
    },
  ],
  factors: { friction, head: 1, power: 1 },
  badEnd: { friction: friction + 0.05, head: 1 },
  pump: { id: 'p1', fit: exampleFit },
  ...{ from: T0 - 1000, to: T0, readings: 12, modelVersion: '1' },
});

export function calibrations(store: () => Store): void {
  const key = { id: 'l1' };
  const document = (facts: Partial<Loop> = {}): Loop => ({
    ...exampleLoop({ name: 'Kelp flume', pump: 'p1' }),
    ...facts,
  });
  const stocked = async () => {
    await insertPump(store(), 'p1');
    await store()
      .of(A, LOOPS)
      .insert({ ...key, document: document(), now: T0 });
  };
  const apply = (friction: number, expectedVersion: number | 'any') =>
    store()
      .of(A, CALIBRATIONS)
      .apply({ ...key, now: T0 + 1, expectedVersion, calibration: calibration(friction) });
  const undo = (expectedVersion: number | 'any') =>
    store()
      .of(A, CALIBRATIONS)
      .undo({ ...key, now: T0 + 2, expectedVersion });
  const frictionNow = async () =>
    (await store().of(A, LOOPS).get('l1'))?.calibration?.factors.friction ?? null;

  it('has loops without a calibration', async () => {
    await stocked();
    expect((await store().of(A, LOOPS).get('l1'))?.calibration).toBeNull();
    expect(await store().of(A, CALIBRATIONS).list('l1')).toEqual([]);
    expect(await undo('any')).toEqual({ outcome: 'no-calibration' });
    expect((await store().of(A, LOOPS).get('l1'))?.version).toBe(1);
  });

  it('applies a calibration, moves the loop on and leaves its document as entered', async () => {
    await stocked();
    const applied = await apply(1.3, 1);
    expect(applied).toMatchObject({ outcome: 'applied', loop: { version: 2, updatedAt: T0 + 1 } });
    const loop = await store().of(A, LOOPS).get('l1');
    expect(loop?.document).toEqual(document());
    expect(loop?.calibration).toEqual(calibration(1.3));
    expect((await store().of(A, LOOPS).list({ limit: 9, after: null })).records[0]?.calibration).toEqual(
      calibration(1.3),
    );
  });

  it('refuses a version that has passed, and a loop that is not there', async () => {
    await stocked();
    await apply(1.3, 1);
    const stale = { outcome: 'stale', version: 2 };
    expect(await apply(1.4, 1)).toEqual(stale);
    expect(await undo(1)).toEqual(stale);
    expect(await frictionNow()).toBe(1.3);
    const elsewhere = { id: 'l1', now: T0, expectedVersion: 'any' } as const;
    const missing = { outcome: 'missing' };
    expect(
      await store()
        .of(B, CALIBRATIONS)
        .apply({ ...elsewhere, calibration: calibration(1.3) }),
    ).toEqual(missing);
    expect(await store().of(B, CALIBRATIONS).undo(elsewhere)).toEqual(missing);
  });

  it('goes back one by one, to the loop as entered at last, and keeps all of it', async () => {
    await stocked();
    await apply(1.3, 1);
    await apply(1.4, 2);
    expect(await undo(3)).toMatchObject({ outcome: 'undone', loop: { version: 4 } });
    expect(await frictionNow()).toBe(1.3);
    await apply(1.5, 4);
    await undo(5);
    expect(await frictionNow()).toBe(1.3);
    await undo(6);
    expect(await frictionNow()).toBeNull();
    expect(await undo(7)).toEqual({ outcome: 'no-calibration' });
    const kept = await store().of(A, CALIBRATIONS).list('l1');
    expect(kept.map(({ place, calibration: { factors } }) => [place, factors.friction])).toEqual([
      [3, 1.5],
      [2, 1.4],
      [1, 1.3],
    ]);
    expect(kept.map(({ undoneAt }) => undoneAt)).toEqual([T0 + 2, T0 + 2, T0 + 2]);
  });

  it('keeps a calibration while what decides the flows stays, and drops it when that changes', async () => {
    await stocked();
    await apply(1.3, 1);
    const replace = (facts: Partial<Loop>, expectedVersion: number) =>
      store()
        .of(A, LOOPS)
        .replace({ ...key, document: document(facts), now: T0 + 3, expectedVersion });
    await replace({ name: 'Kelp flume, long' }, 2);
    expect(await frictionNow()).toBe(1.3);
    await replace({ frictionMultiplier: 1.5 }, 3);
    expect(await frictionNow()).toBeNull();
    expect(await undo('any')).toEqual({ outcome: 'no-calibration' });
    // One of the loop as it was before is not what an undo goes back to.
    await apply(1.1, 4);
    expect(await undo(5)).toMatchObject({ outcome: 'undone' });
    expect(await frictionNow()).toBeNull();
    expect(await store().of(A, CALIBRATIONS).list('l1')).toHaveLength(2);
  });

  it('deletes calibrations with their loop', async () => {
    await stocked();
    await apply(1.3, 1);
    await store()
      .of(A, LOOPS)
      .delete({ ...key, expectedVersion: 2 });
    await store()
      .of(A, LOOPS)
      .insert({ ...key, document: document(), now: T0 });
    expect(await frictionNow()).toBeNull();
    expect(await store().of(A, CALIBRATIONS).list('l1')).toEqual([]);
  });
}
