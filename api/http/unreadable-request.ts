/** Answers what the listener could not read as a request: too long a head, too slow, or no HTTP at all. */
import { STATUS_CODES } from 'node:http';
import { type Problem, problem } from './problem.ts';
import { problemKind } from './problem-registry.ts';
import { PROBLEM_MEDIA_TYPE, problemBody } from './problem-response.ts';

/** Bytes of all headers and the address together that are read. */
export const HEAD_MAX = 32 * 1024;

/** As the parser of Node reports it; `rawPacket` is what came last. */
interface Unreadable {
  readonly code?: string | undefined;
  readonly rawPacket?: Uint8Array | undefined;
}

const REQUEST_LINE = /^[A-Z]{1,20} (\/[^ ?]{0,2000})/;

function problemOf(code: string | undefined): Problem {
  switch (code) {
    case 'HPE_HEADER_OVERFLOW':
      return problem('headers-too-large', `Address and headers have more than ${HEAD_MAX} bytes.`, {
        limit: HEAD_MAX,
      });
    case 'ERR_HTTP_REQUEST_TIMEOUT':
      return problem('too-slow', 'The request did not come in full within the time that is waited for it.');
    default:
      return problem('malformed-request', 'What came cannot be read as a request of HTTP/1.1.');
  }
}

/** The whole response, head and body, for a connection that is then closed. */
export function unreadableAnswer({ code, rawPacket }: Unreadable, requestId: string): string {
  const found = problemOf(code);
  const start = rawPacket === undefined ? '' : Buffer.from(rawPacket.subarray(0, 2048)).toString('latin1');
  const [, path = '/'] = REQUEST_LINE.exec(start) ?? [];
  const body = JSON.stringify(problemBody(found, { path, requestId }));
  const { status } = problemKind(found.code);
  const head = [
    `HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ''}`,
    `Content-Type: ${PROBLEM_MEDIA_TYPE}`,
    `Content-Length: ${Buffer.byteLength(body)}`,
    `X-Request-Id: ${requestId}`,
    'Connection: close',
  ];
  return `${head.join('\r\n')}\r\n\r\n${body}`;
}
