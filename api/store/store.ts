/** What the service asks of its storage, the same on every database. */
import type { CalibrationStore } from '../features/calibration/contract.ts';
import type { ComparisonStore } from '../features/comparison/contract.ts';
import type { SiteContentsStore } from '../features/site-copy/contract.ts';
import type { SummaryReads } from '../features/site-summary/reads-contract.ts';
import type { UpgradePlanStore } from '../features/upgrade-plan/contract.ts';
import type { BaselineStore } from '../records/baseline/contract.ts';
import type { CompletionStore } from '../records/completion/contract.ts';
import type { LoopPageRequest, LoopRecord, LoopReplacement, NewLoop } from '../records/loop/kind.ts';
import type { AllPumps, NewPump, PumpRecord, PumpReplacement } from '../records/pump/kind.ts';
import type { ReadingStore } from '../records/reading/contract.ts';
import type { SchedulePut, ScheduleRecord, SetpointVersions } from '../records/schedule/kind.ts';
import type { Site, SiteRecord, SiteReplacement } from '../records/site/kind.ts';
import type { NewTariff, TariffRecord, TariffReplacement } from '../records/tariff/kind.ts';
import type { MaintenanceTaskStore } from '../records/task/contract.ts';
import type {
  Deleted,
  Deletion,
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
} from './versions.ts';

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
    BaselineStore,
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
