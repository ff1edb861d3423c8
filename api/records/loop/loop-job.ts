/** Makes a job that computes on a compiled loop: the one kept here, or in a worker thread one compiled there. */
import type { Loop } from '../../../models/loop/loop.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import type { Job } from '../../threads/job.ts';
import { compiled } from './compile.ts';

export interface SentLoop<Work> {
  /** With its calibration. */
  readonly loop: Loop;
  readonly work: Work;
}

export const sendLoop = <Work>({ entered }: CompiledLoop, work: Work): SentLoop<Work> => ({
  loop: entered,
  work,
});

export type LoopJob<Work, Computed> = Job<CompiledLoop, Work, Computed, SentLoop<Work>>;

export const loopJob = <Work, Computed>({
  name,
  isLong,
  compute,
}: Pick<LoopJob<Work, Computed>, 'name' | 'isLong' | 'compute'>): LoopJob<Work, Computed> => ({
  name,
  isLong,
  compute,
  send: sendLoop,
  computeSent: ({ loop, work }) => compute(compiled(loop), work),
  receive: (computed) => computed,
});
