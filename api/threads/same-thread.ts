/** Long work in the thread that asks for it: for programs that answer nobody else meanwhile. */

import { runJob } from '../jobs.ts';
import type { HeavyWork } from './worker-pool.ts';

export const inlineWork: HeavyWork = {
  run: async (name, input) => runJob(name, input),
  close: async () => {},
};
