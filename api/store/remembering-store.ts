/** A store that remembers the records it read, for a process that alone writes to its database. */
import { LRUCache } from 'lru-cache';
import type { Store } from './store.ts';
import type { RecordKey } from './versions.ts';

const KEPT_RECORDS = 1_000;

/** More pumps than these are read at once, past the memory, which they would fill. */
const FEW = 50;

const textOf = ({ siteId, id }: RecordKey): string => `${siteId} ${id}`;

/** Records of one kind. What was read while a write was under way is not kept: it may be of before or of after. */
function memory<Value extends object>() {
  const kept = new LRUCache<string, Value>({ max: KEPT_RECORDS });
  let writes = 0;
  return {
    forget(): void {
      writes += 1;
      kept.clear();
    },
    async one(key: RecordKey, read: () => Promise<Value | undefined>): Promise<Value | undefined> {
      const known = kept.get(textOf(key));
      if (known !== undefined) return known;
      const before = writes;
      const found = await read();
      if (found !== undefined && before === writes) kept.set(textOf(key), found);
      return found;
    },
  };
}

/**
 * The same store, reading sites, loops and pumps by their ids from memory where it can. Every write of one of these forgets
 * all of them, before it begins and when it has ended.
 */
export function rememberingStore(store: Store): Store {
  const sites = memory<NonNullable<Awaited<ReturnType<Store['getSite']>>>>();
  const loops = memory<NonNullable<Awaited<ReturnType<Store['getLoop']>>>>();
  const pumps = memory<NonNullable<Awaited<ReturnType<Store['getPump']>>>>();
  const forget = () => {
    for (const one of [sites, loops, pumps]) one.forget();
  };
  const forgetting =
    <Asked, Outcome>(write: (asked: Asked) => Promise<Outcome>) =>
    async (asked: Asked): Promise<Outcome> => {
      forget();
      try {
        return await write(asked);
      } finally {
        forget();
      }
    };
  const getPump: Store['getPump'] = (key) => pumps.one(key, () => store.getPump(key));
  return {
    ...store,
    getSite: (siteId) => sites.one({ siteId, id: siteId }, () => store.getSite(siteId)),
    getLoop: (key) => loops.one(key, () => store.getLoop(key)),
    getPump,
    async getPumps({ siteId, ids }) {
      if (ids.length > FEW) return store.getPumps({ siteId, ids });
      const found = await Promise.all([...new Set(ids)].map((id) => getPump({ siteId, id })));
      return found.filter((pump) => pump !== undefined);
    },
    ensureSite: forgetting(store.ensureSite),
    replaceSite: forgetting(store.replaceSite),
    insertPump: forgetting(store.insertPump),
    insertPumps: forgetting(store.insertPumps),
    replacePump: forgetting(store.replacePump),
    deletePump: forgetting(store.deletePump),
    insertLoop: forgetting(store.insertLoop),
    replaceLoop: forgetting(store.replaceLoop),
    deleteLoop: forgetting(store.deleteLoop),
    applyCalibration: forgetting(store.applyCalibration),
    undoCalibration: forgetting(store.undoCalibration),
    writeContents: forgetting(store.writeContents),
  };
}
