/** Headers that keep a browser from doing more with an answer than showing it. */
import type { MiddlewareHandler } from 'hono';

const HEADERS = {
  'Content-Security-Policy': "default-src 'none'; frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'private, no-cache',
} as const;

/** Those that a handler has set itself stay. */
export const securityHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  for (const [name, value] of Object.entries(HEADERS)) {
    if (!c.res.headers.has(name)) c.res.headers.set(name, value);
  }
};
