/** Comparisons, each kept as it was found. */
import type { Migration } from 'kysely';
import { makeKeptTable } from './kept-table.ts';

export const comparison: Migration = {
  up: (db) => makeKeptTable(db, 'comparison'),
};
