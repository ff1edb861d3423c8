/** One value of an answer as plain text. */
import { failed, type Result, success } from '../../curves/result.ts';
import { toPointer, valueAt } from './json-pointer.ts';
import { plainDecimal } from './plain-decimal.ts';
import { invalidRequest, type Problem, problem } from './problem.ts';

function summaryOf(answer: unknown): string | undefined {
  const summary = valueAt(answer, ['summary']);
  return typeof summary === 'string' ? summary : undefined;
}

/** A number in the shortest decimal notation, a string bare. Where there is no value, the answer's summary says why. */
export function pointedValue(answer: unknown, path: readonly string[]): Result<string, Problem> {
  const value = valueAt(answer, path);
  if (value === undefined || value === null) {
    return failed(problem('no-value', summaryOf(answer) ?? `The answer has no value at ${toPointer(path)}.`));
  }
  if (typeof value === 'number') return success(plainDecimal(value));
  if (typeof value === 'string' || typeof value === 'boolean') return success(String(value));
  const kind = Array.isArray(value) ? 'an array' : 'an object';
  return failed(invalidRequest([{ parameter: 'pointer', detail: `names ${kind}; name a value inside it` }]));
}
