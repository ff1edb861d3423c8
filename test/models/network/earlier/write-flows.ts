/**
 * Writes what the solver finds for invented loops, so that a later solver can be compared with it:
 *
 *   node --import tsx test/models/network/earlier/write-flows.ts OUT_FILE
 */
import { writeFileSync } from 'node:fs';
import { plainCases } from './plain-cases.ts';

const [, , outFile] = process.argv;
if (outFile === undefined) {
  process.stderr.write('usage: node --import tsx test/models/network/earlier/write-flows.ts OUT_FILE\n');
  process.exit(2);
}
const lines = plainCases().map((one) => JSON.stringify(one));
writeFileSync(outFile, `[\n${lines.join(',\n')}\n]\n`);
