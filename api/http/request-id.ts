/** Gives each request an id, which log, answer and error body carry. */
import type { MiddlewareHandler } from 'hono';
import type { RequestVariables } from './api.ts';

const HEADER = 'X-Request-Id';
const SANE = /^[\w.-]{1,64}$/;

/**
 * Takes the caller's id where it is sane, else a new one. The middleware of the web package refuses ids with points, takes longer
 * ones, and loses its header where a handler makes a response of its own.
 */
export const requestId =
  (newId: () => string): MiddlewareHandler<RequestVariables> =>
  async (c, next) => {
    const given = c.req.header(HEADER);
    const id = given !== undefined && SANE.test(given) ? given : newId();
    c.set('requestId', id);
    await next();
    c.res.headers.set(HEADER, id);
  };
