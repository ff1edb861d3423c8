/** Upgrade plans, each kept as it was found. */
import type { Migration } from 'kysely';
import { makeKeptTable } from './kept-table.ts';

export const upgradePlan: Migration = {
  up: (db) => makeKeptTable(db, 'upgrade_plan'),
};
