/** Describes a kind of stored records: what can be done with those of one site. */
import type { Kysely } from 'kysely';
import type { Tables } from './tables.ts';

/** Whether the answer of a read is remembered until the next write, by what was asked for. */
export type ReadMemory = 'remembered' | 'read-again';

interface KindParts<Operations extends object> {
  /** Names the kind in the memory of records. */
  readonly name: string;
  /** The operations that only read. Each that is not among them counts as a write. */
  readonly reads: Readonly<Partial<Record<keyof Operations, ReadMemory>>>;
  /** Its operations on a database, site by site. */
  readonly open: (db: Kysely<Tables>) => (siteId: string) => Operations;
}

export type Kind<Operations extends object> = KindParts<Operations>;

/** What a kind prepares for a database is made once a database. */
export function defineKind<Operations extends object>(parts: KindParts<Operations>): Kind<Operations> {
  const opened = new WeakMap<Kysely<Tables>, (siteId: string) => Operations>();
  return {
    ...parts,
    open(db) {
      const known = opened.get(db) ?? parts.open(db);
      opened.set(db, known);
      return known;
    },
  };
}
