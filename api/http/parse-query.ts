/** Reads the query of a request as parameters, each given once. */
import { failed, type Result, success } from '../../curves/result.ts';
import { invalidRequest, type Problem, type ProblemError, problem } from './problem.ts';

export type Parameters = Readonly<Record<string, string>>;

/** Whether a part of an address is percent-encoded UTF-8. */
export const isWellEncoded = (query: string): boolean => {
  try {
    decodeURIComponent(query);
    return true;
  } catch {
    return false;
  }
};

/** The query is taken as it was sent: a plus is a space, the rest is percent-encoded UTF-8. */
export function parseQuery(url: string): Result<Parameters, Problem> {
  const [, query = ''] = /\?([^#]*)/.exec(url) ?? [];
  if (!isWellEncoded(query)) {
    return failed(problem('malformed-url', 'The query is not percent-encoded UTF-8.'));
  }
  const parameters = new Map<string, string>();
  const repeated = new Set<string>();
  for (const [name, value] of new URLSearchParams(query)) {
    if (parameters.has(name)) repeated.add(name);
    parameters.set(name, value);
  }
  if (repeated.size > 0) {
    const errors = [...repeated].map(
      (parameter): ProblemError => ({ parameter, detail: 'is given more than once' }),
    );
    return failed(invalidRequest(errors));
  }
  return success(Object.fromEntries(parameters));
}
