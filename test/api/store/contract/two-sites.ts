/** The two sites that every contract test begins with. */

import type { PumpRecord } from '../../../../api/records/pump/kind.ts';
import { PUMPS } from '../../../../api/records/pump/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { exampleFit, examplePump, T0 } from '../examples.ts';

export const A = 'site-a';
export const B = 'site-b';

export const insertPump = async (
  store: Store,
  id: string,
  { siteId = A, name = 'Canister 120', now = T0 } = {},
): Promise<PumpRecord> => {
  const inserted = await store.of(siteId, PUMPS).insert({
    id,
    document: examplePump(name),
    fit: exampleFit,
    now,
  });
  if (inserted.outcome !== 'inserted') throw new Error(`pump ${id}: ${inserted.outcome}`);
  return inserted.record;
};
