/** Draws the frame of a plot with its ticks, their lines and the names of its axes. */
import { type Markup, markup } from '../markup/markup.ts';
import { shortened } from '../markup/name-text.ts';
import type { Axis } from './axis.ts';
import type { Plot } from './plot.ts';
import { straight } from './series.ts';
import { TYPE, words } from './words.ts';

const GRID = { ink: 'grid', width: 1 } as const;
const EDGE = { ink: 'slate', width: 1.2 } as const;
const GAP = { tick: 6, name: 10, below: 17 } as const;
/** Of the size of the type, from the middle of a line to its base. */
const MIDDLE = 0.36;

/** Lines to read figures off, the two edges, the ticks of the axis up and its name above it. */
export function upAxisDrawn({ name, ticks }: Axis, plot: Plot): Markup {
  const { left, top, width, height } = plot;
  const lines = ticks.map(({ value, label }) => {
    const y = plot.y(value);
    const place = [left - GAP.tick, y + MIDDLE * TYPE.small] as const;
    return [
      straight([left, y], [left + width, y], GRID),
      words(label, place, { size: TYPE.small, ink: 'slate', anchor: 'end' }),
    ];
  });
  return markup`${lines}${straight([left, top], [left, top + height], EDGE)}${words(shortened(name, { width, size: TYPE.usual }), [left, top - GAP.name], { ink: 'slate' })}`;
}

/** Its lines; the names of its ticks below, where it `isNamed`. */
export function acrossAxisDrawn({ name, ticks }: Axis, plot: Plot, isNamed: boolean): Markup {
  const { left, top, width, height } = plot;
  const bottom = top + height;
  const parts = ticks.map(({ value, label }) => {
    const x = plot.x(value);
    const place = [x, bottom + GAP.below] as const;
    return [
      straight([x, top], [x, bottom], GRID),
      isNamed ? words(label, place, { size: TYPE.small, ink: 'slate', anchor: 'middle' }) : null,
    ];
  });
  const edge = straight([left, bottom], [left + width, bottom], EDGE);
  const named = isNamed
    ? words(name, [left + width / 2, bottom + 2 * GAP.below + 1], { ink: 'slate', anchor: 'middle' })
    : null;
  return markup`${parts}${edge}${named}`;
}
