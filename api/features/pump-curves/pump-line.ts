/** Draws the curve of pumps at one setting, solid within the entered points and dashed beyond. */

import { inUnit } from '../../drawing/in-units.ts';
import type { LineStyle } from '../../drawing/kit/palette.ts';
import type { Plot } from '../../drawing/kit/plot.ts';
import { lineThrough } from '../../drawing/kit/series.ts';
import type { Markup } from '../../drawing/markup/markup.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { FlowPoint } from './drawn-curves.ts';

export const PUMP_LINE: LineStyle = { ink: 'deep', width: 2.4 };
export const BEYOND_LINE: LineStyle = { ink: 'deep', width: 2, dash: '3 5' };

export function headLine(
  plot: Plot,
  points: readonly Pick<FlowPoint, 'flow' | 'head'>[],
  { system, style }: { readonly system: UnitSystem; readonly style: LineStyle },
): Markup | null {
  const [flow, head] = [inUnit('flow', system), inUnit('head', system)];
  return lineThrough(
    plot,
    points.map((point) => ({ x: flow(point.flow), y: head(point.head) })),
    style,
  );
}
