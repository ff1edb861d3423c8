/** What the service asks of its storage, the same on every database. */
import type { Loop } from '../../models/loop.ts';
import type { Pump } from '../../models/pump.ts';
import type { PumpFit } from '../../models/pump-model.ts';
import type { Schedule } from '../../models/schedule/schedule.ts';
import type { Tariff } from '../../models/tariff/tariff.ts';
import type { CalibrationStore } from './calibration-contract.ts';
import type { CompletionStore } from './completion-contract.ts';
import type { MaintenanceTaskStore } from './maintenance-task-contract.ts';
import type { ReadingStore } from './reading-contract.ts';
import type { LoopRecord, PumpRecord, ScheduleRecord, Site, SiteRecord, TariffRecord } from './records.ts';
import type { SiteContentsStore } from './site-contents-contract.ts';
import type {
  Deleted,
  Deletion,
  ExpectedVersion,
  Inserted,
  InUse,
  Missing,
  Page,
  PageRequest,
  RecordKey,
  Replaced,
  Stale,
  UnknownPump,
  UnknownTariff,
} from './stored.ts';
import type { SummaryReads } from './summary-reads-contract.ts';

export type { LoopRecord, PumpRecord, ScheduleRecord, Site, SiteRecord, TariffRecord } from './records.ts';

import type { ComparisonStore } from './comparison-contract.ts';
import type { UpgradePlanStore } from './upgrade-plan-contract.ts';

export interface NewPump extends RecordKey {
  readonly document: Pump;
  readonly fit: PumpFit;
  readonly now: number;
}

/** The installed pump is taken from `document.installed`. */
export interface NewLoop extends RecordKey {
  readonly document: Loop;
  readonly now: number;
}

export interface LoopPageRequest extends PageRequest {
  /** Only loops that have this pump installed. */
  readonly installedPump?: string | undefined;
}

export interface PumpReplacement extends NewPump {
  readonly expectedVersion: ExpectedVersion;
}

export interface LoopReplacement extends NewLoop {
  readonly expectedVersion: ExpectedVersion;
}

export interface NewTariff extends RecordKey {
  readonly document: Tariff;
  readonly now: number;
}

export interface TariffReplacement extends NewTariff {
  readonly expectedVersion: ExpectedVersion;
}

/** `none`: there is none yet. */
export interface SchedulePut extends RecordKey {
  readonly document: Schedule;
  readonly now: number;
  readonly expectedVersion: ExpectedVersion | 'none';
}

/** What the setpoint of a loop rests on, without the documents: the versions tell whether what is known still holds. */
export interface SetpointVersions {
  readonly site: number;
  readonly loop: number;
  readonly pumpId: string | null;
  readonly pump: number | null;
  readonly schedule: number | null;
  /** Tells a schedule from one that was deleted before it, whose versions began at 1 too. */
  readonly scheduleCreatedAt: number | null;
  /** That of the schedule, else that of the site. */
  readonly tariffId: string | null;
  readonly tariff: number | null;
}

export interface SiteReplacement {
  readonly siteId: string;
  readonly document: Site;
  readonly now: number;
  readonly expectedVersion: ExpectedVersion;
}

/** Every pump of a site, or how many there are when they are more than `ALL_PUMPS_LIMIT`. */
export type AllPumps =
  | { readonly outcome: 'all'; readonly records: readonly PumpRecord[] }
  | { readonly outcome: 'too-many'; readonly limit: number; readonly actual: number };

export const ALL_PUMPS_LIMIT = 10_000;
/**
 * Every operation acts inside one site, and every write is durable when its promise resolves.
 * Expected outcomes are values; a full disk, a lost database or corrupt data throws a `StoreFault`.
 */
export interface Store
  extends SiteContentsStore,
    ComparisonStore,
    UpgradePlanStore,
    MaintenanceTaskStore,
    CompletionStore,
    SummaryReads,
    CalibrationStore,
    ReadingStore {
  getSite(siteId: string): Promise<SiteRecord | undefined>;
  /** Makes the site if it is not there, and leaves it alone if it is. */
  ensureSite(site: { siteId: string; document: Site; now: number }): Promise<SiteRecord>;
  replaceSite(replacement: SiteReplacement): Promise<Replaced<SiteRecord> | Stale | Missing | UnknownTariff>;

  insertPump(pump: NewPump): Promise<Inserted<PumpRecord>>;
  /** All of them or none, in their order. */
  insertPumps(pumps: readonly NewPump[]): Promise<readonly PumpRecord[]>;
  getPump(key: RecordKey): Promise<PumpRecord | undefined>;
  /** Those of the ids that exist, in the order of the ids; at most `ALL_PUMPS_LIMIT` ids. */
  getPumps(keys: { siteId: string; ids: readonly string[] }): Promise<readonly PumpRecord[]>;
  listPumps(request: PageRequest): Promise<Page<PumpRecord>>;
  /** In the order createdAt, then id. */
  allPumps(siteId: string): Promise<AllPumps>;
  replacePump(replacement: PumpReplacement): Promise<Replaced<PumpRecord> | Stale | Missing>;
  deletePump(deletion: Deletion): Promise<Deleted | Stale | Missing | InUse>;

  insertLoop(loop: NewLoop): Promise<Inserted<LoopRecord> | UnknownPump>;
  getLoop(key: RecordKey): Promise<LoopRecord | undefined>;
  listLoops(request: LoopPageRequest): Promise<Page<LoopRecord>>;
  replaceLoop(replacement: LoopReplacement): Promise<Replaced<LoopRecord> | Stale | Missing | UnknownPump>;
  deleteLoop(deletion: Deletion): Promise<Deleted | Stale | Missing | InUse>;

  insertTariff(tariff: NewTariff): Promise<Inserted<TariffRecord>>;
  getTariff(key: RecordKey): Promise<TariffRecord | undefined>;
  listTariffs(request: PageRequest): Promise<Page<TariffRecord>>;
  replaceTariff(replacement: TariffReplacement): Promise<Replaced<TariffRecord> | Stale | Missing>;
  deleteTariff(deletion: Deletion): Promise<Deleted | Stale | Missing | InUse>;

  /** By the id of the loop, like those that follow. */
  getSchedule(key: RecordKey): Promise<ScheduleRecord | undefined>;
  /** `exists` where there should be none yet; `missing` where there is no loop, or no schedule of the version. */
  putSchedule(
    put: SchedulePut,
  ): Promise<
    | Inserted<ScheduleRecord>
    | Replaced<ScheduleRecord>
    | Stale
    | Missing
    | UnknownTariff
    | { readonly outcome: 'exists' }
  >;
  deleteSchedule(deletion: Deletion): Promise<Deleted | Stale | Missing>;
  /** Undefined without such a loop. */
  setpointVersions(key: RecordKey): Promise<SetpointVersions | undefined>;

  /** Resolves when the database answers. */
  ping(): Promise<void>;
  close(): Promise<void>;
}
