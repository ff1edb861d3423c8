import { describe, expect, it } from 'vitest';
import { type SourceFile, sourceFiles } from './source-files.ts';

/** What a pure function cannot use: clock, chance, environment, console, timers, network. */
const IMPURE =
  /\b(?:Date\.now|new Date\(\)|Math\.random|performance\.|process\.|console\.|setTimeout|setInterval|fetch\()/;
const QUIETED = /(?:@ts-ignore|@ts-expect-error|biome-ignore|\bas unknown as\b)/;
const HEADER = /^\/\*\* /;
const BARREL = /^export \* from/m;

const pathsWhere = (files: readonly SourceFile[], isOf: (file: SourceFile) => boolean) =>
  files.filter(isOf).map(({ path }) => path);

describe('the habits of the sources', () => {
  const pure = sourceFiles('models', 'curves');
  const sources = [...pure, ...sourceFiles('api')];
  const written = sources.filter(({ path }) => !path.endsWith('.d.ts'));

  it('keeps models and curves free of clock, chance, environment and output', () => {
    expect(pathsWhere(pure, ({ text }) => IMPURE.test(text))).toEqual([]);
  });

  it('never quiets the compiler or the linter', () => {
    expect(pathsWhere(sources, ({ text }) => QUIETED.test(text))).toEqual([]);
  });

  it('opens every source file with what it is for', () => {
    expect(pathsWhere(written, ({ text }) => !HEADER.test(text))).toEqual([]);
  });

  it('has no file that only passes on what others export', () => {
    expect(pathsWhere(sources, ({ text }) => BARREL.test(text))).toEqual([]);
  });

  it('compares numbers by a stated tolerance, never by digits', () => {
    const tests = sourceFiles('test').filter(({ path }) => !path.startsWith('test/house/'));
    expect(pathsWhere(tests, ({ text }) => text.includes('toBeCloseTo'))).toEqual([]);
  });
});
