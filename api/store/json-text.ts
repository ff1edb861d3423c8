/** JSON objects as text columns, with a digest that shows whether the text is still the one written. */
import { createHash } from 'node:crypto';
import { StoreFault } from './store-fault.ts';

const refuseLostNumbers = (member: string, value: unknown): unknown => {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    throw new Error(`invariant: "${member}" is ${value}, which JSON cannot hold`);
  }
  return value;
};

/** Shortest decimals that read back to the same numbers. A number that is not finite is a bug of the caller and throws. */
export const jsonText = (document: object): string => JSON.stringify(document, refuseLostNumbers);

/** SHA-256, hex, of the texts in order, each preceded by its length so that no two lists share a digest. */
export function digestOf(texts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(`${text.length}:${text}`, 'utf8');
  return hash.digest('hex');
}

/** Throws a `StoreFault` that names the row when its texts are not those that were written. */
export function checkDigest(
  row: { id: string; digest: string },
  table: string,
  texts: readonly string[],
): void {
  if (digestOf(texts) !== row.digest) {
    throw new StoreFault('store-corrupt', `${table} ${row.id}: the stored text does not match its digest`);
  }
}
