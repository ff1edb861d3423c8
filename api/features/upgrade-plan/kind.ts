/** Upgrade plans in a database. */
import type { Kysely } from 'kysely';
import { keptDocuments } from '../../store/immutable-documents.ts';
import type { Tables } from '../../store/tables.ts';
import type { StoredUpgradePlan, UpgradePlanStore } from './contract.ts';

export function upgradePlanStore(db: Kysely<Tables>): UpgradePlanStore {
  const kept = keptDocuments<StoredUpgradePlan>(db, 'upgrade_plan');
  return {
    insertUpgradePlan: kept.insert,
    getUpgradePlan: kept.get,
    listUpgradePlans: kept.list,
    deleteUpgradePlan: kept.delete,
  };
}
