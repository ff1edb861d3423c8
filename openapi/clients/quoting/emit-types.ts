/** Writes document.d.ts, the types of the interface, from openapi/openapi.json; with `--check` fails where it is stale. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import openapiTypescript, { astToString } from 'openapi-typescript';

const DOCUMENT = new URL('../../openapi.json', import.meta.url);
const TYPES = fileURLToPath(new URL('document.d.ts', import.meta.url));

const HEADER = `/** The types of the interface; \`emit-types.ts\` writes them from openapi/openapi.json. */
`;

/** The types as they should stand. */
export async function typesText(): Promise<string> {
  // A field with a default may be left out of a request.
  const nodes = await openapiTypescript(DOCUMENT, { defaultNonNullable: false });
  // Only what the client imports is offered, and the words stay in the document: a change of them is none of the types.
  const text = astToString(nodes)
    .replaceAll(/^export ((?:type|interface) (?!paths\b|components\b))/gm, '$1')
    .replaceAll(/^ *\/\*\*[\s\S]*?\*\/\n/gm, '');
  return `${HEADER}${text}`;
}

export const currentTypes = (): string => readFileSync(TYPES, 'utf8');

const [, script, flag] = process.argv;
if (script !== undefined && import.meta.url === pathToFileURL(script).href) {
  const text = await typesText();
  if (flag !== '--check') writeFileSync(TYPES, text);
  else if (text !== currentTypes()) {
    process.stderr.write('openapi/clients/quoting/document.d.ts is stale: run `npm run openapi`.\n');
    process.exitCode = 1;
  }
}
