/** A store that remembers the records it read, for a process that alone writes to its database. */
import type { Kind } from './kind.ts';
import { type RecordMemory, recordMemory } from './record-memory.ts';
import type { Store } from './store.ts';

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
  return {
    of: (siteId, kind) => remembering(store.of(siteId, kind), { kind, siteId, memory }),
    ping: () => store.ping(),
    close: () => store.close(),
  };
}
