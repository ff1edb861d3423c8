/** The id that a request carries through log, answer and error body. */
import type { MiddlewareHandler } from 'hono';
import type { RequestVariables } from './api.ts';

const HEADER = 'X-Request-Id';
const SANE = /^[\w.-]{1,64}$/;

/** Takes the caller's id where it is sane, else a new one. */
export const requestId =
  (newId: () => string): MiddlewareHandler<RequestVariables> =>
  async (c, next) => {
    const given = c.req.header(HEADER);
    const id = given !== undefined && SANE.test(given) ? given : newId();
    c.set('requestId', id);
    await next();
    c.res.headers.set(HEADER, id);
  };
