/** Draws lines and bands through figures. */
import { area, curveLinear, curveStepAfter, line } from 'd3-shape';
import { type Markup, markup } from '../markup/markup.ts';
import { INKS, type Ink, type LineStyle } from './palette.ts';
import type { ChartPoint, Plot } from './plot.ts';

const DIGITS = 2;

const dashed = ({ dash }: LineStyle): Markup | null =>
  dash === undefined ? null : markup` stroke-dasharray="${dash}"`;

/** Straight from point to point, or in steps that hold until the next; nothing for fewer than two points. */
export function lineThrough(
  plot: Plot,
  points: readonly ChartPoint[],
  style: LineStyle & { readonly steps?: boolean },
): Markup | null {
  const path = line<ChartPoint>(
    ({ x }) => plot.x(x),
    ({ y }) => plot.y(y),
  )
    .digits(DIGITS)
    .curve(style.steps ? curveStepAfter : curveLinear)([...points]);
  if (path === null || points.length < 2) return null;
  return markup`<path d="${path}" fill="none" stroke="${INKS[style.ink]}" stroke-width="${style.width}" stroke-linejoin="round"${dashed(style)}/>`;
}

export interface BandPoint {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/** The area between two lines. */
export function bandBetween(plot: Plot, points: readonly BandPoint[], ink: Ink): Markup | null {
  const path = area<BandPoint>(
    ({ x }) => plot.x(x),
    ({ low }) => plot.y(low),
    ({ high }) => plot.y(high),
  ).digits(DIGITS)([...points]);
  if (path === null || points.length < 2) return null;
  return markup`<path d="${path}" fill="${INKS[ink]}" stroke="none"/>`;
}

/** A straight line from one place [px] to another. */
export const straight = (
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  style: LineStyle,
): Markup =>
  markup`<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" stroke="${INKS[style.ink]}" stroke-width="${style.width}"${dashed(style)}/>`;
