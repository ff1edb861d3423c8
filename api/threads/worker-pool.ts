/** Does long jobs in worker threads, so that these do not delay the requests that the main thread answers. */
import { Piscina } from 'piscina';
import type { SentJob } from './job.ts';

export interface WorkerPool {
  /** Rejects with `TooMuchWaiting` when the queue is full. */
  run<Sent, Plain>(job: SentJob<Sent, Plain>, sent: Sent): Promise<Plain>;
  close(): Promise<void>;
}

/** More jobs are waiting than the service takes on. */
export class TooMuchWaiting extends Error {}

const THREADS = 2;
const WAITING_MOST = 32;

/** `workerFile` exports, by default, a function of a name and what is sent. Threads start with the first job and end after a minute without one. */
export function workerPool(workerFile: URL): WorkerPool {
  const pool = new Piscina({
    filename: workerFile.href,
    minThreads: 0,
    maxThreads: THREADS,
    maxQueue: WAITING_MOST,
    idleTimeout: 60_000,
  });
  return {
    run: ({ name }, sent) => {
      if (pool.queueSize >= WAITING_MOST) return Promise.reject(new TooMuchWaiting());
      return pool.run({ name, sent });
    },
    close: () => pool.close(),
  };
}
