/** Reads whose text is made once: making it takes longer than running it. */
import type { Compilable, CompiledQuery, Kysely } from 'kysely';
import type { Tables } from './tables.ts';

/** Lists longer than this are rare enough to have their text made each time. */
const KEPT_LENGTHS = 50;

/**
 * A read with parameters alone between one call and the next. `build` makes the query for a list of parameters; its text may
 * depend on their number alone, and they must be its only parameters, in their order.
 */
export function preparedRead<Row>(
  db: Kysely<Tables>,
  build: (parameters: readonly string[]) => Compilable<Row>,
): (parameters: readonly string[]) => Promise<readonly Row[]> {
  const kept = new Map<number, CompiledQuery<Row>>();
  return async (parameters) => {
    const query = kept.get(parameters.length) ?? build(parameters).compile();
    if (parameters.length <= KEPT_LENGTHS) kept.set(parameters.length, query);
    const { rows } = await db.executeQuery<Row>({ ...query, parameters });
    return rows;
  };
}
