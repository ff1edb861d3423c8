import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { type SourceFile, sourceFiles } from './source-files.ts';

const FILE_LINES = 300;
const FUNCTION_LINES = 60;
const MEDIAN_LINES = 90;

const lines = (text: string): number => text.split('\n').length - 1;

/** Functions with a body of their own that are longer than a screen. */
function longFunctions({ path, text }: SourceFile): readonly string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body !== undefined) {
      const from = source.getLineAndCharacterOfPosition(node.getStart()).line;
      const to = source.getLineAndCharacterOfPosition(node.end).line;
      if (to - from + 1 > FUNCTION_LINES) found.push(`${path}:${from + 1} (${to - from + 1} lines)`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

describe('the size of things', () => {
  const sources = sourceFiles('api', 'models', 'curves');

  it(`keeps every source file within ${FILE_LINES} lines`, () => {
    const long = sources.filter(({ text }) => lines(text) > FILE_LINES).map(({ path }) => path);
    expect(long).toEqual([]);
  });

  it(`keeps the median source file within ${MEDIAN_LINES} lines`, () => {
    const sorted = sources.map(({ text }) => lines(text)).sort((a, b) => a - b);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(MEDIAN_LINES);
  });

  it(`keeps every function within ${FUNCTION_LINES} lines`, () => {
    expect(sources.flatMap(longFunctions)).toEqual([]);
  });
});
