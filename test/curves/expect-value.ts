/** The value of a result that a test expects to be one. */
import type { Result } from '../../curves/result.ts';

export function expectValue<T, F>(result: Result<T, F>): T {
  if (result.ok) return result.value;
  throw new Error(`expected a value, got ${JSON.stringify(result.failure)}`);
}
