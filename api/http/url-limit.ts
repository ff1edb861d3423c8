/** Refuses addresses that are too long. */
import type { MiddlewareHandler } from 'hono';
import { answerProblem } from './answer-problem.ts';
import type { RequestVariables } from './api.ts';
import { problem } from './problem.ts';

export const URL_MAX = 8 * 1024;

export const urlLimit: MiddlewareHandler<RequestVariables> = async (c, next) => {
  const { origin } = new URL(c.req.url);
  const actual = c.req.url.length - origin.length;
  if (actual > URL_MAX) {
    const detail = `The address has ${actual} characters; ${URL_MAX} are read.`;
    return answerProblem(c, problem('url-too-long', detail, { limit: URL_MAX, actual }));
  }
  return next();
};
