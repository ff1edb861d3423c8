/** Runs every benchmark, prints one table, and fails when a ratio does not hold. */
import type { BenchRow } from './bench-row.ts';
import { benchTable } from './bench-table.ts';
import { designBench } from './design-bench.ts';
import { leastSquaresBench } from './least-squares-bench.ts';
import { readingsBench } from './readings-bench.ts';
import { recommendationBench } from './recommendation-bench.ts';
import { scheduleBench } from './schedule-bench.ts';
import { selectionBench } from './selection-bench.ts';
import { setpointBench } from './setpoint-bench.ts';
import { summaryBench } from './summary-bench.ts';

const rows: BenchRow[] = [];
for (const bench of [
  selectionBench,
  designBench,
  leastSquaresBench,
  recommendationBench,
  scheduleBench,
  setpointBench,
  summaryBench,
  readingsBench,
]) {
  rows.push(...(await bench()));
}
process.stdout.write(`${benchTable(rows)}\n`);
if (rows.some(({ holds }) => !holds)) process.exitCode = 1;
