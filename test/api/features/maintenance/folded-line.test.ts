import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldedLine } from '../../../../api/features/maintenance/folded-line.ts';

describe('a folded line', () => {
  it.each([
    ['a short line as it is', 'SUMMARY:short', 'SUMMARY:short'],
    ['75 octets as they are', 'x'.repeat(75), 'x'.repeat(75)],
    ['the 76th on the next', 'x'.repeat(76), `${'x'.repeat(75)}\r\n x`],
    ['no character cut', `${'x'.repeat(74)}ä`, `${'x'.repeat(74)}\r\n ä`],
    ['no surrogate pair cut', `${'x'.repeat(73)}🪸`, `${'x'.repeat(73)}\r\n 🪸`],
  ])('has %s', (_what, line, folded) => {
    expect(foldedLine(line)).toBe(folded);
  });

  it('unfolds to what it was, in pieces of at most 75 octets', () => {
    const line = fc.string({ unit: 'grapheme', maxLength: 400 }).filter((text) => !/[\r\n]/.test(text));
    fc.assert(
      fc.property(line, (text) => {
        const folded = foldedLine(text);
        expect(folded.replaceAll('\r\n ', '')).toBe(text);
        for (const piece of folded.split('\r\n')) expect(Buffer.byteLength(piece)).toBeLessThanOrEqual(75);
      }),
      { seed: 1, numRuns: 300 },
    );
  });
});
