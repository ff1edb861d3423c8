/** Prints what breaks the rules of plain words and of the glossary; exits 1 where something does. */
import { commentTexts, documentTexts, exampleTexts, guideTexts } from './collected-texts.ts';
import { glossaryFindings } from './glossary-rules.ts';
import { RETIRED_NAMES } from './retired-names.ts';
import { wordFindings } from './word-rules.ts';

const texts = [
  ...documentTexts(),
  ...exampleTexts(),
  ...['README.md', 'DEVELOPERS.md', '.deploy/README.md'].flatMap(guideTexts),
  ...commentTexts('models', 'curves', 'api'),
];
const findings = [...glossaryFindings(RETIRED_NAMES), ...wordFindings(texts)];
for (const { where, rule, text } of findings) console.log(`${where}\n  ${rule}\n  ${text}`);
console.log(`${texts.length} texts, ${findings.length} to be rewritten`);
process.exit(findings.length === 0 ? 0 : 1);
