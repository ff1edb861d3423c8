/** Where a pump is in use. */
import type { Store } from '../../store/store.ts';
import type { PageStart } from '../../store/versions.ts';

const PAGE = 200;
/** Loops looked at for one answer. */
const LOOPS_MAX = 20_000;

export type Positions =
  | { readonly outcome: 'counted'; readonly devices: number }
  | { readonly outcome: 'too-many'; readonly limit: number };

/** The devices of a pump that the loops of a site state as installed. */
export async function positionsOf(
  store: Store,
  { siteId, pump }: { readonly siteId: string; readonly pump: string },
): Promise<Positions> {
  let devices = 0;
  let after: PageStart | null = null;
  for (let seen = 0; seen < LOOPS_MAX; seen += PAGE) {
    const page: Awaited<ReturnType<Store['listLoops']>> = await store.listLoops({
      siteId,
      limit: PAGE,
      after,
      installedPump: pump,
    });
    for (const { document } of page.records) devices += document.installed?.count ?? 0;
    const last = page.records.at(-1);
    if (!page.more || last === undefined) return { outcome: 'counted', devices };
    after = { createdAt: last.createdAt, id: last.id };
  }
  return { outcome: 'too-many', limit: LOOPS_MAX };
}
