/**
 * Writes what the solver finds for invented loops, so that a later solver can be compared with it:
 *
 *   node --import tsx test/models/network/recorded/record-flows.ts OUT_FILE
 */
import { writeFileSync } from 'node:fs';
import { recordedCases } from './recorded-cases.ts';

const [, , outFile] = process.argv;
if (outFile === undefined) {
  process.stderr.write('usage: node --import tsx test/models/network/recorded/record-flows.ts OUT_FILE\n');
  process.exit(2);
}
const lines = recordedCases().map((one) => JSON.stringify(one));
writeFileSync(outFile, `[\n${lines.join(',\n')}\n]\n`);
