/** Writes one structured log line for each request. */
import type { MiddlewareHandler } from 'hono';
import type { Logger } from 'pino';
import type { RequestVariables } from './api.ts';

/** The query stays out: it may be long, and later it may carry what should not be kept. */
export const accessLog =
  ({ logger, clock }: { logger: Logger; clock: () => Date }): MiddlewareHandler<RequestVariables> =>
  async (c, next) => {
    const start = clock().getTime();
    await next();
    logger.info(
      {
        requestId: c.get('requestId'),
        method: c.req.method,
        path: c.req.path,
        status: c.res.status,
        milliseconds: clock().getTime() - start,
      },
      'request',
    );
  };
