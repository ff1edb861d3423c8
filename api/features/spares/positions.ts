/** Where a pump is in use. */
import { LOOPS, type LoopRecord } from '../../records/loop/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { Page, PageStart } from '../../store/versions.ts';

const PAGE = 200;
/** Loops looked at for one answer. */
const LOOPS_MAX = 20_000;

export type Positions =
  | { readonly outcome: 'counted'; readonly devices: number }
  | { readonly outcome: 'too-many'; readonly limit: number };

/** The devices of a pump that the loops of a site state as installed. */
export async function positionsOf(store: SiteStore, pump: string): Promise<Positions> {
  let devices = 0;
  let after: PageStart | null = null;
  for (let seen = 0; seen < LOOPS_MAX; seen += PAGE) {
    const page: Page<LoopRecord> = await store.of(LOOPS).list({
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
