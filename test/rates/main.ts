/** Simulates loops, prints the rates at which answers are right beside what they must keep, and fails where one does not. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { RateRow } from './row.ts';
import { SUBJECTS } from './rows.ts';

const HEAD = `# Rates

Simulated loops, seeded; what the errors of meters, faults and entries are is stated in the row and in test/rates. Made by \`npm run rates\`.
`;

const line = ({ name, figure, limit, holds }: RateRow): string =>
  `| ${name} | ${figure} | ${limit} | ${holds ? '' : 'missed'} |`;

const wanted = process.argv.slice(2);
const parts = [HEAD];
let missed = 0;
for (const { name, rows, loops } of SUBJECTS) {
  if (wanted.length > 0 && !wanted.some((one) => name.toLowerCase().includes(one))) continue;
  const found = rows({ loops });
  missed += found.filter(({ holds }) => !holds).length;
  const part = [`## ${name}`, '', '| | rate | limit | |', '|---|---|---|---|', ...found.map(line), ''].join(
    '\n',
  );
  process.stdout.write(`${part}\n`);
  parts.push(part);
}
if (wanted.length === 0) writeFileSync(join(import.meta.dirname, 'RESULTS.md'), parts.join('\n'));
if (missed > 0) process.exitCode = 1;
