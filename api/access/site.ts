/** Decides which site a caller acts in. */
import type { MiddlewareHandler } from 'hono';
import type { RequestVariables } from '../http/api.ts';

/** The one site of a facility that has not made others. */
export const DEFAULT_SITE_ID = 'default';

/** All sites that callers act in; each is made when the service starts for the first time. */
export const SITE_IDS: readonly string[] = [DEFAULT_SITE_ID];

/** Without access keys every caller acts in the one site. */
export const siteOfCaller: MiddlewareHandler<RequestVariables> = async (c, next) => {
  c.set('siteId', DEFAULT_SITE_ID);
  await next();
};
