/** Answers one value of an answer as plain text. */
import { failed, type Result, success } from '../../curves/result.ts';
import { plainDecimal } from '../wording/plain-decimal.ts';
import { toPointer, valueAt } from './json-pointer.ts';
import { invalidRequest, type Problem, problem } from './problem.ts';

function sentenceOf(answer: unknown): string | undefined {
  const summary = valueAt(answer, ['summary']);
  return typeof summary === 'string' ? summary : undefined;
}

/** At most this many members of an object are named where another was asked for. */
const NAMED = 12;

/** Whether the value is null, or there is no such place, and up to where there is one. */
function whyNot(answer: unknown, path: readonly string[]): string {
  for (const [depth, part] of path.entries()) {
    const at = path.slice(0, depth);
    const value = valueAt(answer, at);
    const where = depth === 0 ? 'the answer' : toPointer(at);
    if (value === null) return `${toPointer(path)} has no value: ${where} is null`;
    if (valueAt(answer, [...at, part]) !== undefined) continue;
    if (Array.isArray(value)) return `there is no item ${part} in ${where}, a list of ${value.length}`;
    return `there is no ${part} in ${where}${membersOf(value)}`;
  }
  return `${toPointer(path)} is null`;
}

function membersOf(value: unknown): string {
  if (typeof value !== 'object' || value === null) return ', a single value';
  const names = Object.keys(value);
  const more = names.length > NAMED ? ', ..' : '';
  return `, which has ${names.slice(0, NAMED).join(', ')}${more}`;
}

/** A number in the shortest decimal notation, a string bare. Where there is no value, the answer's summary says why. */
export function pointedValue(answer: unknown, path: readonly string[]): Result<string, Problem> {
  const value = valueAt(answer, path);
  if (value === undefined || value === null) {
    const detail = sentenceOf(answer) ?? `The answer has no value at ${toPointer(path)}.`;
    const errors = [{ parameter: 'pointer', detail: whyNot(answer, path) }];
    return failed(problem('no-value', detail, { errors }));
  }
  if (typeof value === 'number') return success(plainDecimal(value));
  if (typeof value === 'string' || typeof value === 'boolean') return success(String(value));
  const kind = Array.isArray(value) ? 'an array' : 'an object';
  return failed(invalidRequest([{ parameter: 'pointer', detail: `names ${kind}; name a value inside it` }]));
}
