/** Answers where no route does: a wrong method, an unknown path, a fault. */
import type { Context, MiddlewareHandler } from 'hono';
import { methodNotAllowed } from 'hono/method-not-allowed';
import type { Logger } from 'pino';
import { StoreFault } from '../store/store-fault.ts';
import { answerProblem } from './answer-problem.ts';
import type { Api, RequestVariables } from './api.ts';
import { type Problem, problem } from './problem.ts';

type Ctx = Context<RequestVariables>;

/** Any other method of a path that is there is 405. */
export const refuseOtherMethods = (app: Api['app']): MiddlewareHandler<RequestVariables> =>
  methodNotAllowed({
    app,
    onMethodNotAllowed(c: Ctx, methods) {
      const allowed = methods.toSorted().join(', ');
      const detail = `${c.req.method} does not apply to ${c.req.path}; ${allowed} do.`;
      return answerProblem(c, problem('method-not-allowed', detail, { headers: { Allow: allowed } }));
    },
  });

export const answerNotFound = (c: Ctx): Response =>
  answerProblem(c, problem('not-found', `There is nothing at ${c.req.path}. /docs lists what there is.`));

/** What went wrong inside is for the log; the client learns only what it can act on. */
function faultProblem(error: Error): Problem {
  if (error instanceof StoreFault && error.code === 'store-full') {
    return problem('storage-full', 'The disk is full; nothing was stored.');
  }
  if (error instanceof StoreFault && error.code === 'store-unavailable') {
    return problem('unavailable', 'The database cannot be reached.', {
      headers: { 'Retry-After': String(error.retryAfterSeconds ?? 1) },
    });
  }
  return problem('internal-error', 'The service has failed on this request; the log names it by its id.');
}

export const answerFault =
  (logger: Logger) =>
  (error: Error, c: Ctx): Response => {
    const found = faultProblem(error);
    logger.error({ err: error, requestId: c.get('requestId'), code: found.code }, 'fault');
    return answerProblem(c, found);
  };
