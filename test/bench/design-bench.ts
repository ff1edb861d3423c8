/** How the choice of sizes and pump grows with the runs of a loop. */
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

export async function designBench(): Promise<readonly BenchRow[]> {
  const usual = runsToSize(EXTENT);
  const twice = runsToSize({ ...EXTENT, runs: 2 * EXTENT.runs - 1 });
  const { first, second, ratio } = takeTurns({
    first: () => solved(twice),
    second: () => solved(usual),
    rounds: ROUNDS,
  });
  return [
    benchRow({
      name: 'design of 121 runs / 61 runs, 8 sizes each, 50 pumps at 71 settings',
      ratio,
      limit: { atMost: 4 },
      detail: `121 runs ${first.toFixed(0)} ms, 61 runs ${second.toFixed(0)} ms`,
    }),
  ];
}
