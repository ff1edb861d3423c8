/** Upgrade plans kept: each as it was asked for and found, never changed afterwards. */
import type { UpgradePlan } from '../../../models/upgrade-plan/choose-upgrades.ts';
import type { PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import type { StoredRecord } from '../../store/versions.ts';

export interface StoredUpgradePlan {
  readonly name: string;
  readonly question: PlanQuestion;
  /** Of the site when the plan was made. */
  readonly currency: string;
  readonly plan: UpgradePlan;
  readonly modelVersion: string;
}

export type UpgradePlanRecord = StoredRecord<StoredUpgradePlan>;
