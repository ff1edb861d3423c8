/** Makes a name that a user gave fit for a line of other text. */

const ISOLATE = '\u2068';
const END_OF_ISOLATE = '\u2069';
/** Marks that turn the direction of what follows: a name that leaves one open would turn the whole line. */
const DIRECTION_MARKS = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/g;
const WHITE = /\s+/g;

const WIDE =
  /[\u1100-\u115F\u2E80-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\u{1F000}-\u{3FFFD}]/u;
/** Shares of the size of the type that a character takes, on the wide side for a plain face. */
const WIDTH = { usual: 0.57, wide: 1.05 } as const;

const letters = new Intl.Segmenter('und', { granularity: 'grapheme' });

/** On one line, without marks of direction of its own. */
export const plainName = (name: string): string =>
  name.replace(DIRECTION_MARKS, '').replace(WHITE, ' ').trim();

/** Kept apart from the direction of the text around it (UAX 9), so that figures next to it stay in their order. */
export const isolatedName = (name: string): string => `${ISOLATE}${plainName(name)}${END_OF_ISOLATE}`;

/** About the width of a text [px] at a size of type [px]. */
export const textWidth = (text: string, size: number): number =>
  size *
  [...letters.segment(text)].reduce(
    (sum, { segment }) => sum + (WIDE.test(segment) ? WIDTH.wide : WIDTH.usual),
    0,
  );

/** What fits into a width, with an ellipsis where something is left out. */
export function shortened(
  text: string,
  { width, size }: { readonly width: number; readonly size: number },
): string {
  if (textWidth(text, size) <= width) return text;
  let room = width - size * WIDTH.wide;
  let kept = '';
  for (const { segment } of letters.segment(text)) {
    room -= textWidth(segment, size);
    if (room < 0) break;
    kept += segment;
  }
  return `${kept.trimEnd()}\u2026`;
}

/** About fifty letters of usual type. */
const SHORT = { width: 420, size: 14 } as const;

/** A name that leaves room for what follows it on the same line. */
export const shortName = (name: string): string => isolatedName(shortened(plainName(name), SHORT));
