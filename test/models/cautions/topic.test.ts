/** What a topic gives of its rows, and that every topic is part of the catalogue. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { packageFolder } from '../../../api/http/examples.ts';
import { CAUTION_TABLE, CAUTIONS } from '../../../models/cautions/catalogue.ts';
import { topic } from '../../../models/cautions/topic.ts';

const LEAKS = topic({
  drip: { severity: 'note', text: 'Water drips.', source: 'a test' },
  flood: { severity: 'danger', text: 'Water runs.', source: 'a test' },
});

describe('a topic', () => {
  it('gives a row under its code, with what it is about in brackets', () => {
    expect(LEAKS.give('drip')).toEqual({
      ...{ code: 'drip', severity: 'note', detail: 'Water drips.', source: 'a test' },
    });
    expect(LEAKS.give('flood', ['pump', 'tank']).detail).toBe('Water runs. (pump, tank)');
  });

  it('gives a caution where its condition holds, and nothing else', () => {
    expect(LEAKS.when(true, 'flood', ['tank'])).toEqual([LEAKS.give('flood', ['tank'])]);
    expect(LEAKS.when(false, 'flood', ['tank'])).toEqual([]);
  });

  it('names five of several subjects and counts the others', () => {
    const subjects = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
    const detailOf = (count: number) => LEAKS.about('drip', subjects.slice(0, count))[0]?.detail;
    expect(detailOf(0)).toBeUndefined();
    expect(detailOf(1)).toBe('Water drips. (a)');
    expect(detailOf(5)).toBe('Water drips. (a, b, c, d, e)');
    expect(detailOf(6)).toBe('Water drips. (a, b, c, d, e, and 1 more)');
    expect(detailOf(7)).toBe('Water drips. (a, b, c, d, e, and 2 more)');
  });
});

describe('the catalogue', () => {
  const folder = join(packageFolder(), 'models', 'cautions');
  const files = readdirSync(folder).filter((name) => name.endsWith('.ts'));

  it.each(files)('has every row of the topics in %s', async (file) => {
    const exported: Record<string, unknown> = await import(join(folder, file));
    for (const value of Object.values(exported)) {
      if (typeof value !== 'object' || value === null || !('rows' in value)) continue;
      expect(CAUTIONS).toMatchObject(Object(value.rows));
    }
  });

  it('has each code of its topics once', () => {
    const codes = CAUTION_TABLE.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    // Each code has a row of its own: topics with a code in common would have fewer codes than rows.
    const sentences = CAUTION_TABLE.map(({ text: sentence }) => sentence);
    expect(new Set(sentences).size).toBe(sentences.length);
  });
});
