/** Keeps the text of a statement for each number of its parameters: making it takes longer than running it. */
import type { Compilable, CompiledQuery } from 'kysely';

/** Longer lists of parameters are rare enough to have their text made each time. */
export const KEPT_LENGTHS = 50;

/** `build` makes the statement for a length; its text follows from the length alone. */
export function compiledOnce<Row>(): (length: number, build: () => Compilable<Row>) => CompiledQuery<Row> {
  const kept = new Map<number, CompiledQuery<Row>>();
  return (length, build) => {
    const query = kept.get(length) ?? build().compile();
    if (length <= KEPT_LENGTHS) kept.set(length, query);
    return query;
  };
}
