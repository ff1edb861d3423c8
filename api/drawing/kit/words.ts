/** Draws texts in charts. */
import { type Markup, markup } from '../markup/markup.ts';
import { INKS, type Ink } from './palette.ts';

export const TYPE = { title: 16, usual: 12.5, small: 11.5 } as const;

interface WordStyle {
  readonly size?: number;
  readonly ink?: Ink;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly isBold?: boolean;
}

/** On a base line at a place [px]. */
export function words(
  text: string,
  [x, y]: readonly [number, number],
  { size = TYPE.usual, ink = 'ink', anchor = 'start', isBold = false }: WordStyle = {},
): Markup {
  const weight = isBold ? markup` font-weight="600"` : null;
  return markup`<text x="${x}" y="${y}" font-size="${size}" fill="${INKS[ink]}" text-anchor="${anchor}"${weight}>${text}</text>`;
}
