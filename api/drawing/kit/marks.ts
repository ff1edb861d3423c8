/** Draws marks of single figures, which differ in shape. */
import {
  type SymbolType,
  symbol,
  symbolCircle,
  symbolCross,
  symbolDiamond,
  symbolSquare,
  symbolStar,
  symbolTriangle,
} from 'd3-shape';
import { type Markup, markup } from '../markup/markup.ts';
import { INKS, type Ink } from './palette.ts';

const SHAPES = {
  circle: symbolCircle,
  cross: symbolCross,
  diamond: symbolDiamond,
  square: symbolSquare,
  star: symbolStar,
  triangle: symbolTriangle,
} as const satisfies Record<string, SymbolType>;

export interface MarkStyle {
  readonly shape: keyof typeof SHAPES;
  readonly ink: Ink;
  readonly isFilled: boolean;
  /** Area [px2]. */
  readonly size?: number;
}

const USUAL_SIZE = 64;
const DIGITS = 2;

/** At a place [px]. */
export function mark(
  [x, y]: readonly [number, number],
  { shape, ink, isFilled, size = USUAL_SIZE }: MarkStyle,
): Markup {
  const path = symbol(SHAPES[shape], size).digits(DIGITS)();
  const fill = isFilled ? INKS[ink] : INKS.paper;
  return markup`<path d="${path}" transform="translate(${x} ${y})" fill="${fill}" stroke="${INKS[ink]}" stroke-width="1.6"/>`;
}
