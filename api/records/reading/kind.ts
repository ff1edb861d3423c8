/** The readings of loops in a database. */
import type { Kysely } from 'kysely';
import { defineKind } from '../../store/kind.ts';
import type { Tables } from '../../store/tables.ts';
import type { ReadingOperations } from './contract.ts';
import { readingDeletion } from './deletion.ts';
import { readingReads } from './reads.ts';
import { readingWrites } from './writes.ts';

function openReadings(db: Kysely<Tables>): (siteId: string) => ReadingOperations {
  const writes = readingWrites(db);
  return (siteId) => ({ ...readingReads(db, siteId), ...writes(siteId), ...readingDeletion(db, siteId) });
}

export const READINGS = defineKind<ReadingOperations>({
  name: 'reading',
  reads: {
    span: 'read-again',
    between: 'read-again',
    sampled: 'read-again',
    count: 'read-again',
    buckets: 'read-again',
  },
  open: openReadings,
});
