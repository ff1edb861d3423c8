/** Comparisons in a database. */
import type { Kysely } from 'kysely';
import { keptDocuments } from '../../store/immutable-documents.ts';
import type { Tables } from '../../store/tables.ts';
import type { ComparisonStore, StoredComparison } from './contract.ts';

export function comparisonStore(db: Kysely<Tables>): ComparisonStore {
  const kept = keptDocuments<StoredComparison>(db, 'comparison');
  return {
    insertComparison: kept.insert,
    getComparison: kept.get,
    listComparisons: kept.list,
    deleteComparison: kept.delete,
  };
}
