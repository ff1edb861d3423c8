/** Remembers what was read of stored records until something is written. */
import { LRUCache } from 'lru-cache';

const KEPT_RECORDS = 1_000;

export interface RecordMemory {
  /** The answer known under a key, else what `read` finds. The key must name all that is asked for. */
  read(key: string, read: () => unknown): Promise<unknown>;
  /** Forgets everything, before the write begins and when it has ended. */
  write(write: () => unknown): Promise<unknown>;
}

/** What was read while a write was under way is not kept: it may be of before or of after. */
export function recordMemory(): RecordMemory {
  const kept = new LRUCache<string, object>({ max: KEPT_RECORDS });
  let writes = 0;
  const forget = (): void => {
    writes += 1;
    kept.clear();
  };
  return {
    async read(key, read) {
      const known = kept.get(key);
      if (known !== undefined) return known;
      const before = writes;
      const found = await read();
      if (typeof found === 'object' && found !== null && before === writes) kept.set(key, found);
      return found;
    },
    async write(write) {
      forget();
      try {
        return await write();
      } finally {
        forget();
      }
    },
  };
}
