/** What a worker thread runs: one job by its name. */
import { type JobInputs, type JobName, runJob } from './jobs.ts';

export interface Task<Name extends JobName> {
  readonly name: Name;
  readonly input: JobInputs[Name];
}

const runTask = <Name extends JobName>({ name, input }: Task<Name>) => runJob(name, input);

export default runTask;
