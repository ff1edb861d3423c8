/** Whether the inks of charts are told apart without colour. */
import { describe, expect, it } from 'vitest';
import { INKS, type Ink } from '../../../../api/drawing/kit/palette.ts';

/** Relative luminance of WCAG 2.2, of a colour as `#rrggbb`. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((place) => {
    const share = Number.parseInt(colour.slice(place, place + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio of WCAG 2.2. */
function contrast(one: Ink, other: Ink): number {
  const [low = 0, high = 0] = [luminance(INKS[one]), luminance(INKS[other])].toSorted((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

describe('the inks', () => {
  // WCAG 2.2: 1.4.11 asks 3 to 1 of graphics, 1.4.3 asks 4.5 to 1 of text.
  it.each<[Ink, number]>([
    ['ink', 4.5],
    ['slate', 4.5],
    ['deep', 4.5],
    ['rust', 4.5],
    ['sea', 3],
  ])('%s stands off the paper', (ink, least) => {
    expect(contrast(ink, 'paper')).toBeGreaterThan(least);
  });

  it.each<[Ink, Ink, number]>([
    ['deep', 'rust', 1.4],
    ['rust', 'sea', 1.4],
    ['deep', 'haze', 4.5],
    ['ink', 'haze', 4.5],
    ['rust', 'haze', 3],
  ])('%s and %s differ in grey', (one, other, least) => {
    expect(contrast(one, other)).toBeGreaterThan(least);
  });
});
