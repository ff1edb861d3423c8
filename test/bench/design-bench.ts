/** How the choice of sizes and pump grows with the runs of a loop. */

import { type DesignWork, designJob } from '../../api/features/design/job.ts';
import { workerPool } from '../../api/threads/worker-pool.ts';
import { WORKER_FILE } from '../../api/worker-file.ts';
import { designs } from '../../models/designs/designs.ts';
import type { DesignQuestion } from '../../models/designs/search-designs.ts';
import { expectValue } from '../curves/expect-value.ts';
import { type BenchRow, benchRow } from './bench-row.ts';
import { runsToSize } from './runs-to-size.ts';
import { takeTurns } from './take-turns.ts';

const ROUNDS = 5;
const EXTENT = { runs: 61, sizes: 8, pumps: 50 };

function solved(question: DesignQuestion): void {
  const { best, optimalityGap } = expectValue(designs(question));
  if (best === null || optimalityGap > 0) throw new Error('a design was not proven to be the cheapest');
}

/** Which a request may take [ms]. */
const BUDGET = 2000;

/** The same question as a request asks it: sent to another thread, searched and run in its own loop there. */
async function inWorker(question: DesignQuestion): Promise<number> {
  const candidates = question.candidates.map(({ pump, count }) => ({ ...pump, count, id: null }));
  const work: DesignWork = { ...question, candidates };
  const workers = workerPool(WORKER_FILE);
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now();
    const done = await workers.run(designJob, designJob.send(null, work));
    times.push(performance.now() - start);
    if (expectValue(done).best === null) throw new Error('a design was not found in a worker');
  }
  await workers.close();
  // The first starts the thread.
  return Math.max(...times.slice(1));
}

export async function designBench(): Promise<readonly BenchRow[]> {
  const usual = runsToSize(EXTENT);
  const twice = runsToSize({ ...EXTENT, runs: 2 * EXTENT.runs - 1 });
  const { first, second, ratio } = takeTurns({
    first: () => solved(twice),
    second: () => solved(usual),
    rounds: ROUNDS,
  });
  const slowest = await inWorker(usual);
  return [
    benchRow({
      name: 'design of 121 runs / 61 runs, 8 sizes each, 50 pumps at 71 settings',
      ratio,
      limit: { atMost: 4 },
      detail: `121 runs ${first.toFixed(0)} ms, 61 runs ${second.toFixed(0)} ms`,
    }),
    benchRow({
      name: 'design of 61 runs, 8 sizes each, 50 pumps at 71 settings, in a worker / 2 s',
      ratio: slowest / BUDGET,
      limit: { atMost: 1 },
      detail: `slowest ${slowest.toFixed(0)} ms`,
    }),
  ];
}
