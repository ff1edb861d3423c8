/** Answers a request with a problem. */
import type { Context } from 'hono';
import type { RequestVariables } from './api.ts';
import type { Problem } from './problem.ts';
import { problemResponse } from './problem-response.ts';

export const answerProblem = (c: Context<RequestVariables>, found: Problem): Response =>
  problemResponse(found, { path: c.req.path, requestId: c.get('requestId') });
