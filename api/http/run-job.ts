/** Long work handed to a worker thread, refused where too much of it waits. */
import { failed, type Result, success } from '../../curves/result.ts';
import type { JobInputs, JobName, JobResults } from '../jobs.ts';
import { type HeavyWork, TooMuchWaiting } from '../threads/worker-pool.ts';
import { type Problem, problem } from './problem.ts';

const RETRY_AFTER_SECONDS = 5;

export async function runHeavy<Name extends JobName>(
  heavyWork: HeavyWork,
  name: Name,
  input: JobInputs[Name],
): Promise<Result<JobResults[Name], Problem>> {
  try {
    return success(await heavyWork.run(name, input));
  } catch (error) {
    if (!(error instanceof TooMuchWaiting)) throw error;
    const headers = { 'Retry-After': String(RETRY_AFTER_SECONDS) };
    return failed(problem('unavailable', 'Too much long work is waiting; try again soon.', { headers }));
  }
}
