/** Does long jobs in the thread that asks for them, in programs that answer nobody else meanwhile. */
import type { WorkerPool } from './worker-pool.ts';

export const sameThread: WorkerPool = {
  run: async ({ computeSent }, sent) => computeSent(sent),
  close: async () => {},
};
