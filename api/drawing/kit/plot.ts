/** Maps figures to places in a rectangle of a chart. */
import { scaleLinear } from 'd3-scale';
import type { Axis } from './axis.ts';

export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface Plot extends Frame {
  /** Places [px] of figures along the two axes. */
  x(value: number): number;
  y(value: number): number;
}

/** A point in figures, not in places. */
export interface ChartPoint {
  readonly x: number;
  readonly y: number;
}

export function plotIn(frame: Frame, { across, up }: { readonly across: Axis; readonly up: Axis }): Plot {
  const { left, top, width, height } = frame;
  const x = scaleLinear([across.from, across.until], [left, left + width]);
  const y = scaleLinear([up.from, up.until], [top + height, top]);
  return { ...frame, x: (value) => x(value), y: (value) => y(value) };
}
