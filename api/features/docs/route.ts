/** Serves the reference page from the package, so that nothing on it comes from another host. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { writtenOnce } from '../../caches/written-once.ts';
import type { Api } from '../../http/api.ts';
import { matchesAny } from '../../http/etag.ts';
import { DOCS_PAGE, DOCS_PATHS, DOCS_START, DOCS_STYLE } from './page.ts';

// Scripts and requests of its own origin alone; the package draws its icons from data and sets styles on elements.
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const TYPES = {
  html: 'text/html; charset=utf-8',
  script: 'text/javascript; charset=utf-8',
  style: 'text/css; charset=utf-8',
} as const;

interface Part {
  readonly path: string;
  readonly contentType: string;
  readonly read: () => string;
}

const load = createRequire(import.meta.url);
const ofPackage = (file: string) => () => readFileSync(load.resolve(`swagger-ui-dist/${file}`), 'utf8');

const PARTS: readonly Part[] = [
  { path: DOCS_PATHS.page, contentType: TYPES.html, read: () => DOCS_PAGE },
  { path: DOCS_PATHS.start, contentType: TYPES.script, read: () => DOCS_START },
  { path: DOCS_PATHS.style, contentType: TYPES.style, read: () => DOCS_STYLE },
  { path: DOCS_PATHS.bundle, contentType: TYPES.script, read: ofPackage('swagger-ui-bundle.js') },
  { path: DOCS_PATHS.packageStyle, contentType: TYPES.style, read: ofPackage('swagger-ui.css') },
];

function written({ contentType, read }: Part) {
  const text = read();
  const etag = `"${createHash('sha256').update(text).digest('hex').slice(0, 32)}"`;
  return { text, headers: { 'Content-Type': contentType, ETag: etag, 'Content-Security-Policy': POLICY } };
}

/** No operations of the interface, so that the OpenAPI document does not show them. */
export function docsRoutes({ app }: Api): void {
  for (const part of PARTS) {
    const made = writtenOnce(() => written(part));
    app.get(part.path, (c) => {
      const { text, headers } = made();
      const isKnown = matchesAny(c.req.header('if-none-match'), headers.ETag);
      return new Response(isKnown ? null : text, { status: isKnown ? 304 : 200, headers });
    });
  }
}
