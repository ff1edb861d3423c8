/** What the service asks of its storage, the same on every database. */
import type { CalibrationStore } from '../features/calibration/contract.ts';
import type { SiteContentsStore } from '../features/site-copy/contract.ts';
import type { SummaryReads } from '../features/site-summary/reads-contract.ts';
import type { CompletionStore } from '../records/completion/contract.ts';
import type { ReadingStore } from '../records/reading/contract.ts';
import type { SchedulePut, ScheduleRecord, SetpointVersions } from '../records/schedule/kind.ts';
import type { MaintenanceTaskStore } from '../records/task/contract.ts';
import type { Kind } from './kind.ts';
import type {
  Deleted,
  Deletion,
  InSite,
  Inserted,
  Missing,
  RecordKey,
  Replaced,
  Stale,
  UnknownTariff,
} from './versions.ts';

/**
 * Every operation acts inside one site, and every write is durable when its promise resolves.
 * Expected outcomes are values; a full disk, a lost database or corrupt data throws a `StoreFault`.
 */
export interface Store
  extends SiteContentsStore,
    MaintenanceTaskStore,
    CompletionStore,
    SummaryReads,
    CalibrationStore,
    ReadingStore {
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
  deleteSchedule(deletion: Deletion & InSite): Promise<Deleted | Stale | Missing>;
  /** Undefined without such a loop. */
  setpointVersions(key: RecordKey): Promise<SetpointVersions | undefined>;

  /** The records of a kind in a site. */
  of<Operations extends object>(siteId: string, kind: Kind<Operations>): Operations;
  /** Resolves when the database answers. */
  ping(): Promise<void>;
  close(): Promise<void>;
}

/** The store as one site sees it. */
export interface SiteStore extends Omit<Store, 'of' | 'ping' | 'close'> {
  readonly siteId: string;
  of<Operations extends object>(kind: Kind<Operations>): Operations;
}

export const storeOfSite = (store: Store, siteId: string): SiteStore => ({
  ...store,
  siteId,
  of: (kind) => store.of(siteId, kind),
});
