/** What records of every kind have in common: keys, versions, pages, and how a write can end. */

/** `createdAt` and `updatedAt` in ms since 1970-01-01T00:00Z; `version` counts from 1. */
export interface StoredRecord<Document> {
  readonly id: string;
  /** Given by its user, once a site and kind. */
  readonly key?: string;
  readonly version: number;
  readonly createdAt: number;
  readonly updatedAt: number;
  readonly name: string;
  readonly document: Document;
}

export interface InSite {
  readonly siteId: string;
}

/** Names one record of one site. */
export interface RecordKey extends InSite {
  readonly id: string;
}

export interface NewRecord<Document> {
  readonly id: string;
  readonly document: Document;
  readonly now: number;
  /** Null for none; undefined: none in a new record, the one that it has in a replacement. */
  readonly key?: string | null | undefined;
}

export interface Replacement<Document> extends NewRecord<Document> {
  readonly expectedVersion: ExpectedVersion;
}

/** The version that the caller last saw; `'any'` writes over whatever is there. */
export type ExpectedVersion = number | 'any';

/** Where a page begins: just after this record in the order createdAt, then id. */
export interface PageStart {
  readonly createdAt: number;
  readonly id: string;
}

export interface PageRequest {
  readonly limit: number;
  readonly after: PageStart | null;
  /** Only records of exactly this name. */
  readonly name?: string | undefined;
}

/** At most `limit` records; `more` tells whether others follow the last of them. */
export interface Page<Item> {
  readonly records: readonly Item[];
  readonly more: boolean;
}

export interface Deletion {
  readonly id: string;
  readonly expectedVersion: ExpectedVersion;
}

export type Stale = { readonly outcome: 'stale'; readonly version: number };

export type Missing = { readonly outcome: 'missing' };

export type UnknownTariff = { readonly outcome: 'unknown-tariff' };

export type UnknownLoop = { readonly outcome: 'unknown-loop'; readonly loopId: string };

export type UnknownPump = { readonly outcome: 'unknown-pump'; readonly pumpId: string };

export type Inserted<Item> = { readonly outcome: 'inserted'; readonly record: Item };

export type Replaced<Item> = { readonly outcome: 'replaced'; readonly record: Item };

export type Deleted = { readonly outcome: 'deleted' };

/** What an answer says of a record that it names. */
export interface RecordReference<Id extends string | null = string> {
  readonly id: Id;
  readonly key?: string;
  readonly name: string;
}

/** A record that stands in the way of a write. */
export interface RecordUse extends RecordReference {
  readonly kind: 'pump' | 'loop' | 'tariff' | 'site' | 'schedule' | 'maintenance-task';
}

/** `usedBy` lists at most `USED_BY_LIMIT` of those that stand in the way. */
export type InUse = { readonly outcome: 'in-use'; readonly usedBy: readonly RecordUse[] };

/** Another record of the site and kind has the key. */
export type KeyTaken = { readonly outcome: 'key-taken'; readonly usedBy: readonly RecordUse[] };

export const USED_BY_LIMIT = 50;
