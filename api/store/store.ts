/** What the service asks of its storage, the same on every database. */
import type { Kind } from './kind.ts';

/**
 * Every operation acts inside one site, and every write is durable when its promise resolves.
 * Expected outcomes are values; a full disk, a lost database or corrupt data throws a `StoreFault`.
 */
export interface Store {
  /** The records of a kind in a site. */
  of<Operations extends object>(siteId: string, kind: Kind<Operations>): Operations;
  /** Resolves when the database answers. */
  ping(): Promise<void>;
  close(): Promise<void>;
}

/** The store as one site sees it. */
export interface SiteStore {
  readonly siteId: string;
  of<Operations extends object>(kind: Kind<Operations>): Operations;
}

export const storeOfSite = (store: Store, siteId: string): SiteStore => ({
  siteId,
  of: (kind) => store.of(siteId, kind),
});
