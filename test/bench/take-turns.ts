/** Two jobs timed in turns, so that whatever else the machine does falls on both alike. */
import { median } from './median.ts';

export interface Turns {
  /** Milliseconds of processor time of one run, each the median of all rounds: others on the machine count less than in time by the clock. */
  readonly first: number;
  readonly second: number;
  /** Median over the rounds of first/second. */
  readonly ratio: number;
}

/** Rounds before those that count, in which the code is compiled. */
const WARM_UP_ROUNDS = 3;

const MICROSECONDS = 1000;

function millisecondsOf(job: () => void, runs: number): number {
  globalThis.gc?.();
  const start = process.cpuUsage();
  for (let run = 0; run < runs; run++) job();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / MICROSECONDS / runs;
}

/** Each round runs the first job `firstRuns` times, then the second `secondRuns` times; which goes first changes by the round. */
export function takeTurns({
  first,
  second,
  rounds,
  firstRuns = 1,
  secondRuns = 1,
}: {
  readonly first: () => void;
  readonly second: () => void;
  readonly rounds: number;
  readonly firstRuns?: number;
  readonly secondRuns?: number;
}): Turns {
  const firsts: number[] = [];
  const seconds: number[] = [];
  const ratios: number[] = [];
  for (let round = -WARM_UP_ROUNDS; round < rounds; round++) {
    const isEven = round % 2 === 0;
    const before = isEven ? millisecondsOf(first, firstRuns) : null;
    const secondTime = millisecondsOf(second, secondRuns);
    const firstTime = before ?? millisecondsOf(first, firstRuns);
    if (round < 0) continue;
    firsts.push(firstTime);
    seconds.push(secondTime);
    ratios.push(firstTime / secondTime);
  }
  return { first: median(firsts), second: median(seconds), ratio: median(ratios) };
}
