/** Prints all that breaks the rules of plain words and of the glossary; exits 1 where a finished room does. */
import { commentTexts, documentTexts, exampleTexts, guideTexts } from './collected-texts.ts';
import { glossaryFindings, ONE_TYPE, RETIRED_NAME } from './glossary-rules.ts';
import { RETIRED_NAMES } from './retired-names.ts';
import { UNWRITTEN_ROOMS } from './unwritten-rooms.ts';
import { type Finding, wordFindings } from './word-rules.ts';

const texts = [
  ...documentTexts(),
  ...exampleTexts(),
  ...['README.md', 'DEVELOPERS.md', '.deploy/README.md'].flatMap(guideTexts),
  ...commentTexts('models', 'curves', 'api'),
];
const findings = [...glossaryFindings(RETIRED_NAMES), ...wordFindings(texts)];
/** Names change with the answers that carry them. */
const OF_NAMES: ReadonlySet<string> = new Set([ONE_TYPE, RETIRED_NAME]);

const isUnwritten = ({ where }: Finding): boolean => UNWRITTEN_ROOMS.some((room) => room.where.test(where));
const due = findings.filter((finding) => !isUnwritten(finding) && !OF_NAMES.has(finding.rule));

for (const { where, rule, text } of findings) console.log(`${where}\n  ${rule}\n  ${text}`);
console.log(`${texts.length} texts, ${findings.length} to be rewritten, ${due.length} of them now`);
process.exitCode = due.length === 0 ? 0 : 1;
