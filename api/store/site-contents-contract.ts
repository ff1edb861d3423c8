/** All that a site holds, read as of one instant and written as one whole. */
import type { AppliedCalibration } from '../../models/calibration/applied.ts';
import type { Reading } from '../../models/condition/reading.ts';
import type { ComparisonRecord } from './comparison-contract.ts';
import type { Completion } from './completion-contract.ts';
import type { MaintenanceTaskRecord } from './maintenance-task-contract.ts';
import type { LoopRecord, PumpRecord, ScheduleRecord, SiteRecord, TariffRecord } from './records.ts';
import type { StoredRecord } from './stored.ts';
import type { UpgradePlanRecord } from './upgrade-plan-contract.ts';

/** With the check that it is of. */
export type CopiedCompletion = Completion & { readonly task: string };

/** One that was applied to a loop; `of` tells what of the loop it was about, `inUse` whether the loop goes by it. */
export interface CopiedCalibration {
  readonly loop: string;
  readonly place: number;
  readonly appliedAt: number;
  readonly undoneAt: number | null;
  readonly of: string;
  readonly inUse: boolean;
  readonly calibration: AppliedCalibration;
}

/** Some of a loop, in the order of time. */
export interface CopiedReadings {
  readonly loop: string;
  readonly readings: readonly Reading[];
}

/** Every kind of record that a site holds, in an order in which none refers to a later one. */
export interface KindsOfRecords {
  readonly tariffs: TariffRecord;
  readonly pumps: PumpRecord;
  readonly loops: LoopRecord;
  readonly schedules: ScheduleRecord;
  readonly comparisons: ComparisonRecord;
  readonly upgradePlans: UpgradePlanRecord;
  readonly maintenanceTasks: Pick<MaintenanceTaskRecord, keyof StoredRecord<unknown>>;
  readonly completions: StoredRecord<CopiedCompletion>;
  readonly calibrations: StoredRecord<CopiedCalibration>;
  readonly readings: StoredRecord<CopiedReadings>;
}

export type RecordKind = keyof KindsOfRecords;

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
/** Checks are done day by day, readings taken every few minutes. */
export const COMPLETIONS_MAX = 200_000;
export const READINGS_OF_A_SITE_MAX = 400_000;
/** Readings that stand together in a copy. */
export const READINGS_TOGETHER = 2_000;
/** Of the documents of all records. */
export const SITE_CHARACTERS_MAX = 64 * 1024 * 1024;

export interface SiteContentsStore {
  /** Each kind in the order createdAt, then id. */
  readContents(choice: {
    readonly siteId: string;
    /** Whether readings are among them. */
    readonly readings: boolean;
  }): Promise<{ readonly outcome: 'read'; readonly contents: SiteContents } | TooManyRecords>;
  /** Into a site that has no records; all of it or nothing. A record that refers to one that is not there is a bug and throws. */
  writeContents(
    contents: NewSiteContents,
  ): Promise<{ readonly outcome: 'written'; readonly site: SiteRecord } | NotEmpty>;
}
