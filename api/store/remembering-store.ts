/** A store that remembers the records it read, for a process that alone writes to its database. */
import { LRUCache } from 'lru-cache';
import type { Kind } from './kind.ts';
import { type RecordMemory, recordMemory } from './record-memory.ts';
import type { Store } from './store.ts';
import type { RecordKey } from './versions.ts';

const KEPT_RECORDS = 1_000;

const textOf = ({ siteId, id }: RecordKey): string => `${siteId} ${id}`;

/** Records of one kind. What was read while a write was under way is not kept: it may be of before or of after. */
function memoryOf<Value extends object>() {
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

/** The operations of a kind, each by the memory: those that its kind does not name as reads are writes. */
function remembering<Operations extends object>(
  operations: Operations,
  { kind, siteId, memory }: { kind: Kind<Operations>; siteId: string; memory: RecordMemory },
): Operations {
  return new Proxy(operations, {
    get(target, name) {
      const operation: unknown = Reflect.get(target, name);
      if (typeof operation !== 'function') return operation;
      const use: unknown = Reflect.get(kind.reads, name);
      return (...asked: readonly unknown[]): unknown => {
        const run = (): unknown => Reflect.apply(operation, target, asked);
        if (use === 'read-again') return run();
        if (use !== 'remembered') return memory.write(run);
        return memory.read(JSON.stringify([kind.name, siteId, String(name), ...asked]), run);
      };
    },
  });
}

/**
 * The same store, answering the reads that a kind names as remembered from memory where it can. Every write of any kind
 * forgets all of them.
 */
export function rememberingStore(store: Store): Store {
  const memory = recordMemory();
  const loops = memoryOf<NonNullable<Awaited<ReturnType<Store['getLoop']>>>>();
  const forget = () => {
    for (const one of [loops]) one.forget();
  };
  const forgetting =
    <Asked, Outcome>(write: (asked: Asked) => Promise<Outcome>) =>
    async (asked: Asked): Promise<Outcome> => {
      forget();
      await memory.write(() => undefined);
      try {
        return await write(asked);
      } finally {
        forget();
        await memory.write(() => undefined);
      }
    };
  return {
    ...store,
    of: (siteId, kind) => remembering(store.of(siteId, kind), { kind, siteId, memory }),
    getLoop: (key) => loops.one(key, () => store.getLoop(key)),
    insertLoop: forgetting(store.insertLoop),
    replaceLoop: forgetting(store.replaceLoop),
    deleteLoop: forgetting(store.deleteLoop),
    applyCalibration: forgetting(store.applyCalibration),
    undoCalibration: forgetting(store.undoCalibration),
    writeContents: forgetting(store.writeContents),
  };
}
