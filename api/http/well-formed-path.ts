/** Refuses paths that are not percent-encoded UTF-8 before any route looks at them. */
import type { MiddlewareHandler } from 'hono';
import { answerProblem } from './answer-problem.ts';
import type { RequestVariables } from './api.ts';
import { isWellEncoded } from './parse-query.ts';
import { problem } from './problem.ts';

export const wellFormedPath: MiddlewareHandler<RequestVariables> = async (c, next) => {
  const [path = ''] = c.req.url.split(/[?#]/, 1);
  return isWellEncoded(path)
    ? next()
    : answerProblem(c, problem('malformed-url', 'The path is not percent-encoded UTF-8.'));
};
