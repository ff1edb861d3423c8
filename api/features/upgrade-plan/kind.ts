/** Upgrade plans in a database. */
import { documentTable, type KeptOperations } from '../../store/document-table.ts';
import { defineKind } from '../../store/kind.ts';
import type { StoredUpgradePlan } from './contract.ts';

export const UPGRADE_PLANS = defineKind<KeptOperations<StoredUpgradePlan>>({
  name: 'upgrade-plan',
  reads: { get: 'read-again', list: 'read-again' },
  open: (db) => documentTable(db, 'upgrade_plan'),
});
