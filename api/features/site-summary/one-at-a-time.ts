/** Does long work one piece after the other, where it would occupy all worker threads. */
import { failed, type Result } from '../../../curves/result.ts';
import { type Problem, problem } from '../../http/problem.ts';

const WAITING_MOST = 8;
const RETRY_AFTER_SECONDS = 30;

/** Work handed to it waits for all that came before; refused where too much waits. */
export function oneAtATime() {
  let last: Promise<unknown> = Promise.resolve();
  let waiting = 0;
  return async <Value>(work: () => Promise<Result<Value, Problem>>): Promise<Result<Value, Problem>> => {
    if (waiting >= WAITING_MOST) {
      const headers = { 'Retry-After': String(RETRY_AFTER_SECONDS) };
      return failed(
        problem('unavailable', 'Too many summaries are being made; try again soon.', { headers }),
      );
    }
    waiting += 1;
    const before = last;
    const mine = before.then(work);
    last = mine.catch(() => undefined);
    try {
      return await mine;
    } finally {
      waiting -= 1;
    }
  };
}
