/** Writes a sheet (flat OpenDocument) whose cells ask the service for its loops: `make-sheet.ts <address> <file>`. */
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

interface Named {
  readonly id: string;
  /** What people call it by, where they gave it a key. */
  readonly key?: string;
  readonly name: string;
}

interface Question {
  readonly loop: string;
  readonly pump: string;
  readonly outlet: string;
}

interface List<Item> {
  readonly items: readonly Item[];
}

interface DutyPoint {
  readonly pump: Named;
  readonly outlets: readonly { readonly name: string }[];
}

interface Recommendation {
  readonly best: DutyPoint | null;
}

async function asked<Answer>(address: string): Promise<Answer> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status} ${await response.text()}`);
  const answer: Answer = JSON.parse(await response.text());
  return answer;
}

const called = ({ key, id }: Named): string => key ?? id;

/** Each outlet of each loop that has a pump: with that pump, and with the one to have. */
async function questionsOf(service: string): Promise<readonly Question[]> {
  const { items } = await asked<List<Named & { readonly installed?: unknown }>>(
    `${service}/v1/loops?limit=200`,
  );
  const questions: Question[] = [];
  for (const record of items) {
    if (record.installed === undefined) continue;
    const loop = called(record);
    const path = `${service}/v1/loops/${loop}`;
    const now = await asked<DutyPoint>(`${path}/duty-point`);
    const { best } = await asked<Recommendation>(`${path}/recommendation`);
    for (const pump of new Set([called(now.pump), called(best?.pump ?? now.pump)]))
      questions.push(...now.outlets.map(({ name: outlet }) => ({ loop, pump, outlet })));
  }
  return questions;
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const text = (value: string): string =>
  `<table:table-cell office:value-type="string"><text:p>${escaped(value)}</text:p></table:table-cell>`;

const formula = (value: string): string =>
  `<table:table-cell table:formula="${escaped(`of:=${value}`)}"></table:table-cell>`;

const row = (...cells: readonly string[]): string => `<table:table-row>${cells.join('')}</table:table-row>`;

/** The figures, in D to H, of the loop, pump and outlet in A to C. */
const rowOf = ({ loop, pump, outlet }: Question, place: number): string => {
  const at = place + 4;
  const where = `[.$B$1];[.A${at}];[.B${at}]`;
  const power = `[.$B$1]&"/v1/loops/"&[.A${at}]&"/recommendation?pump="&[.B${at}]&"&pointer=/best/power"`;
  return row(
    text(loop),
    text(pump),
    text(outlet),
    formula(`LOOPSETTING(${where})`),
    formula(`LOOPYEARLYENERGY(${where})`),
    formula(`LOOPYEARLYCOST(${where})`),
    formula(`LOOPOUTLETFLOW(${where};[.C${at}])`),
    formula(`IFERROR(VALUE(COM.MICROSOFT.WEBSERVICE(${power}));"no value")`),
  );
};

const NAMESPACES = [
  'office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"',
  'table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"',
  'text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"',
  'of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"',
].map((namespace) => `xmlns:${namespace}`);

/** The sheet as text. */
export async function sheetOf(service: string): Promise<string> {
  const questions = await questionsOf(service);
  const rows = [
    row(text('Service'), text(service)),
    row(),
    row(...['Loop', 'Pump', 'Outlet', 'Setting', 'kWh a year', 'Cost a year', 'Flow', 'Power'].map(text)),
    ...questions.map(rowOf),
  ];
  return `<?xml version="1.0" encoding="UTF-8"?>
<office:document ${NAMESPACES.join(' ')} office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:body><office:spreadsheet><table:table table:name="Loops">
${rows.join('\n')}
</table:table></office:spreadsheet></office:body>
</office:document>
`;
}

const [, script, service = 'http://127.0.0.1:8080', file = 'loops.fods'] = process.argv;
if (script !== undefined && import.meta.url === pathToFileURL(script).href) {
  writeFileSync(file, await sheetOf(service));
}
