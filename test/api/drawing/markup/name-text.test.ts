/** Names of users in lines of other text. */
import { describe, expect, it } from 'vitest';
import {
  isolatedName,
  plainName,
  shortened,
  shortName,
  textWidth,
} from '../../../../api/drawing/markup/name-text.ts';

describe('a name', () => {
  it('is kept apart from the direction of the text around it', () => {
    expect(isolatedName('حوض')).toBe('\u2068حوض\u2069');
  });

  it('cannot turn the line by marks of its own, nor end its isolation', () => {
    expect(isolatedName('a\u202Eb\u2069c\u2066d')).toBe('\u2068abcd\u2069');
  });

  it('stands on one line', () => {
    expect(plainName(' far\n\tend ')).toBe('far end');
  });
});

describe('what does not fit', () => {
  const room = { width: 60, size: 12 };

  it('is left out behind an ellipsis', () => {
    expect(shortened('far end', room)).toBe('far end');
    const cut = shortened('the farthest end of the flume', room);
    expect(cut).toMatch(/^the fa.*…$/);
    expect(textWidth(cut, room.size)).toBeLessThanOrEqual(room.width);
  });

  it('is never cut within a letter of several code points', () => {
    const family = '👨‍👩‍👧';
    expect(shortened(family.repeat(9), room).replace('…', '')).toBe(family.repeat(3));
  });

  it('of a long name leaves room for what stands beside it', () => {
    expect(shortName('far end')).toBe('\u2068far end\u2069');
    expect(shortName('x'.repeat(120))).toMatch(/^\u2068x{40,60}…\u2069$/);
  });
});
