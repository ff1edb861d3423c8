/** A job runs in this thread where it is short, else in a worker thread; it is refused where too many jobs wait. */
import { failed, type Result, success } from '../../curves/result.ts';
import type { Job } from '../threads/job.ts';
import { TooMuchWaiting, type WorkerPool } from '../threads/worker-pool.ts';
import { type Problem, problem } from './problem.ts';

const RETRY_AFTER_SECONDS = 5;

export async function runJob<Ready, Work, Computed, Sent, Plain>(
  workers: WorkerPool,
  job: Job<Ready, Work, Computed, Sent, Plain>,
  { ready, work }: { readonly ready: Ready; readonly work: Work },
): Promise<Result<Computed, Problem>> {
  if (!job.isLong(ready, work)) return success(await job.compute(ready, work));
  try {
    const plain = await workers.run(job, job.send(ready, work));
    return success(job.receive(plain, ready, work));
  } catch (error) {
    if (!(error instanceof TooMuchWaiting)) throw error;
    const headers = { 'Retry-After': String(RETRY_AFTER_SECONDS) };
    return failed(problem('unavailable', 'Too much long work is waiting; try again soon.', { headers }));
  }
}
