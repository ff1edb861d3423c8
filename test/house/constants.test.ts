/** Factors of time and units are written once: a figure that everybody knows has one name in one room. */
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';

/** Rooms that own a figure, by how it is written. */
const OWNED: readonly (readonly [RegExp, readonly string[]])[] = [
  [/\b(?:3_?600|86_?400|86_?400_?000|1_?440|365\.25)\b/, ['models/calendar/']],
  [/\b9\.80665\b/, ['models/physics/gravity.ts']],
  [/\b0\.0254\b/, ['models/physics/unit-factors.ts']],
];

/** Of the conditions of a loop, which count years of their own until they are written again. */
const LEFT_OUT = ['models/condition/', 'api/features/condition/'];

/** The code without comments, strings and examples of schemas. */
const codeOf = (text: string): string =>
  text
    .replaceAll(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, '')
    .replaceAll(/'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g, "''")
    .replaceAll(/\bexamples?: [^,\n]*/g, '');

describe('a figure that everybody knows', () => {
  const sources = sourceFiles('api', 'models', 'curves').filter(
    ({ path }) => !LEFT_OUT.some((prefix) => path.startsWith(prefix)),
  );

  it.each(OWNED)('written as %s is written by its owner alone', (written, owners) => {
    const copies = sources.filter(
      ({ path, text }) => written.test(codeOf(text)) && !owners.some((owner) => path.startsWith(owner)),
    );
    expect(copies.map(({ path }) => path)).toEqual([]);
  });
});
