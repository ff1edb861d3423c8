/** Describes a job, which computes plain data from plain data and so has the same outcome in every thread. */

/** A job as a worker thread does it: found by its name, with all that it needs. */
export interface SentJob<Sent, Plain> {
  readonly name: string;
  readonly computeSent: (sent: Sent) => Plain | Promise<Plain>;
}

/** `Ready` is what the job computes on, which this thread keeps ready. */
export interface Job<Ready, Work, Computed, Sent, Plain = Computed> extends SentJob<Sent, Plain> {
  /** Whether the work would delay other requests, judged by its size. */
  readonly isLong: (ready: Ready, work: Work) => boolean;
  readonly compute: (ready: Ready, work: Work) => Computed | Promise<Computed>;
  /** All that another thread needs, as plain data. */
  readonly send: (ready: Ready, work: Work) => Sent;
  /** What `compute` gives, from what another thread gave. */
  readonly receive: (plain: Plain, ready: Ready, work: Work) => Computed;
}

/** A job that needs nothing but its work. */
export type PlainJob<Work, Computed> = Job<null, Work, Computed, Work>;

export const plainJob = <Work, Computed>({
  name,
  isLong,
  compute,
}: {
  readonly name: string;
  readonly isLong: (work: Work) => boolean;
  readonly compute: (work: Work) => Computed | Promise<Computed>;
}): PlainJob<Work, Computed> => ({
  name,
  isLong: (_ready, work) => isLong(work),
  compute: (_ready, work) => compute(work),
  send: (_ready, work) => work,
  computeSent: compute,
  receive: (computed) => computed,
});
