/** Statements of a database connection, each prepared once. */
import { LRUCache } from 'lru-cache';

/** The store asks some dozens of different questions; lists of ids make a few more. */
const KEPT_STATEMENTS = 200;

export function preparedOnce<Statement extends object>(
  prepare: (sql: string) => Statement,
): (sql: string) => Statement {
  const kept = new LRUCache<string, Statement>({ max: KEPT_STATEMENTS });
  return (sql) => {
    const known = kept.get(sql);
    if (known !== undefined) return known;
    const statement = prepare(sql);
    kept.set(sql, statement);
    return statement;
  };
}
