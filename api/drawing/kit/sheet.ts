/** Puts a whole chart together: its title, plots one above another over a common axis, its legend, its notes. */
import { type Markup, markup } from '../markup/markup.ts';
import { shortened } from '../markup/name-text.ts';
import { acrossAxisDrawn, upAxisDrawn } from './axes-drawn.ts';
import type { Axis } from './axis.ts';
import { type LegendRow, layLegend, legendDrawn } from './legend.ts';
import { INKS } from './palette.ts';
import { type Plot, plotIn } from './plot.ts';
import { TYPE, words } from './words.ts';
import { wrapped } from './wrapped.ts';

export interface Panel {
  readonly axis: Axis;
  /** Left to right, where it is not that of the others. */
  readonly across?: Axis;
  /** Of its plot [px]. */
  readonly height: number;
  /** What is cut off at the edges. */
  readonly inside?: (plot: Plot) => readonly (Markup | null)[];
  /** What may cover them: marks and the names of lines. */
  readonly over?: (plot: Plot) => readonly (Markup | null)[];
}

export interface Sheet {
  /** Of no other chart of the same page. */
  readonly id: string;
  readonly title: string;
  readonly subtitle: string;
  /** The chart in sentences, for those who do not see it. */
  readonly description: string;
  /** Left to right, common to all plots. */
  readonly axis: Axis;
  readonly panels: readonly Panel[];
  readonly legend: readonly LegendRow[];
  readonly notes: readonly string[];
  /** Patterns that fills refer to. */
  readonly patterns?: Markup;
}

const WIDTH = 720;
const MARGIN = { left: 72, right: 58, top: 20, bottom: 14 } as const;
const INNER = WIDTH - MARGIN.left - MARGIN.right;
const HEADER = 54;
const PANEL_GAP = 34;
const AXIS_ROOM = 46;
const NOTE_ROW = 16;
/** Bold letters are wider. */
const BOLD = 1.15;
const FACES = 'system-ui, "Segoe UI", Roboto, "DejaVu Sans", sans-serif';

interface Placed {
  readonly panel: Panel;
  readonly plot: Plot;
  readonly across: Axis;
  /** Whether the ticks of the axis across are named below it. */
  readonly isNamed: boolean;
}

function placed({ panels, axis }: Sheet): readonly Placed[] {
  let top = MARGIN.top + HEADER;
  return panels.map((panel, place) => {
    const { across = axis, height } = panel;
    top += PANEL_GAP - MARGIN.bottom;
    const plot = plotIn({ left: MARGIN.left, top, width: INNER, height }, { across, up: panel.axis });
    const isNamed = panel.across !== undefined || place === panels.length - 1;
    top += height + MARGIN.bottom + (isNamed ? AXIS_ROOM - MARGIN.bottom : 0);
    return { panel, plot, across, isNamed };
  });
}

function panelDrawn({ panel, plot, across, isNamed }: Placed): Markup {
  const { left, top, width, height } = plot;
  const box = markup`x="${left}" y="${top}" width="${width}" height="${height}" viewBox="${left} ${top} ${width} ${height}"`;
  return markup`${acrossAxisDrawn(across, plot, isNamed)}${upAxisDrawn(panel.axis, plot)}<svg ${box}>${panel.inside?.(plot) ?? null}</svg>${panel.over?.(plot) ?? null}`;
}

function headDrawn({ title, subtitle }: Sheet): Markup {
  const room = (size: number) => ({ width: WIDTH - 2 * MARGIN.top, size });
  const bold = room(BOLD * TYPE.title);
  const [first, second] = [MARGIN.top + TYPE.title, MARGIN.top + TYPE.title + 21];
  return markup`${words(shortened(title, bold), [MARGIN.top, first], { size: TYPE.title, isBold: true })}${words(shortened(subtitle, room(TYPE.usual)), [MARGIN.top, second], { ink: 'slate' })}`;
}

/** Complete as a file of its own, and as a part of a page. */
export function drawSheet(sheet: Sheet): Markup {
  const { id, title, description, legend, notes, patterns } = sheet;
  const panels = placed(sheet);
  const last = panels.at(-1);
  if (last === undefined) throw new Error('invariant: a chart has no plot');
  const legendTop = last.plot.top + last.plot.height + AXIS_ROOM;
  const laid = layLegend(legend, { left: MARGIN.left, width: WIDTH - MARGIN.left - MARGIN.top });
  const notesTop = legendTop + laid.height + MARGIN.bottom;
  const lines = notes.flatMap((note) => wrapped(note, { width: WIDTH - 2 * MARGIN.top, size: TYPE.small }));
  const height = notesTop + NOTE_ROW * lines.length + MARGIN.bottom;
  const texts = lines.map((text, row) =>
    words(text, [MARGIN.top, notesTop + NOTE_ROW * (row + 0.5)], { size: TYPE.small, ink: 'slate' }),
  );
  const labels = markup`role="img" aria-labelledby="${id}-title ${id}-description"`;
  return markup`<svg xmlns="http://www.w3.org/2000/svg" ${labels} lang="en" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}" font-family="${FACES}"><title id="${id}-title">${title}</title><desc id="${id}-description">${description}</desc>${patterns ?? null}<rect width="${WIDTH}" height="${height}" fill="${INKS.paper}"/>${headDrawn(sheet)}${panels.map(panelDrawn)}${legendDrawn(laid, legendTop)}${texts}</svg>`;
}
