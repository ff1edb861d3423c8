/** Gives each option of a comparison a line and a mark of its own. */
import type { MarkStyle } from '../../drawing/kit/marks.ts';
import type { LineStyle } from '../../drawing/kit/palette.ts';

interface OptionStyle {
  readonly line: LineStyle;
  readonly mark: MarkStyle;
}

const STYLES: readonly OptionStyle[] = [
  { line: { ink: 'deep', width: 2.2 }, mark: { shape: 'circle', ink: 'deep', isFilled: true } },
  { line: { ink: 'rust', width: 2.2, dash: '9 4' }, mark: { shape: 'square', ink: 'rust', isFilled: false } },
  { line: { ink: 'sea', width: 2.2, dash: '3 3' }, mark: { shape: 'triangle', ink: 'sea', isFilled: true } },
  {
    line: { ink: 'ink', width: 1.8, dash: '12 3 3 3' },
    mark: { shape: 'diamond', ink: 'ink', isFilled: false },
  },
  { line: { ink: 'slate', width: 1.8 }, mark: { shape: 'cross', ink: 'slate', isFilled: false } },
  { line: { ink: 'deep', width: 1.4, dash: '6 6' }, mark: { shape: 'star', ink: 'deep', isFilled: false } },
];

/** More lines than these cannot be distinguished. */
export const OPTIONS_SHOWN = STYLES.length;

export function optionStyle(place: number): OptionStyle {
  const style = STYLES[place % STYLES.length];
  if (style === undefined) throw new Error(`invariant: option ${place} has no style`);
  return style;
}

export const BREAK_EVEN: MarkStyle = { shape: 'star', ink: 'rust', isFilled: true, size: 130 };
