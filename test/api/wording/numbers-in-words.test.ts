/** Figures as sentences tell them. */
import { describe, expect, it } from 'vitest';
import { say, sayNumber } from '../../../api/wording/numbers-in-words.ts';

describe('a figure in a sentence', () => {
  it.each([
    [7533.14, '7533'],
    [85.7042, '85.7'],
    [0.1269, '0.1269'],
    [0, '0'],
    [-0, '0'],
    [1e-9, '0.000000001'],
    [1.23456e7, '12350000'],
  ])('%d has four digits and no exponent', (value, text) => {
    expect(sayNumber(value)).toBe(text);
  });

  it('has the unit in force', () => {
    // 1 gal = 3.785411784 L and 1 ft = 0.3048 m exactly (NIST SP 811).
    expect(say(1 / 3600, 'flow', 'metric')).toBe('1000 L/h');
    expect(say(3.785411784 / 3.6e6, 'flow', 'us')).toBe('1 gal/h');
    expect(say(0.3048, 'head', 'us')).toBe('1 ft');
  });
});
