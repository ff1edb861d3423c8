/** Documents the headers of answers. */
import type { Method } from './route.ts';

const text = (description: string, example: string) => ({
  description,
  schema: { type: 'string' as const, examples: [example] },
});

const ETAG = text('Names this state of the answer, for If-None-Match and If-Match.', '"3-metric"');

const LOCATION = text('The path of what was created.', '/v1/loops/0198c0de-0000-7000-8000-000000000001');

const ALLOW = text('The methods that the path has.', 'GET, POST');

const RETRY_AFTER = {
  description: 'Seconds after which to try again.',
  schema: { type: 'integer' as const, minimum: 1, examples: [5] },
};

interface Facts {
  readonly method: Method;
  readonly status: number;
  readonly etag?: 'none' | 'changing' | undefined;
}

/** Of an answer that is no problem. */
export function answerHeaders({ status, etag }: Facts) {
  return {
    ...(etag === 'none' || status === 204 ? {} : { ETag: ETAG }),
    ...(status === 201 ? { Location: LOCATION } : {}),
  };
}

/** Whether an answer may be held and asked for again, so that 304 is an answer too. */
export const isHeld = ({ method, etag }: Omit<Facts, 'status'>): boolean =>
  method === 'get' && etag === undefined;

export const NOT_MODIFIED = {
  description: 'The answer that If-None-Match names is still right; there is no body.',
  headers: { ETag: ETAG },
};

/** Of problems of a status. */
export function problemHeaders(status: number) {
  if (status === 405) return { headers: { Allow: ALLOW } };
  return status === 503 ? { headers: { 'Retry-After': RETRY_AFTER } } : {};
}
