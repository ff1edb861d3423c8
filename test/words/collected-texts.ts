/** Collects the sentences that users and developers read. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from '../../api/http/examples.ts';
import { sourceFiles } from '../house/source-files.ts';

export interface Text {
  /** Where it is written: a file, and the place in it. */
  readonly where: string;
  readonly text: string;
}

/** Members of the OpenAPI document and of answers that hold sentences. */
const SENTENCES: ReadonlySet<string> = new Set(['description', 'summary', 'detail', 'text', 'title']);

/** Every sentence of a JSON value, with the pointer of its place. */
function sentencesIn(value: unknown, where: string): readonly Text[] {
  if (Array.isArray(value)) return value.flatMap((one, index) => sentencesIn(one, `${where}/${index}`));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, inner]) =>
    typeof inner === 'string'
      ? SENTENCES.has(name)
        ? [{ where: `${where}/${name}`, text: inner }]
        : []
      : sentencesIn(inner, `${where}/${name}`),
  );
}

const read = (path: string): string => readFileSync(join(packageFolder(), path), 'utf8');

export const documentTexts = (): readonly Text[] =>
  sentencesIn(JSON.parse(read('openapi/openapi.json')), 'openapi/openapi.json');

export function exampleTexts(): readonly Text[] {
  const folder = 'openapi/examples/answers';
  return readdirSync(join(packageFolder(), folder))
    .filter((name) => name.endsWith('.json'))
    .flatMap((name) => sentencesIn(JSON.parse(read(`${folder}/${name}`)), `${folder}/${name}`));
}

/** The sentences of a guide: code, tables and addresses left out, a paragraph or an item of a list each. */
export function guideTexts(path: string): readonly Text[] {
  const prose = read(path)
    .replace(/^```[\s\S]*?^```/gm, '')
    .replace(/^\|.*$/gm, '')
    .replace(/^#+ .*$/gm, '')
    .replace(/\]\([^)]*\)/g, ']');
  return prose
    .split(/\n\s*\n|\n(?=\s*(?:[-*]|\d+\.) )/)
    .map((text) => text.replace(/\s+/g, ' ').trim())
    .filter((text) => text !== '')
    .map((text) => ({ where: `${path}: ${text.slice(0, 40)}`, text }));
}

/** Doc comments in front of what a file exports, and the headers of files. */
export function commentTexts(...folders: readonly string[]): readonly Text[] {
  return sourceFiles(...folders).flatMap(({ path, text }) =>
    [...text.matchAll(/\/\*\*([\s\S]*?)\*\//g)].map((match) => ({
      where: `${path}:${text.slice(0, match.index).split('\n').length}`,
      text: (match[1] ?? '').replace(/^\s*\*\s?/gm, '').trim(),
    })),
  );
}
