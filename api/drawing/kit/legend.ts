/** Draws a legend, a row for each line, band or mark. */

import { type Markup, markup } from '../markup/markup.ts';
import { type MarkStyle, mark } from './marks.ts';
import { INKS, type Ink, type LineStyle } from './palette.ts';
import { straight } from './series.ts';
import { TYPE, words } from './words.ts';
import { wrapped } from './wrapped.ts';

export interface LegendRow {
  readonly sample:
    | { readonly line: LineStyle; readonly mark?: MarkStyle }
    | { readonly band: Ink }
    | { readonly mark: MarkStyle }
    | { readonly fill: string };
  readonly text: string;
}

/** [px]: a row, each further line of it, from the middle of a line to its base. */
const ROW = 20;
const LINE = 16;
const TO_BASE = 4.5;
/** Lines that a row of half the width may take. */
const SHORT_LINES = 2;
/** Rows that are never split. */
const ONE_COLUMN = 7;
const SAMPLE = { width: 30, gap: 10, height: 11 } as const;

function sampleDrawn(sample: LegendRow['sample'], [x, y]: readonly [number, number]): Markup {
  if ('line' in sample) {
    const line = straight([x, y], [x + SAMPLE.width, y], sample.line);
    return sample.mark === undefined ? line : markup`${line}${mark([x + SAMPLE.width / 2, y], sample.mark)}`;
  }
  if ('mark' in sample) return mark([x + SAMPLE.width / 2, y], sample.mark);
  const fill = 'band' in sample ? INKS[sample.band] : sample.fill;
  return markup`<rect x="${x}" y="${y - SAMPLE.height / 2}" width="${SAMPLE.width}" height="${SAMPLE.height}" fill="${fill}" stroke="${INKS.slate}" stroke-width="0.6"/>`;
}

/** A row of text at its place; a longer one takes several lines. */
interface LaidRow {
  readonly sample: LegendRow['sample'];
  readonly lines: readonly string[];
  /** From the left and the top of the legend [px]. */
  readonly x: number;
  readonly y: number;
}

export interface LaidLegend {
  readonly rows: readonly LaidRow[];
  readonly left: number;
  readonly height: number;
}

const rowHeight = (lines: readonly string[]): number => ROW + LINE * (lines.length - 1);

/** Many short rows are in two columns, others in one. */
export function layLegend(
  rows: readonly LegendRow[],
  { left, width }: { readonly left: number; readonly width: number },
): LaidLegend {
  const linesIn = (room: number) =>
    rows.map(({ text }) => wrapped(text, { width: room - SAMPLE.width - SAMPLE.gap, size: TYPE.usual }));
  const half = linesIn(width / 2 - SAMPLE.gap);
  const isShort = rows.length > ONE_COLUMN && half.every(({ length }) => length <= SHORT_LINES);
  const lines = isShort ? half : linesIn(width);
  const inColumn = isShort ? Math.ceil(rows.length / 2) : rows.length;
  let y = 0;
  const laid = rows.map(({ sample }, place): LaidRow => {
    if (place === inColumn) y = 0;
    const own = lines[place] ?? [];
    const row = { sample, lines: own, x: place < inColumn ? 0 : width / 2, y };
    y += rowHeight(own);
    return row;
  });
  const height = laid.reduce((most, row) => Math.max(most, row.y + rowHeight(row.lines)), 0);
  return { rows: laid, left, height };
}

export function legendDrawn({ rows, left }: LaidLegend, top: number): Markup {
  const drawn = rows.map(({ sample, lines, x, y }) => {
    const [start, middle] = [left + x, top + y + ROW / 2];
    return [
      sampleDrawn(sample, [start, middle]),
      lines.map((text, line) =>
        words(text, [start + SAMPLE.width + SAMPLE.gap, middle + TO_BASE + LINE * line]),
      ),
    ];
  });
  return markup`${drawn}`;
}
