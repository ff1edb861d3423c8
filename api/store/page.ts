/** A page cut from the rows read for it. */
import type { Page } from './versions.ts';

/** One row past the limit is read, to know whether more follow. */
export const rowsToRead = (limit: number): number => limit + 1;

export const pageOf = <Row, Item>(
  rows: readonly Row[],
  { limit, read }: { limit: number; read: (row: Row) => Item },
): Page<Item> => ({ records: rows.slice(0, limit).map(read), more: rows.length > limit });
