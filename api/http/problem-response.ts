/** Makes the one body of every error, a problem of RFC 9457. */
import type { Problem } from './problem.ts';
import { problemKind } from './problem-registry.ts';

export const PROBLEM_MEDIA_TYPE = 'application/problem+json';
export const PROBLEM_ERRORS_MAX = 50;

export const problemType = (code: string): string => `urn:loopwright:problem:${code}`;

interface Asked {
  /** Of the request, without its query. */
  readonly path: string;
  readonly requestId: string;
}

export function problemBody(
  { code, detail, errors, limit, actual, usedBy }: Omit<Problem, 'headers'>,
  { path, requestId }: Asked,
) {
  const { status, title } = problemKind(code);
  return {
    type: problemType(code),
    code,
    title,
    status,
    detail,
    instance: path,
    requestId,
    ...(errors === undefined ? {} : { errors: errors.slice(0, PROBLEM_ERRORS_MAX) }),
    ...(limit === undefined ? {} : { limit }),
    ...(actual === undefined ? {} : { actual }),
    ...(usedBy === undefined ? {} : { usedBy }),
  };
}

export function problemResponse({ headers, ...problem }: Problem, asked: Asked): Response {
  return new Response(JSON.stringify(problemBody(problem, asked)), {
    status: problemKind(problem.code).status,
    headers: { 'Content-Type': PROBLEM_MEDIA_TYPE, ...headers },
  });
}
