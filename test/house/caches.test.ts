/** Everything of the API that keeps what it made: each has a name, a bound, and a test that it gives nothing stale. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { packageFolder } from '../../api/http/examples.ts';
import { sourceFiles } from './source-files.ts';

/** What limits each, as its file calls it. What is kept with an object goes when the object goes. */
const WITH_OBJECT = 'WeakMap';

const CACHES = [
  { file: 'api/caches/once-per-object.ts', bound: 'VARIANTS_MAX' },
  { file: 'api/units/per-context.ts', bound: 'OTHERS_MAX' },
  { file: 'api/question/answer-cache.ts', bound: 'max' },
  { file: 'api/records/loop/compiled-loops.ts', bound: 'KEPT_BRANCHES' },
  { file: 'api/store/record-memory.ts', bound: 'KEPT_RECORDS', test: 'api/store/remembering-store' },
  { file: 'api/store/parsed-once.ts', bound: 'KEPT_CHARACTERS' },
  { file: 'api/store/prepared-once.ts', bound: 'KEPT_STATEMENTS' },
  { file: 'api/store/compiled-once.ts', bound: 'KEPT_LENGTHS' },
  { file: 'api/store/kind.ts', bound: WITH_OBJECT, test: 'api/store/contract' },
  { file: 'api/units/quantity-of.ts', bound: WITH_OBJECT, test: 'api/http/table-of' },
];

const KEEPS = /\bnew (?:LRUCache|WeakMap)\b|\b(?:kept|usual) = new Map</;

/** Answers have the bound of whoever asks for them, by a constant. */
const KEEPS_ANSWERS = /\banswerCache(?:<\w+>)?\(\{ max: (\w+) \}\)/g;

const sources = sourceFiles('api');

describe('what the API keeps', () => {
  it('is kept in the places that are named here', () => {
    const keeping = sources.filter(({ text }) => KEEPS.test(text)).map(({ path }) => path);
    expect(keeping.sort()).toEqual(CACHES.map(({ file }) => file).sort());
  });

  it.each(CACHES)('$file has a bound and a test', ({ file, bound, test }) => {
    const source = sources.find(({ path }) => path === file);
    expect(source?.text.match(new RegExp(`\\b${bound}\\b`, 'g'))?.length).toBeGreaterThanOrEqual(
      bound === WITH_OBJECT ? 1 : 2,
    );
    const path = `test/${test ?? file.replace(/\.ts$/, '')}.test.ts`;
    expect(existsSync(join(packageFolder(), path)), path).toBe(true);
  });

  it('is a bounded number of answers wherever answers are kept', () => {
    const bounds = sources.flatMap(({ text }) => [...text.matchAll(KEEPS_ANSWERS)].map(([, name]) => name));
    expect(bounds.sort()).toEqual(['KEPT_LOOPS', 'KEPT_PLANS', 'KEPT_RECOMMENDATIONS']);
  });
});
