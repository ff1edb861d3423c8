/** What a store does with several writers at once. */

import { expect, it } from 'vitest';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import { PUMPS } from '../../../../api/records/pump/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { exampleFit, exampleLoop, examplePump, T0 } from '../examples.ts';
import { A, insertPump } from './two-sites.ts';

export function races(store: () => Store): void {
  it('lets exactly one of many writers of the same version win', async () => {
    await insertPump(store(), 'p1');
    const writers = Array.from({ length: 20 }, (_, writer) => `writer ${writer}`);
    const outcomes = await Promise.all(
      writers.map((name) =>
        store()
          .of(A, PUMPS)
          .replace({
            id: 'p1',
            document: examplePump(name),
            fit: exampleFit,
            now: T0,
            expectedVersion: 1,
          }),
      ),
    );
    const winners = writers.filter((_, index) => outcomes[index]?.outcome === 'replaced');
    expect(winners).toHaveLength(1);
    expect(outcomes.filter(({ outcome }) => outcome === 'stale')).toHaveLength(writers.length - 1);
    expect(await store().of(A, PUMPS).get('p1')).toMatchObject({ version: 2, name: winners[0] });
  });

  it('loses no update of writers who read, change and retry', async () => {
    await insertPump(store(), 'p1', { name: '0' });
    const key = { id: 'p1' };
    const addOne = async (): Promise<void> => {
      for (let attempt = 0; attempt < 100; attempt += 1) {
        const seen = await store().of(A, PUMPS).get('p1');
        const document = examplePump(String(Number(seen?.name) + 1));
        const expectedVersion = seen?.version ?? 0;
        const written = { ...key, document, fit: exampleFit, now: T0, expectedVersion };
        if ((await store().of(A, PUMPS).replace(written)).outcome === 'replaced') return;
      }
      throw new Error('no attempt won');
    };
    await Promise.all(Array.from({ length: 10 }, addOne));
    expect(await store().of(A, PUMPS).get('p1')).toMatchObject({ name: '10', version: 11 });
  });

  it('never leaves a loop with a pump that is deleted while the loop is written', async () => {
    for (let round = 0; round < 10; round += 1) {
      await insertPump(store(), `p${round}`);
      const document = exampleLoop({ pump: `p${round}` });
      const [inserted, deleted] = await Promise.all([
        store()
          .of(A, LOOPS)
          .insert({ id: `l${round}`, document, now: T0 }),
        store()
          .of(A, PUMPS)
          .delete({ id: `p${round}`, expectedVersion: 'any' }),
      ]);
      const both = [inserted.outcome, deleted.outcome];
      expect([
        ['inserted', 'in-use'],
        ['unknown-pump', 'deleted'],
      ]).toContainEqual(both);
    }
  });

  it('answers a ping', async () => {
    await expect(store().ping()).resolves.toBeUndefined();
  });
}
