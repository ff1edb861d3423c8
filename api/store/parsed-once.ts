/** Records made of rows, each made once for as long as its row stays the same. */
import { LRUCache } from 'lru-cache';
import type { RowCommon } from './tables.ts';

/** Characters of all rows kept, about: those of some thousands of pumps. */
const KEPT_CHARACTERS = 16_000_000;

const isSame = <Row extends object>(a: Row, b: Row): boolean => {
  const values = Object.values(a);
  const others = Object.values(b);
  return values.length === others.length && values.every((value, place) => others[place] === value);
};

/**
 * The maker, remembering what it made of a row. A row is compared column by column, its texts included, so that a
 * record is never that of another version or of a text that has changed. Records are never written to.
 */
export function parsedOnce<Row extends RowCommon, Made extends object>(
  make: (row: Row) => Made,
): (row: Row) => Made {
  const kept = new LRUCache<string, { readonly row: Row; readonly made: Made }>({
    maxSize: KEPT_CHARACTERS,
    sizeCalculation: ({ row }) => JSON.stringify(row).length,
  });
  return (row) => {
    const known = kept.get(row.id);
    if (known !== undefined && isSame(known.row, row)) return known.made;
    const made = make(row);
    kept.set(row.id, { row, made });
    return made;
  };
}
