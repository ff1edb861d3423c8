/** Reads the text of a request body of an expected media type. */
import { failed, type Result, success } from '../../curves/result.ts';
import { type Problem, problem } from './problem.ts';
import { BODY_MAX, readBody } from './read-body.ts';

const CHARSET = /^charset="?utf-8"?$/i;

function isType(contentType: string, mediaType: string): boolean {
  const [essence = '', ...parameters] = contentType.split(';').map((part) => part.trim());
  const charset = parameters.find((parameter) => /^charset=/i.test(parameter));
  return essence.toLowerCase() === mediaType && (charset === undefined || CHARSET.test(charset));
}

const wrongType = (mediaType: string, found: string | null): Problem =>
  problem(
    'unsupported-media-type',
    `The body must be ${mediaType} in UTF-8, not ${found === null ? 'of an unstated type' : `"${found}"`}.`,
    { errors: [{ header: 'Content-Type', detail: `must be ${mediaType}` }] },
  );

/** A byte order mark at the start is dropped. */
function decodeUtf8(bytes: Uint8Array): Result<string, Problem> {
  try {
    return success(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return failed(problem('malformed-utf8', 'The body holds bytes that are not UTF-8.'));
  }
}

/** `limit` in bytes. */
export async function bodyText(
  request: Request,
  mediaType: string,
  limit = BODY_MAX,
): Promise<Result<string, Problem>> {
  const contentType = request.headers.get('content-type');
  if (contentType !== null && !isType(contentType, mediaType))
    return failed(wrongType(mediaType, contentType));
  const coding = request.headers.get('content-encoding');
  if (coding !== null && coding.toLowerCase() !== 'identity') {
    const errors = [{ header: 'Content-Encoding', detail: 'must be absent' }];
    return failed(problem('unsupported-media-type', 'A compressed body is not read here.', { errors }));
  }
  const bytes = await readBody(request, limit);
  if (!bytes.ok) return bytes;
  if (bytes.value.byteLength === 0) {
    return failed(problem('missing-body', `The request needs a body of ${mediaType}.`));
  }
  if (contentType === null) return failed(wrongType(mediaType, null));
  return decodeUtf8(bytes.value);
}
