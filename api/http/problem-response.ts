/** The one body of every error: a problem of RFC 9457. */
import type { Problem } from './problem.ts';
import { problemKind } from './problem-registry.ts';

export const PROBLEM_MEDIA_TYPE = 'application/problem+json';
export const PROBLEM_ERRORS_MAX = 50;

export const problemType = (code: string): string => `urn:loopwright:problem:${code}`;

/** `path` is the path of the request without its query. */
export function problemResponse(
  { code, detail, errors, limit, actual, usedBy, headers }: Problem,
  { path, requestId }: { path: string; requestId: string },
): Response {
  const { status, title } = problemKind(code);
  const body = {
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
  return new Response(JSON.stringify(body), {
    status,
    headers: { 'Content-Type': PROBLEM_MEDIA_TYPE, ...headers },
  });
}
