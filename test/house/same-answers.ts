/**
 * Writes what the service answers to invented questions, so that two checkouts of the project can be compared byte for byte:
 *
 *   node --import tsx test/house/same-answers.ts OUT_FILE
 *
 * A change that is to change no answer leaves that file as it was (`cmp`). A line is a label, a colon and the status, a space, and
 * the body with its line ends written as \r and \n. Seeds are fixed, the clock does not move, ids are counted.
 */
import { closeSync, openSync, writeSync } from 'node:fs';
import { answersOf, KINDS } from './same-answers/answers.ts';

const [, , outFile] = process.argv;
if (outFile === undefined) {
  process.stderr.write('usage: node --import tsx test/house/same-answers.ts OUT_FILE\n');
  process.exit(2);
}

const file = openSync(outFile, 'w');
for (const kind of KINDS) {
  const started = Date.now();
  const counts = new Map<number, number>();
  for await (const { label, status, text } of answersOf(kind, kind.count)) {
    writeSync(file, `${label}:${status} ${text}\n`);
    counts.set(status, (counts.get(status) ?? 0) + 1);
  }
  const byStatus = [...counts].map(([status, count]) => `${count} of ${status}`).join(', ');
  process.stdout.write(`${kind.name}: ${byStatus}; ${((Date.now() - started) / 1000).toFixed(1)} s\n`);
}
closeSync(file);
