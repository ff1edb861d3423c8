/** A worker thread does one job at a time, found by its name. */
import { jobNamed } from './jobs.ts';

export interface Task {
  readonly name: string;
  readonly sent: never;
}

const runTask = ({ name, sent }: Task): unknown => jobNamed(name).computeSent(sent);

export default runTask;
