/** Upgrade plans kept: each as it was asked for and found, never changed afterwards. */
import type { UpgradePlan } from '../../../models/upgrade-plan/choose-upgrades.ts';
import type { PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import type {
  Deleted,
  Deletion,
  Inserted,
  Missing,
  Page,
  PageRequest,
  RecordKey,
  Stale,
  StoredRecord,
} from '../../store/versions.ts';

export interface StoredUpgradePlan {
  readonly name: string;
  readonly question: PlanQuestion;
  /** Of the site when the plan was made. */
  readonly currency: string;
  readonly plan: UpgradePlan;
  readonly modelVersion: string;
}

export type UpgradePlanRecord = StoredRecord<StoredUpgradePlan>;

export interface NewUpgradePlan extends RecordKey {
  readonly document: StoredUpgradePlan;
  readonly now: number;
}

export interface UpgradePlanStore {
  insertUpgradePlan(plan: NewUpgradePlan): Promise<Inserted<UpgradePlanRecord>>;
  getUpgradePlan(key: RecordKey): Promise<UpgradePlanRecord | undefined>;
  listUpgradePlans(request: PageRequest): Promise<Page<UpgradePlanRecord>>;
  deleteUpgradePlan(deletion: Deletion): Promise<Deleted | Stale | Missing>;
}
