/** Lists every problem that the service answers with: its status, its title, what the caller can do about it. */

interface ProblemKind {
  readonly status: number;
  readonly title: string;
  readonly mend?: string;
}

export const PROBLEMS = {
  'malformed-json': { status: 400, title: 'The body is not JSON' },
  'malformed-csv': { status: 400, title: 'The body is not CSV', mend: 'Write it as RFC 4180 says.' },
  'malformed-utf8': { status: 400, title: 'The request is not UTF-8' },
  'malformed-url': {
    status: 400,
    title: 'The address is not well formed',
    mend: 'Percent-encode it as UTF-8.',
  },
  'malformed-request': { status: 400, title: 'The request is not HTTP' },
  'cut-short': { status: 400, title: 'The body broke off', mend: 'Send all of it.' },
  'missing-body': { status: 400, title: 'The request has no body' },
  'loopback-only': {
    status: 403,
    title: 'Only programs on this machine are answered',
    mend: 'Call by localhost, 127.0.0.1 or [::1], without a proxy and not from a page of another site.',
  },
  'not-found': { status: 404, title: 'There is nothing here' },
  'no-value': { status: 404, title: 'The answer has no value there' },
  'method-not-allowed': {
    status: 405,
    title: 'This method does not apply here',
    mend: 'See the header Allow.',
  },
  'not-acceptable': { status: 406, title: 'The answer has no such form', mend: 'See the header Accept.' },
  'too-slow': { status: 408, title: 'The request came too slowly' },
  'in-use': { status: 409, title: 'Others use it', mend: 'Change or delete those in `usedBy` first.' },
  'not-empty': {
    status: 409,
    title: 'The site is not empty',
    mend: 'Import into a site without records.',
  },
  'stale-version': {
    status: 412,
    title: 'It has changed since it was read',
    mend: 'Read it again and send its ETag in If-Match.',
  },
  'body-too-large': { status: 413, title: 'The body is too large' },
  'url-too-long': { status: 414, title: 'The address is too long' },
  'unsupported-media-type': { status: 415, title: 'The body is of a type that is not read here' },
  'invalid-request': { status: 422, title: 'The request does not hold together', mend: 'See `errors`.' },
  'limit-exceeded': {
    status: 422,
    title: 'The request is beyond a limit',
    mend: 'See `limit` and `actual`.',
  },
  'no-requirement': { status: 422, title: 'No outlet requires a flow', mend: 'State a `requiredFlow`.' },
  'no-installed-pump': {
    status: 422,
    title: 'The loop has no pump',
    mend: 'Name one, or state `installed`.',
  },
  'not-calibrated': {
    status: 422,
    title: 'The readings tell no factor to be used',
    mend: 'Take the readings that `nextReadings` names, mend those of `misfits`.',
  },
  unsolved: {
    status: 422,
    title: 'The loop could not be solved',
    mend: 'Look for extreme lengths, bores or flows.',
  },
  'version-required': {
    status: 428,
    title: 'The version that is to be changed is not stated',
    mend: 'Send the ETag in If-Match, or `*`.',
  },
  'headers-too-large': {
    status: 431,
    title: 'Address and headers are too large',
    mend: 'Send fewer or shorter headers.',
  },
  'internal-error': { status: 500, title: 'The service has failed', mend: 'Report `requestId`.' },
  unavailable: { status: 503, title: 'The service is not ready', mend: 'Try again after Retry-After.' },
  'storage-full': { status: 507, title: 'There is no room to store it' },
} as const satisfies Record<string, ProblemKind>;

export type ProblemCode = keyof typeof PROBLEMS;

export const problemKind = (code: ProblemCode): ProblemKind => PROBLEMS[code];
