/** Comparisons in a database. */
import { documentTable, type KeptOperations } from '../../store/document-table.ts';
import { defineKind } from '../../store/kind.ts';
import type { StoredComparison } from './contract.ts';

export const COMPARISONS = defineKind<KeptOperations<StoredComparison>>({
  name: 'comparison',
  reads: { get: 'read-again', list: 'read-again' },
  open: (db) => documentTable(db, 'comparison'),
});
