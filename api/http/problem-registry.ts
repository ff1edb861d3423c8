/** Lists every problem that the service answers with: its status, its title, what the caller can do about it. */

interface ProblemKind {
  readonly status: number;
  readonly title: string;
  readonly remedy?: string;
}

export const PROBLEMS = {
  'malformed-json': { status: 400, title: 'The body is not JSON' },
  'malformed-csv': { status: 400, title: 'The body is not CSV', remedy: 'Write it as RFC 4180 says.' },
  'malformed-utf8': { status: 400, title: 'The request is not UTF-8' },
  'malformed-url': {
    status: 400,
    title: 'The address is not well formed',
    remedy: 'Percent-encode it as UTF-8.',
  },
  'malformed-request': { status: 400, title: 'The request is not HTTP' },
  'cut-short': { status: 400, title: 'The body broke off', remedy: 'Send all of it.' },
  'missing-body': { status: 400, title: 'The request has no body' },
  'loopback-only': {
    status: 403,
    title: 'Only programs on this machine are answered',
    remedy: 'Call by localhost, 127.0.0.1 or [::1], without a proxy and not from a page of another site.',
  },
  'not-found': { status: 404, title: 'There is nothing here' },
  'no-value': { status: 404, title: 'The answer has no value there' },
  'method-not-allowed': {
    status: 405,
    title: 'This method does not apply here',
    remedy: 'See the header Allow.',
  },
  'not-acceptable': { status: 406, title: 'The answer has no such form', remedy: 'See the header Accept.' },
  'too-slow': { status: 408, title: 'The request came too slowly' },
  'in-use': { status: 409, title: 'Others use it', remedy: 'Change or delete those in `usedBy` first.' },
  'key-taken': {
    status: 409,
    title: 'Another record has this key',
    remedy: 'Choose another key, or rename the one in `usedBy`.',
  },
  'not-empty': {
    status: 409,
    title: 'The site is not empty',
    remedy: 'Import into a site without records.',
  },
  'stale-version': {
    status: 412,
    title: 'It has changed since it was read',
    remedy: 'Read it again and send its ETag in If-Match.',
  },
  'body-too-large': { status: 413, title: 'The body is too large' },
  'url-too-long': { status: 414, title: 'The address is too long' },
  'unsupported-media-type': { status: 415, title: 'The body is of a type that is not read here' },
  'invalid-request': { status: 422, title: 'The request does not hold together', remedy: 'See `errors`.' },
  'limit-exceeded': {
    status: 422,
    title: 'The request is beyond a limit',
    remedy: 'See `limit` and `actual`.',
  },
  'no-requirement': { status: 422, title: 'No outlet requires a flow', remedy: 'State a `requiredFlow`.' },
  'no-installed-pump': {
    status: 422,
    title: 'The loop has no pump',
    remedy: 'Name one, or state `installed`.',
  },
  'not-calibrated': {
    status: 422,
    title: 'No factor can be applied',
    remedy: 'Take the readings that `nextReadings` names, and correct those that `misfits` names.',
  },
  unsolved: {
    status: 422,
    title: 'The loop could not be solved',
    remedy: 'Look for extreme lengths, bores or flows.',
  },
  'version-required': {
    status: 428,
    title: 'The version that is to be changed is not stated',
    remedy: 'Send the ETag in If-Match, or `*`.',
  },
  'headers-too-large': {
    status: 431,
    title: 'Address and headers are too large',
    remedy: 'Send fewer or shorter headers.',
  },
  'internal-error': { status: 500, title: 'The service has failed', remedy: 'Report `requestId`.' },
  unavailable: { status: 503, title: 'The service is not ready', remedy: 'Try again after Retry-After.' },
  'storage-full': { status: 507, title: 'There is no room to store it' },
} as const satisfies Record<string, ProblemKind>;

export type ProblemCode = keyof typeof PROBLEMS;

export const problemKind = (code: ProblemCode): ProblemKind => PROBLEMS[code];
