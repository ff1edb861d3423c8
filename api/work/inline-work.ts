/** Long work in the thread that asks for it: for programs that answer nobody else meanwhile. */
import type { HeavyWork } from './heavy-work.ts';
import { runJob } from './jobs.ts';

export const inlineWork: HeavyWork = {
  run: async (name, input) => runJob(name, input),
  close: async () => {},
};
