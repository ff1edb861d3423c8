/** Where long work runs: beside the thread that answers requests, so that a big batch does not delay a small question. */
import { Piscina } from 'piscina';
import type { JobInputs, JobName, JobResults } from '../jobs.ts';

export interface HeavyWork {
  /** Rejects with `TooMuchWaiting` when the queue is full. */
  run<Name extends JobName>(name: Name, input: JobInputs[Name]): Promise<JobResults[Name]>;
  close(): Promise<void>;
}

/** More work is waiting than the service takes on. */
export class TooMuchWaiting extends Error {}

const THREADS = 2;
const WAITING_MOST = 32;

/** Threads start when the first job comes, and end after a minute without one. */
export function workerPool(): HeavyWork {
  const extension = import.meta.url.endsWith('.ts') ? 'ts' : 'js';
  const pool = new Piscina({
    filename: new URL(`../worker.${extension}`, import.meta.url).href,
    minThreads: 0,
    maxThreads: THREADS,
    maxQueue: WAITING_MOST,
    idleTimeout: 60_000,
  });
  return {
    run: (name, input) => {
      if (pool.queueSize >= WAITING_MOST) return Promise.reject(new TooMuchWaiting());
      return pool.run({ name, input });
    },
    close: () => pool.close(),
  };
}
