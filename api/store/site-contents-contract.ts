/** All that a site holds, read as of one instant and written as one whole. */
import type { LoopRecord, PumpRecord, ScheduleRecord, SiteRecord, TariffRecord } from './records.ts';

/** Every kind of record that a site holds, in an order in which none refers to a later one. */
export interface KindsOfRecords {
  readonly tariffs: TariffRecord;
  readonly pumps: PumpRecord;
  readonly loops: LoopRecord;
  readonly schedules: ScheduleRecord;
}

export type RecordKind = keyof KindsOfRecords;

/** Each record is made of its row when it is asked for, so that a reader of many can pause between them. */
export interface SiteContents {
  readonly site: SiteRecord;
  readonly records: { readonly [Kind in RecordKind]: readonly (() => KindsOfRecords[Kind])[] };
}

/** More records of a kind than are read at once. */
export interface TooManyRecords {
  readonly outcome: 'too-many';
  readonly kind: RecordKind;
  readonly limit: number;
  readonly actual: number;
}

export interface NewSiteContents {
  readonly siteId: string;
  /** Ids, versions and times are kept; only the site's own version goes on from where it is. */
  readonly contents: SiteContents;
}

export interface NotEmpty {
  readonly outcome: 'not-empty';
  /** The kinds of which the site has records. */
  readonly kinds: readonly RecordKind[];
}

export const RECORDS_OF_A_KIND_MAX = 10_000;

export interface SiteContentsStore {
  /** Each kind in the order createdAt, then id. */
  readContents(
    siteId: string,
  ): Promise<{ readonly outcome: 'read'; readonly contents: SiteContents } | TooManyRecords>;
  /** Into a site that has no records; all of it or nothing. A record that refers to one that is not there is a bug and throws. */
  writeContents(
    contents: NewSiteContents,
  ): Promise<{ readonly outcome: 'written'; readonly site: SiteRecord } | NotEmpty>;
}
