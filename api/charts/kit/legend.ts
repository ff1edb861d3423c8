/** What lines, bands and marks mean, one a row. */

import { type Markup, markup } from '../../markup/markup.ts';
import { type MarkStyle, mark } from './marks.ts';
import { INKS, type Ink, type LineStyle } from './palette.ts';
import { straight } from './series.ts';
import { TYPE, words } from './words.ts';
import { wrapped } from './wrapped.ts';

export interface LegendRow {
  readonly sample:
    | { readonly line: LineStyle }
    | { readonly band: Ink }
    | { readonly mark: MarkStyle }
    | { readonly fill: string };
  readonly text: string;
}

/** [px]: a row, each further line of it, from the middle of a line to its base. */
const ROW = 20;
const LINE = 16;
const TO_BASE = 4.5;
const SAMPLE = { width: 30, gap: 10, height: 11 } as const;

function sampleDrawn(sample: LegendRow['sample'], [x, y]: readonly [number, number]): Markup {
  if ('line' in sample) return straight([x, y], [x + SAMPLE.width, y], sample.line);
  if ('mark' in sample) return mark([x + SAMPLE.width / 2, y], sample.mark);
  const fill = 'band' in sample ? INKS[sample.band] : sample.fill;
  return markup`<rect x="${x}" y="${y - SAMPLE.height / 2}" width="${SAMPLE.width}" height="${SAMPLE.height}" fill="${fill}" stroke="${INKS.slate}" stroke-width="0.6"/>`;
}

/** Rows of text; a longer one takes several. */
interface LaidRow {
  readonly sample: LegendRow['sample'];
  readonly lines: readonly string[];
}

export interface LaidLegend {
  readonly rows: readonly LaidRow[];
  readonly left: number;
  readonly height: number;
}

export function layLegend(
  rows: readonly LegendRow[],
  { left, width }: { readonly left: number; readonly width: number },
): LaidLegend {
  const room = { width: width - SAMPLE.width - SAMPLE.gap, size: TYPE.usual };
  const laid = rows.map(({ sample, text }) => ({ sample, lines: wrapped(text, room) }));
  const height = laid.reduce((sum, { lines }) => sum + rowHeight(lines), 0);
  return { rows: laid, left, height };
}

const rowHeight = (lines: readonly string[]): number => ROW + LINE * (lines.length - 1);

export function legendDrawn({ rows, left }: LaidLegend, top: number): Markup {
  const start = left + SAMPLE.width + SAMPLE.gap;
  let y = top + ROW / 2;
  const drawn = rows.map(({ sample, lines }) => {
    const first = y;
    y += rowHeight(lines);
    return [
      sampleDrawn(sample, [left, first]),
      lines.map((text, line) => words(text, [start, first + TO_BASE + LINE * line])),
    ];
  });
  return markup`${drawn}`;
}
