/** Comparisons in a database. */
import type { Kysely } from 'kysely';
import type { ComparisonStore, StoredComparison } from './comparison-contract.ts';
import { keptDocuments } from './kept-documents.ts';
import type { Tables } from './schema.ts';

export function comparisonStore(db: Kysely<Tables>): ComparisonStore {
  const kept = keptDocuments<StoredComparison>(db, 'comparison');
  return {
    insertComparison: kept.insert,
    getComparison: kept.get,
    listComparisons: kept.list,
    deleteComparison: kept.delete,
  };
}
