/** The bytes of a request body, up to a limit. */
import { failed, type Result, success } from '../../curves/result.ts';
import { type Problem, problem } from './problem.ts';

export const BODY_MAX = 1024 * 1024;

const tooLarge = (actual?: number): Problem =>
  problem('body-too-large', `The body is larger than ${BODY_MAX} bytes.`, {
    limit: BODY_MAX,
    ...(actual === undefined ? {} : { actual }),
  });

/** Without a stated length the stream is read piece by piece, so that an endless one is given up at the limit. */
async function readStream(stream: ReadableStream<Uint8Array>): Promise<Result<Uint8Array, Problem>> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of stream) {
    size += chunk.byteLength;
    if (size > BODY_MAX) return failed(tooLarge());
    chunks.push(chunk);
  }
  return success(Buffer.concat(chunks));
}

/** An absent body has no bytes. A stated length is read in one go: touching the stream costs the server its fast path. */
export async function readBody(request: Request): Promise<Result<Uint8Array, Problem>> {
  const length = request.headers.get('content-length');
  if (length === null || request.headers.has('transfer-encoding')) {
    return request.body === null ? success(new Uint8Array()) : readStream(request.body);
  }
  if (!/^\d{1,15}$/.test(length)) return failed(tooLarge());
  if (Number(length) > BODY_MAX) return failed(tooLarge(Number(length)));
  return success(new Uint8Array(await request.arrayBuffer()));
}
