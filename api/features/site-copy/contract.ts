/** All that a site holds, read as of one instant and written as one whole. */
import type { SiteRecord } from '../../records/site/kind.ts';
import type { KindsOfRecords, RecordKind } from './kinds.ts';

/** Each record is made of its row when it is asked for, so that a reader of many can pause between them. */
export interface SiteContents {
  readonly site: SiteRecord;
  readonly records: { readonly [Kind in RecordKind]: readonly (() => KindsOfRecords[Kind])[] };
}

/** More records of a kind, or more text in all, than are read at once. */
export interface TooManyRecords {
  readonly outcome: 'too-many';
  readonly kind: RecordKind | 'characters';
  readonly limit: number;
  readonly actual: number;
}

export interface NotEmpty {
  readonly outcome: 'not-empty';
  /** The kinds of which the site has records. */
  readonly kinds: readonly RecordKind[];
}

/** Of the documents of all records. */
export const SITE_CHARACTERS_MAX = 64 * 1024 * 1024;

export interface SiteContentsOperations {
  /** Each kind in the order createdAt, then id. */
  read(choice: {
    /** Whether readings are among them. */
    readonly readings: boolean;
  }): Promise<{ readonly outcome: 'read'; readonly contents: SiteContents } | TooManyRecords>;
  /**
   * Into a site that has no records; all of it or nothing. Ids, versions and times are kept; only the site's own version
   * goes on from where it is. A record that refers to one that is not there is a bug and throws.
   */
  write(
    contents: SiteContents,
  ): Promise<{ readonly outcome: 'written'; readonly site: SiteRecord } | NotEmpty>;
}
