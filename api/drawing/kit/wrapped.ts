/** Breaks a text into lines that fit. */
import { shortened, textWidth } from '../markup/name-text.ts';

export function wrapped(
  text: string,
  room: { readonly width: number; readonly size: number },
): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || textWidth(longer, room.size) <= room.width) {
      line = longer;
      continue;
    }
    lines.push(line);
    line = word;
  }
  return [...lines, line].map((one) => shortened(one, room));
}
