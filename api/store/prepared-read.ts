/** Reads whose text is made once for each number of their parameters. */
import type { Compilable, Kysely } from 'kysely';
import { compiledOnce } from './compiled-once.ts';
import type { Tables } from './tables.ts';

/**
 * A read with parameters alone between one call and the next. `build` makes the query for a list of parameters; its text may
 * depend on their number alone, and they must be its only parameters, in their order.
 */
export function preparedRead<Row>(
  db: Kysely<Tables>,
  build: (parameters: readonly string[]) => Compilable<Row>,
): (parameters: readonly string[]) => Promise<readonly Row[]> {
  const compiled = compiledOnce<Row>();
  return async (parameters) => {
    const query = compiled(parameters.length, () => build(parameters));
    const { rows } = await db.executeQuery<Row>({ ...query, parameters });
    return rows;
  };
}
