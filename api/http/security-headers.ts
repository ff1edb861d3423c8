/** Keeps a browser from doing more with an answer than showing it. */
import type { MiddlewareHandler } from 'hono';

const HEADERS = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'private, no-cache',
} as const;

const NOTHING = "default-src 'none'; frame-ancestors 'none'";
// Pictures and pages bring their own style, and nothing else.
const OWN_STYLE = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'";

const isPage = (contentType: string | null): boolean =>
  contentType !== null && /^(image\/svg\+xml|text\/html)\b/.test(contentType);

/**
 * Those that a handler has set itself stay. The middleware of the web package has one policy for all answers; here that of pictures
 * and pages differs from that of data.
 */
export const securityHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  const { headers } = c.res;
  if (!headers.has('Content-Security-Policy')) {
    headers.set('Content-Security-Policy', isPage(headers.get('Content-Type')) ? OWN_STYLE : NOTHING);
  }
  for (const [name, value] of Object.entries(HEADERS)) {
    if (!headers.has(name)) headers.set(name, value);
  }
};
